import { describe, expect, test } from 'vitest';
import type { QuestionName } from '../../../../flows/question.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';

/** Invented by us. What it is likened to weighs differently everywhere, and is nothing of the job's. */
const LIKENED: (QuestionName | null)[] = ['piece.massKg', null];

describe('a weight told by likeness', () => {
  test.each(LIKENED)('to %s gives no figure, and a figure is asked for', (awaiting) => {
    const { facts, refused } = hear('it weighs as much as two bags of cement', awaiting);
    expect(facts).toEqual([]);
    expect(refused.map(({ question }) => question)).toEqual(['piece.massKg']);
  });

  test.each([
    ['piece.massKg', 'two bags of cement', 'reject'],
    ['piece.massKg', 'about 3 bricks', 'reject'],
    ['piece.massKg', 'like a 5 year old', 'reject'],
    ['piece.massKg', 'about the same as my bike', 'reject'],
    ['piece.massKg', 'two 20kg bags', 'ask'],
    ['piece.massKg', 'more like 30', { 'piece.massKg': 30 }],
    ['piece.massKg', 'more like thirty five', { 'piece.massKg': 35 }],
    ['piece.massKg', '30 kilos, maybe more like 35', { 'piece.massKg': 35 }],
    ['piece.massKg', 'feels like 20 kilos', { 'piece.massKg': 20 }],
    [
      'piece.massKg',
      "I'd say as heavy as a bag of cement, brick wall",
      { 'piece.massKg': undefined, 'wall.baseMaterial': 'clay-brick' },
    ],
    [
      null,
      'mirror on brick, weighs as much as two bags of cement',
      { 'piece.massKg': undefined, 'wall.baseMaterial': 'clay-brick', 'piece.kind': 'mirror' },
    ],
  ] satisfies Row[])('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
