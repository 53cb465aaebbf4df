import { type Millimetres, type Newtons, newtons } from '../quantity.ts';

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
