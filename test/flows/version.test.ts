import { describe, expect, test } from 'vitest';
import type { Entry } from '../../flows/entry.ts';
import { flowOf } from '../../flows/flow.ts';
import type { QuestionName } from '../../flows/question.ts';
import { todaysName, withTodaysNames } from '../../flows/renamed.ts';
import { ANSWERS, plainParts } from './plain-parts.ts';
import { talk } from './talk.ts';

const before = flowOf(plainParts, 'before');
const after = flowOf(plainParts, 'after');
const ALL = ANSWERS.map(([text]) => text);

describe('a conversation begun under one version', () => {
  test.each(ALL.map((_, at) => at))('goes on under the next after %i answers, nothing lost', (at) => {
    const held = talk(before);
    held.say('hello');
    for (const text of ALL.slice(0, at)) held.say(text);
    const asked = held.say('hello').awaiting;
    const next = talk(after, {}, held.at());
    expect(next.say('hello').awaiting).toBe(asked);
    expect(next.last().known).toEqual(held.last().known);
    const yes = next.all(...ALL.slice(at), 'yes');
    expect(yes.plan?.plan.marks[0]?.fromLeftMm).toBe(930);
    expect(yes.next.flow).toBe('after');
  });

  test('keeps the plan that stands, and its id', () => {
    const held = talk(before);
    const { planId } = held.all(...ALL, 'yes');
    const next = talk(after, {}, held.at());
    expect(next.say('hello')).toMatchObject({ planId, plan: null, awaiting: 'acknowledge' });
  });

  test('reads an answer recorded under a question that has another name now', () => {
    const renamed: Record<string, QuestionName> = { 'wall.material': 'wall.baseMaterial' };
    const held = talk(before);
    held.all('a mirror', 'brick');
    const old = held.entries().map((entry) => ({
      ...entry,
      question: entry.question === 'wall.baseMaterial' ? 'wall.material' : entry.question,
    })) as Entry[];
    const named = withTodaysNames(old, renamed);
    expect(named.map(({ question }) => question)).toEqual(['piece.kind', 'wall.baseMaterial']);
    expect(talk(after, {}, after.resume(named, null, {})).say('back').awaiting).toBe('wall.baseMaterial');
    expect(todaysName('wall.material', renamed)).toBe('wall.baseMaterial');
    expect(todaysName('wall.nowhere', renamed)).toBeNull();
  });

  test('keeps the value of an answer whose question is gone', () => {
    const held = talk(before);
    held.all('a mirror', 'brick');
    const gone = held.entries().map((entry) => ({ ...entry, question: 'wall.gone' })) as unknown as Entry[];
    const next = talk(after, {}, after.resume(gone, null, {})).say('hello');
    expect(next.known).toEqual(held.last().known);
  });
});
