import { type Degrees, degrees, type Millimetres } from '../quantity.ts';

/** A half turn, in degrees: pure geometry. */
const HALF_TURN = 180;

/**
 * Forward lean of a hung piece: asin((stand-off - bumper) / height of the hanging point above the bottom edge).
 * Millimetres in, degrees out; equal bumpers remove it. Null where the hanger would stand off further than it is high.
 */
export function forwardLean(
  standOffMm: Millimetres,
  bumperMm: Millimetres,
  aboveBottomMm: Millimetres,
): Degrees | null {
  const sine = (standOffMm - bumperMm) / aboveBottomMm;
  return Math.abs(sine) <= 1 ? degrees((Math.asin(sine) * HALF_TURN) / Math.PI) : null;
}
