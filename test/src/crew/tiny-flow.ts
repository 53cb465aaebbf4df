import type { JobSoFar } from '../../../core/job.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { type Kilograms, kg } from '../../../core/quantity.ts';
import type { Entry } from '../../../flows/entry.ts';
import type { Conversation, CrewDefaults, Flow, Step } from '../../../flows/step-shape.ts';

/**
 * A flow small enough to see through, so that what a test finds is the ledger's doing. It takes a mass in
 * kilograms, a country, "plan", "undo" and "boom"; anything else is not understood.
 */
type Cache = { known: JobSoFar; planId: string | null };

const fold = (entries: readonly Entry[]): JobSoFar => {
  const known: JobSoFar = {};
  for (const { act, value } of entries) {
    if (act === 'take-back') delete known.building;
    if (value?.piece) known.piece = { ...known.piece, ...value.piece };
    if (value?.building) known.building = { ...known.building, ...value.building };
  }
  return known;
};

const opened = (entries: readonly Entry[], planId: string | null, defaults: CrewDefaults): Conversation => {
  const known = fold(entries);
  if (defaults.country && entries.length === 0) known.building = { country: defaults.country };
  return { flow: 'tiny-1', entries, cache: { known, planId } satisfies Cache };
};

const stop: Plan = {
  ...{ verdict: 'stop', frame: null, marks: [], crossChecks: [], actions: null, fixing: null },
  ...{ alternatives: [], rejected: [], cautions: [], clear: [], assumptions: [], advice: [] },
  ...{ steps: [], tools: [], shopping: [], why: [], basis: [] },
};

const heard = (text: string): { act: Entry['act']; value: JobSoFar | null } | null => {
  const mass = /^(\d+) kg$/.exec(text);
  if (mass) return { act: 'set', value: { piece: { massKg: kg(Number(mass[1])) as Kilograms } } };
  if (text === 'AU' || text === 'UK') return { act: 'set', value: { building: { country: text } } };
  if (text === 'undo') return { act: 'take-back', value: null };
  return null;
};

export const tinyFlow: Flow = {
  begin: (defaults) => opened([], null, defaults),
  resume: opened,
  step: (conversation, message): Step => {
    const text = message.text ?? message.choice ?? '';
    if (text === 'boom') throw new Error('a bug in the flow');
    const before = conversation.cache as Cache;
    const fact = heard(text);
    const added: Entry[] = fact
      ? [{ ...fact, question: 'building.country', said: text, by: message.author.id, at: message.at }]
      : [];
    const entries = [...conversation.entries, ...added];
    const known = added.length > 0 ? fold(entries) : before.known;
    const planId = text === 'plan' ? message.planId : before.planId;
    return {
      added,
      replies: [{ kind: 'text', text: fact ? `Noted: ${text}.` : 'Say that another way?' }],
      awaiting: known.piece ? 'confirm' : 'piece.massKg',
      known,
      plan: text === 'plan' ? { id: message.planId, job: known, plan: stop } : null,
      planId,
      next: { flow: 'tiny-1', entries, cache: { known, planId } satisfies Cache },
    };
  },
};
