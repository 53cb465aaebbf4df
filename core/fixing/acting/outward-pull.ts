import { type Millimetres, type Newtons, newtons } from '../../quantity.ts';

/** Outward pull at the top of a piece whose bottom edge rests on the wall: N = W e / h (moments about that edge), N. */
export function outwardPull(
  weight: Newtons,
  comFromWallMm: Millimetres,
  aboveBottomMm: Millimetres,
): Newtons {
  return newtons((weight * comFromWallMm) / aboveBottomMm);
}
