import { describe, expect, test } from 'vitest';
import { kg, mm } from '../../../../core/quantity.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';
import { at, jobOf } from '../score.ts';

const hanging = (say: string, known = {}) =>
  at(jobOf(hear(say, 'piece.hanging', { known })), 'piece.hanging') as Record<string, unknown>;

/** Invented by us. A sawtooth is one bracket in the middle, and never taken for rings. */
describe('a sawtooth hanger', () => {
  test.each([
    ['sawtooth hanger in the middle, 10 down', 10],
    ['one zigzag bracket in the middle 15 down', 15],
    ['saw-tooth thing, 12mm from the top', 12],
  ])('"%s" bears in the middle, %d down', (say, down) => {
    expect(hanging(say)).toEqual({
      by: 'rings',
      hanger: 'sawtooth',
      points: [{ fromCentreMm: 0, fromTopMm: down }],
    });
  });

  test.each(['sawtooth hanger', 'one zigzag bracket', 'saw tooth'])('"%s" still lacks its drop', (say) => {
    expect(hanging(say)).toMatchObject({ hanger: 'sawtooth', points: [{ fromCentreMm: 0 }] });
  });

  test('rings told afterwards replace it', () => {
    const known = {
      piece: {
        massKg: kg(8),
        hanging: {
          by: 'rings' as const,
          hanger: 'sawtooth' as const,
          points: [{ fromCentreMm: mm(0), fromTopMm: mm(10) }],
        },
      },
    };
    expect(hanging('two rings 95 in 240 down', known)).toMatchObject({ hanger: 'ring' });
  });

  test.each([
    [
      null,
      'picture 8kg with a sawtooth hanger on brick',
      { 'piece.hanging.hanger': 'sawtooth', 'piece.massKg': 8 },
    ],
    ['piece.hanging', 'just a nail', 'reject'],
    ['piece.hanging', 'sticky strips', 'reject'],
  ] satisfies Row[])('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
