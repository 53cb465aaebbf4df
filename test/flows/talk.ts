import type { Entry } from '../../flows/entry.ts';
import type { Reply } from '../../flows/reply.ts';
import type { Conversation, CrewDefaults, Flow, Incoming, Step } from '../../flows/step-shape.ts';

type Said = string | { choice: string; question?: string };

/** A conversation held by a test: what was said last, and all that was recorded. */
export type Talk = {
  say: (said: Said) => Step;
  all: (...said: Said[]) => Step;
  last: () => Step;
  entries: () => Entry[];
  at: () => Conversation;
};

const AUTHOR = { id: 'u7', name: 'Robin', role: 'apprentice' } as const;
const NINE_IN_THE_MORNING = '2026-03-02T09:00:00Z';

export function talk(
  flow: Flow,
  defaults: CrewDefaults = {},
  from: Conversation = flow.begin(defaults),
): Talk {
  let at = from;
  let step: Step | null = null;
  let turns = 0;
  const entries: Entry[] = [...from.entries];
  const say = (said: Said): Step => {
    turns += 1;
    const body: Pick<Incoming, 'text' | 'choice' | 'question'> =
      typeof said === 'string' ? { text: said } : said;
    step = flow.step(at, { ...body, author: AUTHOR, at: NINE_IN_THE_MORNING, planId: `plan-${turns}` });
    entries.push(...step.added);
    at = step.next;
    return step;
  };
  const last = (): Step => {
    if (step === null) throw new Error('nothing was said yet');
    return step;
  };
  return {
    say,
    last,
    all: (...said) => {
      for (const each of said) say(each);
      return last();
    },
    entries: () => entries,
    at: () => at,
  };
}

/** Everything in a reply that a person reads, in order. */
export const aloud = (replies: readonly Reply[]): string => replies.map((reply) => reply.text).join('\n');

export const questionIn = (replies: readonly Reply[]): string | undefined =>
  replies.find((reply) => reply.kind === 'question')?.text;
