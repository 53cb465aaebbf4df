import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowOf } from '../../flows/flow.ts';
import { fold } from '../../flows/fold.ts';
import { QUESTION_NAMES } from '../../flows/question.ts';
import { QUESTIONS } from '../../flows/questions/all.ts';
import { ANSWERS, MORE_ANSWERS, plainParts } from './plain-parts.ts';
import { talk } from './talk.ts';

const flow = flowOf(plainParts);

const words = [...ANSWERS, ...MORE_ANSWERS].map(([text]) => text);
const turns = [
  'yes',
  'no',
  'back',
  'start over',
  'why',
  'why 72 mm',
  'help',
  'stop',
  'hello',
  'dont know',
  'where were we',
  'plaster wall',
  '1',
  'the second',
  'a new one',
  'xyzzy',
  '',
  '  ',
  '\u202eabc',
  '__proto__',
];

const typed = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...words) },
  { weight: 2, arbitrary: fc.subarray(words, { minLength: 2, maxLength: 8 }).map((each) => each.join(', ')) },
  { weight: 2, arbitrary: fc.constantFrom(...words).map((each) => `make that ${each}`) },
  { weight: 1, arbitrary: fc.constantFrom(...words).map((each) => `next: ${each}`) },
  { weight: 3, arbitrary: fc.constantFrom(...turns) },
  { weight: 1, arbitrary: fc.string() },
);
const button = fc.record({
  choice: fc.oneof(
    fc.constantFrom(...QUESTION_NAMES.flatMap((name) => QUESTIONS[name].choices.map(({ value }) => value))),
    fc.constantFrom('reading-1', 'reading-2', 'reading-9', 'toString'),
  ),
  question: fc.constantFrom<string>(...QUESTION_NAMES, 'wall.gone', 'constructor'),
});
const soup = fc.array(fc.oneof({ weight: 4, arbitrary: typed }, { weight: 1, arbitrary: button }), {
  maxLength: 40,
});

describe('whatever is thrown at it, the conversation', () => {
  test('keeps the job equal to the fold of its entries and asks at most one thing, the one it waits for', () => {
    fc.assert(
      fc.property(soup, (messages) => {
        const held = talk(flow, { country: 'AU' });
        for (const message of messages) {
          const { known, replies, awaiting, plan, planId } = held.say(message);
          expect(known).toEqual(fold(held.entries()).job);
          const questions = replies.filter((reply) => reply.kind === 'question');
          expect(questions.map(({ question }) => question)).toEqual(awaiting === null ? [] : [awaiting]);
          expect(replies.length).toBeGreaterThan(0);
          expect(replies.every(({ text }) => text.trim() !== '')).toBe(true);
          if (plan) expect(planId).toBe(plan.id);
          if (plan?.plan.verdict === 'stop')
            expect(replies.some(({ kind }) => kind === 'marks' || kind === 'fixing')).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('stands where it stood when it is taken up again from its entries', () => {
    fc.assert(
      fc.property(soup, (messages) => {
        const held = talk(flow);
        for (const message of messages) held.say(message);
        const stood = held.say('hello');
        const again = talk(flow, {}, flow.resume(held.entries(), stood.planId, {})).say('hello');
        expect([again.awaiting, again.known, again.planId]).toEqual([
          stood.awaiting,
          stood.known,
          stood.planId,
        ]);
        expect(again.replies).toEqual(stood.replies);
      }),
      { numRuns: 200 },
    );
  });
});
