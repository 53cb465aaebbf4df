import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cordForRise, riseOfCord } from '../../../core/piece/cord.ts';
import { cordTension } from '../../../core/piece/cord-tension.ts';
import { mm, newtons } from '../../../core/quantity.ts';

/** A cord with its rings at (0, 0) and (S, 0) and two hooks s apart about the middle, or one hook where s is 0. */
const cord = fc
  .record({
    spread: fc.integer({ min: 100, max: 2000 }),
    apart: fc.double({ min: 0, max: 0.95, noNaN: true }),
    slack: fc.double({ min: 1.002, max: 2.5, noNaN: true }),
  })
  .map(({ spread, apart, slack }) => ({ spread, hooks: spread * apart, length: spread * slack }));

/** Length of the polyline ring, hook, hook, ring, by its corners alone. */
function lengthOver(points: readonly (readonly [number, number])[]): number {
  return points.slice(1).reduce((all, [x, y], at) => {
    const [px = 0, py = 0] = points[at] ?? [];
    return all + Math.sqrt((x - px) ** 2 + (y - py) ** 2);
  }, 0);
}

/** How high the hooks come when the cord is drawn tight, found by halving: no triangle is solved. */
function riseByHalving(spread: number, hooks: number, length: number): number {
  let [low, high] = [0, length];
  for (let n = 0; n < 80; n += 1) {
    const rise = (low + high) / 2;
    const [left, right] = [(spread - hooks) / 2, (spread + hooks) / 2];
    const tight = lengthOver([
      [0, 0],
      [left, rise],
      [right, rise],
      [spread, 0],
    ]);
    if (tight > length) high = rise;
    else low = rise;
  }
  return (low + high) / 2;
}

/** Lowest place of a heavy piece under one smooth hook of a cord of fixed length: potential energy by golden section over the hook’s place along the rings. */
function deepestUnderOneHook(spread: number, length: number): { atMm: number; riseMm: number } {
  // The hook lies where both legs make up the length; the piece hangs level, so its depth is the hook’s height over the rings.
  const riseAt = (x: number): number => {
    let [low, high] = [0, length];
    for (let n = 0; n < 60; n += 1) {
      const rise = (low + high) / 2;
      if (
        lengthOver([
          [0, 0],
          [x, rise],
          [spread, 0],
        ]) > length
      )
        high = rise;
      else low = rise;
    }
    return (low + high) / 2;
  };
  let [from, to] = [0, spread];
  for (let n = 0; n < 80; n += 1) {
    const [one, other] = [from + (to - from) / 3, to - (to - from) / 3];
    if (riseAt(one) < riseAt(other)) from = one;
    else to = other;
  }
  const atMm = (from + to) / 2;
  return { atMm, riseMm: riseAt(atMm) };
}

test('the rise of a cord in closed form is the rise found by halving its polyline (statics, derived, over the domain)', () => {
  fc.assert(
    fc.property(cord, ({ spread, hooks, length }) => {
      const closed = riseOfCord(mm(length), mm(spread), mm(hooks));
      if (!closed.ok) throw new Error(closed.because);
      expect(closed.riseMm).toBeCloseTo(riseByHalving(spread, hooks, length), 4);
    }),
    { numRuns: 500 },
  );
});

test('the cord for a rise, hung, rises by as much', () => {
  fc.assert(
    fc.property(cord, ({ spread, hooks, length }) => {
      const rise = riseByHalving(spread, hooks, length);
      expect(cordForRise(mm(rise), mm(spread), mm(hooks))).toBeCloseTo(length, 4);
    }),
    { numRuns: 300 },
  );
});

test('a level piece hangs lowest with one hook in the middle of its rings: least potential energy finds the same rise', () => {
  fc.assert(
    fc.property(cord, ({ spread, length }) => {
      const closed = riseOfCord(mm(length), mm(spread), mm(0));
      if (!closed.ok) throw new Error(closed.because);
      const deepest = deepestUnderOneHook(spread, length);
      expect(deepest.riseMm).toBeCloseTo(closed.riseMm, 3);
      // The energy is flat about its least, so the place is known far less finely than the depth.
      expect(Math.abs(deepest.atMm - spread / 2)).toBeLessThan(spread / 100);
    }),
    { numRuns: 60 },
  );
});

/** Virtual work: lowering the piece by dr stretches the cord by dL = T-free geometry, and W dr = T dL. */
test('the tension is the weight times how far it sinks over how far the cord gives (virtual work)', () => {
  fc.assert(
    fc.property(cord, ({ spread, hooks, length }) => {
      const closed = riseOfCord(mm(length), mm(spread), mm(hooks));
      if (!closed.ok) throw new Error(closed.because);
      const give = length * 1e-5;
      const sinks = riseByHalving(spread, hooks, length + give) - riseByHalving(spread, hooks, length - give);
      const byWork = (200 * sinks) / (2 * give);
      expect(cordTension(newtons(200), closed.legAngle) / byWork).toBeCloseTo(1, 3);
    }),
    { numRuns: 300 },
  );
});
