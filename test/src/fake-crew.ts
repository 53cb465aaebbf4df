import type { CrewFace, CrewMessage, CrewOf } from '../../src/crew-face.ts';

/** A crew that only remembers what reached it, so that a test can say that nothing did. */
export type FakeCrews = { crewOf: CrewOf; taken: Map<string, CrewMessage[]> };

const LOGGED_PLAN_ID = 'p1';

export function fakeCrews(): FakeCrews {
  const taken = new Map<string, CrewMessage[]>();
  const answers = new Map<string, { said: string; body: string }>();
  const crewOf = (crew: string): CrewFace => ({
    handle: async (message) => {
      const key = JSON.stringify([crew, message.door, message.conversation, message.id]);
      const said = JSON.stringify([message.text, message.choice, message.author]);
      const before = answers.get(key);
      if (message.author.id === 'erased') return { ok: false, why: 'erased', detail: 'This id was erased.' };
      if (before && before.said !== said)
        return { ok: false, why: 'other-payload', detail: 'This id was used for another message.' };
      if (before) return { ok: true, body: before.body, replayed: true };
      taken.set(crew, [...(taken.get(crew) ?? []), message]);
      const body = answerTo(message, taken.get(crew)?.length ?? 0);
      answers.set(key, { said, body });
      return { ok: true, body, replayed: false };
    },
    plan: async (id) =>
      crew === 'local' && id === LOGGED_PLAN_ID
        ? JSON.stringify({ ...STOPPED, id, job: {}, conversation: 'c', at: '2026-01-01T00:00:00Z' })
        : null,
  });
  return { crewOf, taken };
}

function answerTo(message: CrewMessage, turn: number): string {
  return JSON.stringify({
    conversation: message.conversation,
    turn,
    replies: [{ kind: 'text', text: `heard: ${message.text ?? message.choice}` }],
    awaiting: null,
    known: {},
    plan: null,
  });
}

const STOPPED = {
  verdict: 'stop',
  frame: null,
  marks: [],
  crossChecks: [],
  actions: null,
  fixing: null,
  alternatives: [],
  rejected: [],
  cautions: [],
  clear: [],
  assumptions: [],
  advice: [],
  steps: [],
  tools: [],
  shopping: [],
  why: [],
  basis: [],
};
