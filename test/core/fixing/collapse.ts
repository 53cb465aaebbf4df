/**
 * A second way to the lateral strength of a screw, by no formula of the code's: a rigid-plastic dowel between two
 * members that crush, its load the least of all collapse mechanisms (upper-bound theorem of limit analysis). A
 * mechanism is where the dowel kinks and how fast it turns; the search is numerical, on a grid that closes in.
 */

/** Lengths mm, line resistances N/mm, hinge moment Nmm. */
export type Dowel = {
  readonly sideMm: number;
  readonly gapMm: number;
  readonly mainMm: number;
  readonly sideQ: number;
  readonly mainQ: number;
  readonly moment: number;
};

/** Integral of |a + b x| from `from` to `to`, exactly. */
function areaUnder(a: number, b: number, from: number, to: number): number {
  if (to <= from) return 0;
  const at = (x: number): number => a + b * x;
  const trapezium = (one: number, other: number): number =>
    ((Math.abs(at(one)) + Math.abs(at(other))) * (other - one)) / 2;
  const zero = b === 0 ? Number.NaN : -a / b;
  return zero > from && zero < to ? trapezium(from, zero) + trapezium(zero, to) : trapezium(from, to);
}

type Range = readonly [number, number];

/** The least value of `work` over a box, by a grid that closes in on its best point. */
function leastOver(work: (...at: number[]) => number, box: readonly Range[]): number {
  const STEPS = 16;
  const ROUNDS = 20;
  let [ranges, best] = [box, Number.POSITIVE_INFINITY];
  // Where a round finds nothing better the next closes in on the best of all rounds.
  let bestAt: number[] = box.map(([low]) => low);
  for (let round = 0; round < ROUNDS; round += 1) {
    const grid = ranges.map(([low, high]) =>
      Array.from({ length: STEPS + 1 }, (_, n) => low + ((high - low) * n) / STEPS),
    );
    const points = grid.reduce<number[][]>(
      (made, axis) => made.flatMap((point) => axis.map((at) => [...point, at])),
      [[]],
    );
    for (const point of points) {
      const value = work(...point);
      if (value < best) [best, bestAt] = [value, point];
    }
    ranges = ranges.map(([low, high], nth) => {
      const reach = (high - low) / 3;
      const middle = bestAt[nth] ?? low;
      const [whole0, whole1] = box[nth] ?? [low, high];
      return [Math.max(whole0, middle - reach), Math.min(whole1, middle + reach)];
    });
  }
  return best;
}

/** Load at which it collapses, N: the side member moves by 1, the main one stays; x runs from the side's outer end. */
export function collapseLoad({ sideMm, gapMm, mainMm, sideQ, mainQ, moment }: Dowel): number {
  const face = sideMm + gapMm;
  const end = face + mainMm;
  // The dowel lies at a + b x; the side crushes by what it lags behind 1, the main member by what it moves.
  const crushed = (a: number, b: number, from: number, to: number): number =>
    sideQ * areaUnder(a - 1, b, Math.max(from, 0), Math.min(to, sideMm)) +
    mainQ * areaUnder(a, b, Math.max(from, face), Math.min(to, end));
  const still = sideQ * sideMm;
  const carried = mainQ * mainMm;
  // The dowel moves with the side at `one` and stays with the main member at `other`, straight between and beyond
  // them unless it kinks there: at neither, at either, at both.
  const mechanism = (kinksAtOne: boolean, kinksAtOther: boolean): number =>
    leastOver(
      (one, other) => {
        const slope = 1 / Math.max(other - one, 1e-9);
        const from = kinksAtOne ? one : 0;
        const to = kinksAtOther ? other : end;
        return (
          crushed(1 + slope * one, -slope, from, to) +
          (Number(kinksAtOne) + Number(kinksAtOther)) * moment * slope
        );
      },
      [
        [0, sideMm],
        [face, end],
      ],
    );
  const kinked = [false, true].flatMap((one) => [false, true].map((other) => mechanism(one, other)));
  return Math.min(still, carried, ...kinked);
}

/** A screw that stands `armMm` out of the wood, loaded at its end, N. */
export function bareCollapseLoad(mainQ: number, moment: number, mainMm: number, armMm: number): number {
  const under = (slope: number, to: number): number => mainQ * areaUnder(1 - slope * armMm, -slope, 0, to);
  const turning = leastOver((zero) => under(1 / (zero + armMm), mainMm), [[0, mainMm]]);
  const hinged = leastOver(
    (at) => under(1 / (at + armMm), at) + moment / (at + armMm),
    [[armMm === 0 ? 1e-6 : 0, mainMm]],
  );
  return Math.min(turning, hinged);
}
