import { describe, expect, test } from 'vitest';
import type { QuestionName } from '../../../../flows/question.ts';
import { hear } from '../as-said.ts';
import { pairs } from '../hear.ts';
import { at, jobOf } from '../score.ts';

const BOTH = (across: number, down: number) => [
  [across, down],
  [-across, down],
];
/** Exact by definition, 1959. */
const IN = 25.4;

/** Invented by us. What is said of hangers is of hangers, whatever was asked; negative from the right. */
const ROWS: [QuestionName | null, string, number[][]][] = [
  ['wall.widthMm', '95 in and 240 down', BOTH(95, 240)],
  ['wall.widthMm', '95 in both sides and 240 down', BOTH(95, 240)],
  ['wall.widthMm', 'left is 95 in, 240 down, the right is the same', BOTH(95, 240)],
  ['wall.heightMm', '95 in and 240 down', BOTH(95, 240)],
  ['wall.finish', '95 in and 240 down', BOTH(95, 240)],
  ['piece.massKg', '95 in and 240 down', BOTH(95, 240)],
  ['confirm', '95 in and 240 down', BOTH(95, 240)],
  [null, '95 in and 240 down', BOTH(95, 240)],
  ['piece.hanging', 'left is 95 in, 240 down, the right is the same', BOTH(95, 240)],
  ['piece.hanging', 'left one 95 in 240 down, same on the right', BOTH(95, 240)],
  ['piece.hanging', 'right is 95 in, 240 down, left the same', BOTH(95, 240)],
  ['piece.hanging', 'left ring 3 1/2 in in and 9 in down, right ditto', BOTH(3.5 * IN, 9 * IN)],
  [
    null,
    'framed print 24 x 36 in, 18 lbs, brick wall, 3 in from each side and 8 in down',
    BOTH(3 * IN, 8 * IN),
  ],
  ['wall.widthMm', 'rings are 95 in and 240 down, wall 2700', BOTH(95, 240)],
];

describe('in and down', () => {
  test.each(ROWS)('%s: "%s" places two hangers (invented)', (awaiting, say, want) => {
    const points = pairs(at(jobOf(hear(say, awaiting)), 'piece.hanging.points'));
    expect(points.length).toBe(want.length);
    for (const [index, [across, down]] of want.entries()) {
      expect(points[index]?.[0]).toBeCloseTo(across ?? 0, 3);
      expect(points[index]?.[1]).toBeCloseTo(down ?? 0, 3);
    }
  });

  test.each([
    ['wall.widthMm', '95 in and 240 down'],
    ['wall.widthMm', '95 in both sides and 240 down'],
    ['place.across', '95 in and 240 down'],
    ['place.up', '95 in and 240 down'],
  ] as const)('%s: "%s" is no length of a wall and no place', (awaiting, say) => {
    const job = jobOf(hear(say, awaiting));
    expect(at(job, 'wall.widthMm')).toBeUndefined();
    expect(at(job, 'place')).toBeUndefined();
  });

  test.each([
    ['wall.widthMm', '120 in', 120 * IN],
    ['wall.widthMm', '120 in wide, 96 down to the skirting', 120 * IN],
    ['wall.widthMm', '95 in, ceiling 240 cm', 95 * IN],
  ] as const)('%s: "%s" stays inches, exact by definition', (awaiting, say, want) => {
    expect(at(jobOf(hear(say, awaiting)), 'wall.widthMm')).toBeCloseTo(want, 3);
  });
});
