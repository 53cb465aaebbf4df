import { describe, expect, test } from 'vitest';
import { flowOf } from '../../flows/flow.ts';
import { conversation } from '../../flows/machine.ts';
import { awaitingIn, type Open, stateOf } from '../../flows/open.ts';
import { isQuestionName, QUESTIONS } from '../../flows/questions/all.ts';
import type { Conversation, Step } from '../../flows/step-shape.ts';
import { ANSWERS, MORE_ANSWERS, plainParts } from './plain-parts.ts';

const flow = flowOf(plainParts);
const AUTHOR = { id: 'u1', role: 'apprentice' } as const;

function hear(from: Conversation, text: string): Step {
  return flow.step(from, {
    text,
    author: AUTHOR,
    at: '2026-03-02T09:00:00Z',
    planId: `plan-${from.entries.length}`,
  });
}

const openIn = (step: Conversation): Open => step.cache as Open;
const inState = (at: Conversation): string => stateOf(openIn(at));

/** What is typed while walking: each plain answer, "don't know", and what ends or opens a conversation. */
const WALK = [...ANSWERS, ...MORE_ANSWERS]
  .map(([text]) => text)
  .concat('dont know', 'yes', 'plaster wall', 'stop');

/** One conversation for each state that can be reached, found by walking breadth first from nothing. */
function oneInEachState(): Map<string, Conversation> {
  const found = new Map<string, Conversation>();
  let edge: Conversation[] = [flow.begin({})];
  while (edge.length > 0) {
    const next: Conversation[] = [];
    for (const at of edge) {
      const state = inState(at);
      if (found.has(state)) continue;
      found.set(state, at);
      for (const text of WALK) next.push(hear(at, text).next);
    }
    edge = next;
  }
  return found;
}

const REACHED = oneInEachState();

function statesOf(): string[] {
  const names: string[] = [];
  for (const [name, node] of Object.entries(conversation.states)) {
    const inner = Object.keys(node.states);
    if (inner.length === 0) names.push(name);
    else names.push(...inner.map((each) => `${name}.${each}`));
  }
  return names.filter((name) => name !== 'deciding');
}

describe('the conversation', () => {
  test.each(statesOf())('reaches %s', (state) => {
    expect([...REACHED.keys()]).toContain(state);
  });

  test.each([...REACHED])('asks one thing in %s, and says which', (state, at) => {
    const { replies, awaiting } = hear(at, 'help');
    const questions = replies.filter((reply) => reply.kind === 'question');
    expect(questions.map((reply) => reply.question)).toEqual(awaiting === null ? [] : [awaiting]);
    if (isQuestionName(state)) {
      expect(awaiting).toBe(state);
      expect(questions[0]?.text).toMatch(/\?/);
    }
  });

  test.each([...REACHED])('starts over from %s', (_, at) => {
    const step = hear(at, 'start over');
    expect(step.known).toEqual({});
    expect(step.awaiting).toBe('piece.kind');
    expect(step.planId).toBeNull();
  });

  test.each([...REACHED])('goes back from %s to where it was empty', (_, at) => {
    let step = hear(at, 'back');
    for (let left = at.entries.length; left > 0; left -= 1) step = hear(step.next, 'back');
    expect(step.known).toEqual({});
    expect(step.awaiting).toBe('piece.kind');
  });

  test.each([...REACHED])('takes an answer to another question in %s', (state, at) => {
    const text = state === 'wall.widthMm' ? 'make that 28 kg' : 'make that 2900';
    const { known } = hear(at, text);
    expect(state === 'wall.widthMm' ? known.piece?.massKg : known.wall?.widthMm).toBe(
      state === 'wall.widthMm' ? 28 : 2900,
    );
  });

  test.each([...REACHED])(
    'keeps its place in %s through a question, a why and a word it does not know',
    (_, at) => {
      const before = awaitingIn(openIn(at));
      if (inState(at) === 'paused') return expect(hear(at, 'xyzzy').awaiting).not.toBeNull();
      for (const text of ['what bit for that', 'why', 'xyzzy', 'where were we', 'hello']) {
        const step = hear(at, text);
        expect(step.added).toEqual([]);
        expect(step.awaiting).toBe(before);
        expect(step.replies.every((reply) => reply.text.length > 0)).toBe(true);
      }
    },
  );

  test.each(Object.entries(QUESTIONS))(
    'has for %s a reason, an example and a way to find out',
    (_, question) => {
      const asked = typeof question.asks === 'string' ? question.asks : question.asks({}, 'mm');
      expect(asked).toMatch(/\?|\.$/);
      expect(question.why).toMatch(/\.$/);
      expect(question.example).not.toBe('');
      expect(question.howTo).toMatch(/\.$/);
      expect(asked + question.why + question.howTo).not.toMatch(/!/);
    },
  );
});
