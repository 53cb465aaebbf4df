import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fold } from '../../flows/fold.ts';
import * as flow from '../../flows/step.ts';
import { talk } from './talk.ts';

const FILE = new URL('../fixtures/reference/sayings.json', import.meta.url);
const SAYINGS: string[] = JSON.parse(readFileSync(FILE, 'utf8')).rows.map((row: { say: string }) => row.say);

const anything = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...SAYINGS) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      'yes',
      'no',
      'none of these',
      'back',
      'why',
      'start over',
      "don't know",
      'stop',
      'help',
      'the second',
      'Australia',
      '1974',
      'I rent',
      'nothing',
      'none on either side',
    ),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
);

describe('whatever is said on site, the conversation', () => {
  test('keeps the job equal to the fold of its entries, asks one thing, and gives no mark with a stop', () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 25 }), (messages) => {
        const held = talk(flow);
        for (const message of messages) {
          const { known, replies, awaiting, plan } = held.say(message);
          expect(known).toEqual(fold(held.entries()).job);
          const questions = replies.filter((reply) => reply.kind === 'question');
          expect(questions.map(({ question }) => question)).toEqual(awaiting === null ? [] : [awaiting]);
          expect(replies.every(({ text }) => text.trim() !== '')).toBe(true);
          if (plan?.plan.verdict === 'stop')
            expect([plan.plan.marks, plan.plan.fixing, plan.plan.steps]).toEqual([[], null, []]);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('stands where it stood when it is taken up again from its entries', () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 25 }), (messages) => {
        const held = talk(flow);
        for (const message of messages) held.say(message);
        const stood = held.say('hello');
        const again = talk(flow, {}, flow.resume(held.entries(), stood.planId, {})).say('hello');
        expect([again.awaiting, again.known, again.planId]).toEqual([
          stood.awaiting,
          stood.known,
          stood.planId,
        ]);
      }),
      { numRuns: 60 },
    );
  });
});
