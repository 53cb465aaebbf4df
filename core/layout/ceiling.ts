import { type Millimetres, mm } from '../quantity.ts';
import type { Wall } from '../wall/wall.ts';

/** What is known of a ceiling: its height at the wall's left end, how it runs out over the wall, and over how much. */
export type Ceiling = Partial<Pick<Wall, 'heightMm' | 'ceilingFallMm' | 'widthMm'>>;

/** Height of the ceiling above the floor at a place: wall height + ceiling fall x place / wall width. Millimetres; null when not known. */
export function ceilingOver(wall: Ceiling, xMm: Millimetres): Millimetres | null {
  if (wall.heightMm === undefined) return null;
  return mm(wall.heightMm + ceilingRise(wall, mm(0), xMm));
}

/** How much higher a ceiling is at one place than at another: ceiling fall x (at - from) / wall width. Millimetres. */
export function ceilingRise(wall: Ceiling, fromMm: Millimetres, atMm: Millimetres): Millimetres {
  const { ceilingFallMm: fall, widthMm } = wall;
  return fall === undefined || fall === 0 || widthMm === undefined
    ? mm(0)
    : mm((fall * (atMm - fromMm)) / widthMm);
}

/** The ceiling of a wall as it is known: with the ceiling as datum its height and fall are the datum's own, at mark A. */
export const ceilingApart = ({ heightMm, widthMm, ceilingFallMm, datum }: Partial<Wall>): Ceiling => ({
  ...(heightMm !== undefined && { heightMm }),
  ...(widthMm !== undefined && { widthMm }),
  ...(ceilingFallMm !== undefined && datum?.kind !== 'ceiling' && { ceilingFallMm }),
});

/** Height of the ceiling over the lower of a frame's two top corners; null when not known. Millimetres above the floor. */
export function lowestCeiling(wall: Ceiling, leftMm: Millimetres, rightMm: Millimetres): Millimetres | null {
  const [left, right] = [ceilingOver(wall, leftMm), ceilingOver(wall, rightMm)];
  return left === null || right === null ? null : mm(Math.min(left, right));
}

/** The height that "below the ceiling" is taken from: over the lower corner; with the ceiling as datum at mark A, as said. */
export function ceilingToHangBy(
  wall: Ceiling & Pick<Wall, 'datum'>,
  leftMm: Millimetres,
  rightMm: Millimetres,
): Millimetres | undefined {
  return lowestCeiling(ceilingApart(wall), leftMm, rightMm) ?? undefined;
}
