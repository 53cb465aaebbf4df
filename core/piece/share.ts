import { type Millimetres, type Newtons, newtons } from '../quantity.ts';

/**
 * Share of a weight between two rigid hangers by where the centre of mass lies: left = W (x2 - xc) / (x2 - x1).
 * Places from any one line in millimetres, newtons out. A centre outside the hangers lifts one of them:
 * its share is then negative. Two hangers at one place take half each.
 */
export function shareOf(
  weight: Newtons,
  leftMm: Millimetres,
  rightMm: Millimetres,
  centreMm: Millimetres,
): { left: Newtons; right: Newtons } {
  const apart = rightMm - leftMm;
  const left = apart === 0 ? weight / 2 : (weight * (rightMm - centreMm)) / apart;
  return { left: newtons(left), right: newtons(weight - left) };
}
