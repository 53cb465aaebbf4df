import type { Job, JobSoFar } from '../core/job.ts';
import type { Plan } from '../core/plan-shape.ts';
import type { Entry } from './entry.ts';
import type { QuestionName } from './question.ts';
import type { Reply } from './reply.ts';

export type Role = 'apprentice' | 'homeowner' | 'boss';

/** A message in, with everything impure already decided by the caller. */
export type Incoming = {
  text?: string;
  choice?: string;
  question?: string;
  author: { id: string; name?: string; role: Role };
  /** RFC 3339; the caller's clock. */
  at: string;
  /** An unguessable id, used if this turn makes a plan. */
  planId: string;
};

/** A conversation in memory: rebuilt from its entries at any time, by `resume`. Opaque outside `flows`. */
export type Conversation = {
  readonly flow: string;
  readonly entries: readonly Entry[];
  /** The machine's snapshot and what is derived; a cache. */
  readonly cache: unknown;
};

export type Step = {
  /** Entries this turn adds; empty when nothing was accepted. */
  added: Entry[];
  replies: Reply[];
  awaiting: QuestionName | null;
  known: JobSoFar;
  /** A plan made in this turn, to be logged under `Incoming.planId`. */
  plan: { id: string; job: Job | JobSoFar; plan: Plan } | null;
  /** The id of the plan that now stands, this turn's or an earlier one's. */
  planId: string | null;
  next: Conversation;
};

/** What a crew remembers between conversations. */
export type CrewDefaults = {
  country?: NonNullable<JobSoFar['building']>['country'];
  dustExtraction?: boolean;
};

/** flows/step.ts exports these three. All pure. */
export type Flow = {
  begin: (defaults: CrewDefaults) => Conversation;
  /** From the ledger: entries, the id of the plan that stands. */
  resume: (entries: readonly Entry[], planId: string | null, defaults: CrewDefaults) => Conversation;
  step: (conversation: Conversation, message: Incoming) => Step;
};
