import type { Conversation, CrewDefaults, Flow, Step } from '../flows/step-shape.ts';
import type { CrewMessage, Handled } from './crew-face.ts';
import { type Answered, type LoggedPlan, openLedger } from './ledger/ledger.ts';
import { isSamePayload, keptMessage } from './ledger/payload.ts';
import { newPlanId } from './ledger/plan-id.ts';
import { Recent } from './ledger/recent.ts';
import { rememberedAfter } from './ledger/remembered.ts';
import type { Store } from './ledger/store.ts';
import { planJson } from './schema/plan-json.ts';

/** One crew: its ledger and the flow. Synchronous, so two messages at once are one after the other. */
export type Crew = {
  handle: (message: CrewMessage) => Handled;
  plan: (id: string) => string | null;
  /** Drops everything that can be rebuilt from the ledger; called when a commit fails. */
  forget: () => void;
};

export type CrewParts = {
  store: Store;
  flow: Flow;
  /** RFC 3339. */
  now?: () => string;
  /** How many conversations stay in memory; the others are rebuilt from their entries when they go on. */
  keep?: number;
};

/** A conversation in memory is some kilobytes, and a Durable Object has 128 MB for everything. */
const KEPT_IN_MEMORY = 2_000;

type Open = { n: number; conversation: Conversation };

const answeredBefore = ({ message: kept, reply }: Answered, message: CrewMessage): Handled => {
  if (kept === null || reply === null)
    return { ok: false, why: 'erased', detail: 'The person who sent this message has been erased.' };
  if (isSamePayload(kept, message)) return { ok: true, body: reply, replayed: true };
  const detail = `The id ${JSON.stringify(message.id)} was used in this conversation for another message.`;
  return { ok: false, why: 'other-payload', detail };
};

const loggedPlan = (step: Step, conversation: string, at: string): LoggedPlan | null => {
  if (!step.plan) return null;
  const { id, job, plan } = step.plan;
  return {
    id,
    verdict: plan.verdict,
    body: JSON.stringify({ id, conversation, at, job, ...planJson(plan) }),
  };
};

/** Opens a crew over its store. */
export const openCrew = ({
  store,
  flow,
  now = () => new Date().toISOString(),
  keep = KEPT_IN_MEMORY,
}: CrewParts): Crew => {
  const ledger = openLedger(store);
  const open = new Recent<Open>(keep);
  let defaults: CrewDefaults | null = null;
  let sparePlanId: string | null = null;

  const resume = (key: string, remembered: CrewDefaults): Open => {
    const { n, entries, plan } = ledger.past(key);
    const conversation = n === 0 ? flow.begin(remembered) : flow.resume(entries, plan, remembered);
    return { n, conversation };
  };

  return {
    handle: (message) => {
      const key = `${message.door}:${message.conversation}`;
      const kept = ledger.answered(key, message.id);
      if (kept) return answeredBefore(kept, message);

      defaults ??= ledger.defaults();
      const before = open.get(key) ?? resume(key, defaults);
      const n = before.n + 1;
      const at = now();
      sparePlanId ??= newPlanId();
      const step = flow.step(before.conversation, { ...message, at, planId: sparePlanId });
      if (step.plan) sparePlanId = null;

      const { replies, awaiting, known } = step;
      const reply = JSON.stringify({
        ...{ conversation: message.conversation, turn: n, replies, awaiting, known },
        plan: step.planId,
      });
      const remembered = rememberedAfter(defaults, step.added);
      ledger.append(
        {
          ...{ conversation: key, n, id: message.id, author: message.author.id, at, reply, awaiting },
          ...{ message: keptMessage(message), entries: step.added, plan: step.planId },
        },
        loggedPlan(step, message.conversation, at),
        remembered === defaults ? null : remembered,
      );
      defaults = remembered;
      open.set(key, { n, conversation: step.next });
      return { ok: true, body: reply, replayed: false };
    },
    plan: (id) => ledger.plan(id),
    forget: () => {
      open.clear();
      defaults = null;
    },
  };
};
