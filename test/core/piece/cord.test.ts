import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cordForRise, cordOfRise, riseOfCord } from '../../../core/piece/cord.ts';
import { cordTension, hookSidePull, inwardPull } from '../../../core/piece/cord-tension.ts';
import { shareOf } from '../../../core/piece/share.ts';
import { degrees, mm, newtons } from '../../../core/quantity.ts';

const length = (min: number, max: number) => fc.integer({ min, max });

// Layout notes, derived: L 660, S 600 rises 137.5 over one hook; trade 5.2: T at 20 degrees 1.46 W.
test('660 of cord over rings 600 apart rises 137.477: sqrt(330^2 - 300^2) = sqrt(18900)', () => {
  const cord = riseOfCord(mm(660), mm(600), mm(0));
  expect(cord.ok && cord.riseMm).toBeCloseTo(137.477, 3);
});

test.each([
  [60, 0.58],
  [45, 0.71],
  [30, 1],
  [20, 1.46],
  [15, 1.93],
  [10, 2.88],
])('at %s degrees a cord pulls %s of the weight (trade 5.2, derived)', (angle, factor) => {
  expect(cordTension(newtons(1), degrees(angle))).toBeCloseTo(factor, 2);
});

test('the line for a rise, hung, rises by it', () => {
  fc.assert(
    fc.property(length(200, 1500), length(1, 600), length(0, 200), (spread, rise, apart) => {
      const line = cordForRise(mm(rise), mm(spread), mm(apart));
      const cord = riseOfCord(line, mm(spread), mm(apart));
      expect(cord.ok && cord.riseMm).toBeCloseTo(rise, 6);
    }),
  );
});

test('tension is what holds half the weight up and pulls the ring in: T^2 = (W / 2)^2 + H^2', () => {
  fc.assert(
    fc.property(length(200, 1500), length(1, 600), (spread, rise) => {
      const cord = cordOfRise(mm(rise), mm(spread), mm(0));
      if (!cord.ok) throw new Error(cord.because);
      const tension = cordTension(newtons(200), cord.legAngle);
      expect(tension).toBeCloseTo(Math.hypot(100, inwardPull(newtons(200), cord.legAngle)), 6);
    }),
  );
});

test('at 60 degrees two hooks are pulled toward each other by half the tension', () => {
  expect(hookSidePull(newtons(100), degrees(60))).toBeCloseTo(50, 9);
});

// Layout notes, derived: 24 kg, rings at 200 and 1000, mass at 520: 14.4 and 9.6.
test.each([
  ['between the rings', 520, 14.4, 9.6],
  ['outside them, so that one is lifted', 1200, -6, 30],
])('24 on rings at 200 and 1000 with its centre %s', (_, centre, left, right) => {
  const share = shareOf(newtons(24), mm(200), mm(1000), mm(centre));
  expect(share.left).toBeCloseTo(left, 9);
  expect(share.right).toBeCloseTo(right, 9);
});
