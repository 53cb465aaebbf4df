import { type Degrees, degrees, type Millimetres, type Newtons, newtons } from '../quantity.ts';

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

/**
 * Outward pull of all hangers together: N = W e / h, moments about the bottom edge that bears on the wall.
 * `fromWallMm` to the centre of mass, `aboveBottomMm` from bottom edge up to the hanging point.
 */
export function outwardPull(weight: Newtons, fromWallMm: Millimetres, aboveBottomMm: Millimetres): Newtons {
  return newtons((weight * fromWallMm) / aboveBottomMm);
}
