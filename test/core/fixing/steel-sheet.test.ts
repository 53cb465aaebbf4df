import { expect, test } from 'vitest';
import { nominal, nominalOf } from '../../../core/fixing/steel/screw-sizes.ts';
import { sheetPullOut, sheetShear } from '../../../core/fixing/steel/steel-to-steel.ts';
import { MPA_PER_PSI, NEWTONS_PER_LBF } from '../../../core/fixing/timber/us-units.ts';
import { mm, mpa } from '../../../core/quantity.ts';

const FU = mpa(45_000 * MPA_PER_PSI);
const sheet = (inch: number) => ({ thicknessMm: mm(inch * 25.4), tensileMpa: FU });

test.each([
  [0.018, 44],
  [0.036, 87],
  [0.06, 145],
])('a No. 10 in steel of %s in, F_u 45 ksi, pulls out at %s lbf [AISI S100, read-secondary]', (inch, lbf) => {
  const force = sheetPullOut(nominalOf(10), sheet(inch));
  if (typeof force === 'object') throw new Error(force.notCovered);
  expect(Math.abs(force / NEWTONS_PER_LBF - lbf)).toBeLessThanOrEqual(0.6);
});

test('in thin steel it tips before it bears: 4.2 (t^3 d)^0.5 F_u / 3 = 66.3 lbf at 0.018 in, 2.7 t d F_u / 3 from 0.08 in on [AISI S100, read-secondary]', () => {
  // (0.018^3 x 0.190)^0.5 = 0.00105266; x 4.2 x 45000 / 3 = 66.32. At 0.09: tipping 741.5, bearing 2.7 x 0.09 x 0.19 x 15000 = 692.6.
  expect(Number(sheetShear(nominalOf(10), sheet(0.018))) / NEWTONS_PER_LBF).toBeCloseTo(66.32, 1);
  expect(Number(sheetShear(nominalOf(10), sheet(0.09))) / NEWTONS_PER_LBF).toBeCloseTo(692.55, 1);
});

test('screws outside 0.08 to 0.25 in are not covered', () => {
  for (const d of [2, 6.4]) expect(sheetPullOut(nominal(mm(d)), sheet(0.03))).toHaveProperty('notCovered');
});
