import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import type { Step } from '../../flows/step-shape.ts';
import { type Talk, talk } from './talk.ts';

type Dialogue = {
  id: string;
  open: string;
  answers: Record<string, string>;
  expect: { marks: [number, number][]; verdict: string[] };
  arithmetic: string;
};

const FILE = new URL('../fixtures/reference/dialogues.json', import.meta.url);
const DIALOGUES: Dialogue[] = JSON.parse(readFileSync(FILE, 'utf8')).dialogues;

const MOST_MESSAGES = 40;

function answerAll(held: Talk, answers: Record<string, string>): Step {
  for (let said = 1; said < MOST_MESSAGES; said += 1) {
    const { planId, awaiting } = held.last();
    if (planId !== null || awaiting === null) break;
    held.say(answers[awaiting] ?? "don't know");
  }
  return held.last();
}

function endsAsExpected(step: Step, wanted: Dialogue['expect']): void {
  expect(wanted.verdict).toContain(step.plan?.plan.verdict);
  const marks = step.plan?.plan.marks ?? [];
  expect(marks).toHaveLength(wanted.marks.length);
  for (const [at, [fromLeft, up]] of wanted.marks.entries()) {
    expect(Math.abs((marks[at]?.fromLeftMm ?? 0) - fromLeft)).toBeLessThanOrEqual(1);
    expect(Math.abs((marks[at]?.upMm ?? 0) - up)).toBeLessThanOrEqual(1);
  }
}

/** The same shuffle every time: a small congruential step, seeded by the row. */
function shuffled<T>(list: readonly T[], seed: number): T[] {
  const out = [...list];
  let state = seed + 1;
  for (let at = out.length - 1; at > 0; at -= 1) {
    state = (state * 1103515245 + 12345) % 2147483648;
    const other = state % (at + 1);
    [out[at], out[other]] = [out[other] as T, out[at] as T];
  }
  return out;
}

describe('a dialogue of the reference', () => {
  test.each(DIALOGUES)('$id ends in its marks: $arithmetic', ({ open, answers, expect: wanted }) => {
    const held = talk(flow);
    held.say(open);
    endsAsExpected(answerAll(held, answers), wanted);
  });

  test.each(DIALOGUES)(
    '$id ends in its marks when answers come before their questions, in any order',
    ({ id, open, answers, expect: wanted }) => {
      for (const seed of [1, 2, 3]) {
        const held = talk(flow);
        held.say(open);
        const ahead = shuffled(
          Object.entries(AHEAD).filter(([question]) => answers[question] !== undefined),
          seed + id.length,
        );
        for (const [question, say] of ahead) {
          if (held.last().planId === null) held.say(say(answers[question] ?? ''));
        }
        endsAsExpected(answerAll(held, answers), wanted);
      }
    },
  );

  test.each(DIALOGUES)(
    '$id needs at most 18 questions of a crew not known yet, 17 of one that is',
    ({ open, answers }) => {
      const known = { country: 'AU' } as const;
      for (const [crew, most] of [
        [{}, 18],
        [known, 17],
      ] as const) {
        const held = talk(flow, crew);
        const asked = new Set([held.say(open).awaiting]);
        while (held.last().planId === null && held.last().awaiting !== null && asked.size < MOST_MESSAGES) {
          asked.add(held.say(answers[held.last().awaiting ?? ''] ?? "don't know").awaiting);
        }
        asked.delete('acknowledge');
        expect(asked.size).toBeLessThanOrEqual(most);
      }
    },
  );
});

/** Answers said ahead of their question, in words that say what they are about. */
const AHEAD: Record<string, (answer: string) => string> = {
  'piece.massKg': (answer) => `it weighs ${answer}`,
  'building.yearBuilt': (answer) => `built in ${answer}`,
  'wall.widthMm': (answer) => `the wall is ${answer} wide`,
  'wall.heightMm': (answer) => `the ceiling is ${answer} high`,
  'building.country': (answer) => `we're in ${answer}`,
  'building.kind': (answer) => `it's ${answer}`,
  'crew.people': (answer) => `${answer} to lift it`,
};
