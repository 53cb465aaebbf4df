import { expect, test } from 'vitest';
import type { Shank } from '../../../core/fixing/masonry/walk-row.ts';
import { bendingResistance } from '../../../core/fixing/steel/shank-strength.ts';
import { mm, newtons, STANDARD_GRAVITY } from '../../../core/quantity.ts';

/** kg per screw, hanger 1.5 mm off the finish; the trade reference's table, derived from EN 1992-4 and CEN/TS 1992-4-2. */
const FINISH = [0, 3, 6, 10, 12, 15, 20, 25, 30];
const TABLE: [Shank, number[]][] = [
  [8, [21, 10.5, 7.0, 4.9, 4.2, 3.5, 2.8, 2.3, 1.9]],
  [10, [30, 15.6, 10.5, 7.4, 6.4, 5.4, 4.2, 3.5, 2.9]],
  [12, [43, 24, 16.2, 11.4, 9.9, 8.3, 6.6, 5.4, 4.6]],
  [14, [63, 36, 25, 17.8, 15.6, 13.1, 10.4, 8.6, 7.3]],
  ['coach-8', [87, 51, 36, 26, 23, 19.4, 15.4, 12.8, 10.9]],
  ['stud-M8', [122, 75, 54, 39, 35, 29, 23, 19.5, 16.7]],
];
const rows = TABLE.flatMap(([shank, masses]) =>
  masses.map((mass, at) => ({ shank, finish: FINISH[at] ?? 0, mass })),
);

test.each(rows)(
  '$shank through $finish mm of finish bears $mass kg by bending [derived]',
  ({ shank, finish, mass }) => {
    const force = bendingResistance(shank, mm(finish + 1.5), newtons(0));
    // The table is printed to two or three figures, and its M8 core to one.
    const printed = mass >= 20 ? 0.5 : 0.05;
    expect(Math.abs(force / STANDARD_GRAVITY - mass)).toBeLessThanOrEqual(
      Math.max(printed + 0.001, 0.005 * mass),
    );
  },
);

test('a hanger 6 mm off the finish leaves about 0.8 at 12 mm of plaster and 0.6 at 3 mm [derived]', () => {
  const at = (finish: number, off: number) => bendingResistance(14, mm(finish + off), newtons(0));
  expect(at(12, 6) / at(12, 1.5)).toBeCloseTo(0.8, 1);
  expect(at(3, 6) / at(3, 1.5)).toBeCloseTo(0.6, 1);
});
