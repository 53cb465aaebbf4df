import { expect, test } from 'vitest';
import { cappedCheck } from '../../../core/fixing/proof/capped-check.ts';
import { practice } from '../../../core/fixing/proof/caps.ts';
import { type HoldingCap, practiceCap } from '../../../core/fixing/proof/holding-cap.ts';
import { pullTestAllowable } from '../../../core/fixing/proof/pull-test.ts';
import { bendingResistance } from '../../../core/fixing/steel/shank-strength.ts';
import { mm, newtons } from '../../../core/quantity.ts';

const TEN_KG = practiceCap(practice(10, 'a cap for this test'), 'anchor-cap');
const RATED: HoldingCap = { ...TEN_KG, mode: 'packet-rating', noSource: false };
const at = (shear: number, tension: number) => ({ shearN: newtons(shear), tensionN: newtons(tension) });

test('outward an anchor that nobody rates counts at half of its cap, a rated one whole (our choice)', () => {
  // 98.0665 N down, half of it out: 49.03325 / 98.0665 + 10 / 49.03325 = 0.703943; rated 0.5 + 10 / 98.0665 = 0.601972.
  const point = at(49.03325, 10);
  const capped = cappedCheck(point, TEN_KG, 'bolt-M5', mm(0));
  expect(capped).toMatchObject({ mode: 'anchor-cap', noSource: true });
  expect(capped.utilisation).toBeCloseTo(0.703943, 5);
  expect(capped.allowed?.shearN).toBeCloseTo(98.0665, 9);
  expect(capped.allowed?.tensionN).toBeCloseTo(49.03325, 9);
  expect(cappedCheck(point, RATED, 'bolt-M5', mm(0)).utilisation).toBeCloseTo(0.601972, 5);
});

test('far enough out the screw bends before the cap is reached, and then it says so with its own value (derived)', () => {
  const point = at(49.03325, 0);
  const bends = bendingResistance(8, mm(40), newtons(0));
  const check = cappedCheck(point, TEN_KG, 8, mm(40));
  expect(check).toMatchObject({ mode: 'screw-bending', resistanceN: bends, noSource: false });
  expect(check.utilisation).toBeCloseTo(49.03325 / bends, 9);
  expect(check.allowed?.shearN).toBe(bends);
  // With nothing down there is nothing to bend.
  expect(cappedCheck(at(0, 5), TEN_KG, 8, mm(40)).mode).toBe('anchor-cap');
});

test.each([
  [[600, 620, 580, 610], 'needs 5 readings; there are 4'],
  [[600, 620, 0, 610, 600], 'reading'],
  [[600, 620, -1, 610, 600], 'reading'],
  [[600, 620, Number.NaN, 610, 600], 'reading'],
  [[600, 620, Number.POSITIVE_INFINITY, 610, 600], 'reading'],
  [[600, 620, 300, 610, 600], 'too uneven'],
])(
  'pull tests of %j are refused: %s (TMS 402 8.1.3.1, read-secondary; scatter our choice)',
  (readings, because) => {
    const test = pullTestAllowable(readings);
    expect(test.ok).toBe(false);
    expect(test.ok ? '' : test.because).toContain(because);
  },
);

test('a lowest reading of just three quarters of the mean counts: a fifth of 400 N is 80 (TMS 402 8.1.3.1; 0.75 our choice)', () => {
  // 300 and four that bring the mean to 400.
  expect(pullTestAllowable([300, 425, 425, 425, 425])).toMatchObject({ ok: true, allowableN: 80 });
});
