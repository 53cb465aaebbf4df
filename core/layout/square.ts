import { type Degrees, type Millimetres, mm } from '../quantity.ts';
import { tiltOf } from './level.ts';

/** Diagonals of a frame sheared sideways: sqrt((w + s)2 + h2) and sqrt((w - s)2 + h2), and what they differ by. Millimetres. */
export function diagonals(
  widthMm: Millimetres,
  heightMm: Millimetres,
  shearMm: Millimetres,
): { longMm: Millimetres; shortMm: Millimetres; differenceMm: Millimetres; skew: Degrees } {
  const long = Math.hypot(widthMm + Math.abs(shearMm), heightMm);
  const short = Math.hypot(widthMm - Math.abs(shearMm), heightMm);
  return {
    longMm: mm(long),
    shortMm: mm(short),
    differenceMm: mm(long - short),
    skew: tiltOf(shearMm, heightMm),
  };
}
