import { shareOf } from '../../piece/share.ts';
import { least, type Millimetres, mm, most, type Newtons, newtons } from '../../quantity.ts';

/** Pull on the top screws of a bracket or batten loaded off the wall: N = V a / (z n) (statics), N. */
export function pryingPull(
  shear: Newtons,
  offWallMm: Millimetres,
  toLowerEdgeMm: Millimetres,
  screws: number,
): Newtons {
  return newtons((shear * offWallMm) / (toLowerEdgeMm * screws));
}

/**
 * Share of the worst of n equal screws along a stiff batten loaded `offCentreMm` from its middle:
 * V = W/n (1 + 6 |e| / (s (n + 1))) (screw group with spacing s, moments about its middle), N.
 */
export function worstOfRow(
  weight: Newtons,
  screws: number,
  spacingMm: Millimetres,
  offCentreMm: Millimetres,
): Newtons {
  const even = weight / screws;
  if (screws < 2) return newtons(weight);
  // 6 = 12 / 2: the sum of squares of n evenly spaced places is s^2 n (n^2 - 1) / 12.
  return newtons(even * (1 + (6 * Math.abs(offCentreMm)) / (spacingMm * (screws + 1))));
}

/**
 * Share of each place of a row: of a stiff row V = W/n + W e x / sum(x^2), x from its middle (elastic screw group);
 * `outerTwo` where only the outer ones are reckoned with, by the lever rule, none taking less than nothing. N.
 */
export function shareInRow(
  weight: Newtons,
  places: readonly Millimetres[],
  comMm: Millimetres,
  outerTwo: boolean,
): Newtons[] {
  const first = places[0];
  const last = places.at(-1);
  if (first === undefined || last === undefined) return [];
  if (places.length === 1 || first === last) return places.map(() => newtons(weight / places.length));
  if (outerTwo) {
    const left = most(newtons(0), least(weight, shareOf(weight, first, last, comMm).left));
    return places.map((_, at) => (at === 0 ? left : newtons(at === places.length - 1 ? weight - left : 0)));
  }
  const middle = mm(places.reduce<number>((sum, each) => sum + each, 0) / places.length);
  const squares = places.reduce((sum, each) => sum + (each - middle) ** 2, 0);
  return places.map((each) =>
    newtons(weight / places.length + (weight * (comMm - middle) * (each - middle)) / squares),
  );
}
