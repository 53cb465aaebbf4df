import type { SnapshotFrom } from 'xstate';
import type { Plan } from '../core/plan-shape.ts';
import { questionThatClears } from './clearing.ts';
import type { Entry } from './entry.ts';
import { type Folded, fold, NOTHING_SAID } from './fold.ts';
import type { conversation } from './machine.ts';
import { beginning, moved } from './moved.ts';
import type { Parts } from './parts.ts';
import type { QuestionName } from './question.ts';
import { isQuestionName } from './questions/all.ts';
import type { AskBack } from './reading.ts';
import { type Situation, situationOf } from './situation.ts';
import type { CrewDefaults } from './step-shape.ts';

/** What was asked back, with its readings: derived from the words again when a conversation is taken up. */
export type Offered = {
  kind: 'readings' | 'contradiction' | 'another-piece';
  ask: AskBack;
  said: string;
};

/** The plan that stands, and the job it was made for. */
type Standing = { id: string; plan: Plan; of: string };

/** A conversation in memory. All of it is derived from the entries, the id of the plan and the defaults. */
export type Open = {
  readonly folded: Folded;
  readonly snapshot: SnapshotFrom<typeof conversation>;
  readonly standing: Standing | null;
  readonly offered: Offered | null;
  readonly defaults: CrewDefaults;
};

/** Opens a conversation from its entries: fold them, work out where it stands, and send one RESUME. */
export function openFrom(
  entries: readonly Entry[],
  planId: string | null,
  defaults: CrewDefaults,
  parts: Parts,
): Open {
  const folded = fold(entries);
  const first = beginning(situationOf(NOTHING_SAID, parts));
  const situation = situationOf(folded, parts);
  const snapshot = moved(first, { type: 'RESUME', situation });
  const open: Open = { folded, snapshot, standing: null, offered: null, defaults };
  const plan = planThatStands(open);
  return planId === null || plan === null
    ? open
    : { ...open, standing: { id: planId, plan, of: jobKey(situation) } };
}

/** Records entries and lets the machine move on. */
export function heard(open: Open, added: readonly Entry[], parts: Parts): Open {
  if (added.length === 0 && stateOf(open) !== 'paused') return open;
  const folded = fold(added, open.folded);
  const situation = situationOf(folded, parts, situationIn(open));
  const snapshot = moved(open.snapshot, { type: 'HEARD', situation });
  return { ...open, folded, snapshot };
}

export function paused(open: Open): Open {
  const snapshot = moved(open.snapshot, { type: 'PAUSE' });
  return { ...open, snapshot };
}

export const situationIn = (open: Open): Situation => open.snapshot.context;

/** The state's name: a question's, or what else the conversation is doing. */
export function stateOf(open: Open): string {
  const { value } = open.snapshot;
  if (typeof value === 'string') return value;
  return Object.entries(value).map(([group, state]) => `${group}.${String(state)}`)[0] ?? 'planned';
}

/** The question now open; null when nothing is asked. */
export function awaitingIn(open: Open): QuestionName | null {
  const state = stateOf(open);
  const situation = situationIn(open);
  if (state === 'askedBack') return situation.askedBack;
  if (state === 'stopped') return questionThatClears(stopsIn(situation), situation.job);
  return isQuestionName(state) ? state : null;
}

function stopsIn({ stops, plan }: Situation): Situation['stops'] {
  return stops.length > 0 ? stops : (plan?.cautions ?? []).filter((each) => each.severity === 'stop');
}

/** A plan stands once it is confirmed, or as soon as the job is known to stop. */
export function planThatStands(open: Open): Plan | null {
  const situation = situationIn(open);
  const { stops, plan, confirmed, hasGuesses } = situation;
  if (stops.length > 0) return plan ?? stopPlan(situation);
  if (plan === null || plan.verdict === 'stop') return plan;
  return confirmed || !hasGuesses ? plan : null;
}

function stopPlan({ stops }: Situation): Plan {
  return {
    verdict: 'stop',
    frame: null,
    marks: [],
    crossChecks: [],
    actions: null,
    fixing: null,
    alternatives: [],
    rejected: [],
    cautions: [...stops],
    clear: stops.flatMap((each) => (each.clears === undefined ? [] : [each.clears])),
    assumptions: [],
    advice: [],
    steps: [],
    tools: [],
    shopping: [],
    why: [],
    basis: stops.flatMap((each) => [...each.basis]),
  };
}

/** Two plans of one job are one plan. */
export const jobKey = (situation: Situation): string => JSON.stringify(situation.job);
