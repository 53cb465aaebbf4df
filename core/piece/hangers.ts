import { type Millimetres, mm } from '../quantity.ts';
import type { HangerPoint } from './piece.ts';

/** A hanger on the piece: from its left edge, and down from its top edge to where it bears. Millimetres. */
export type PlacedHanger = { acrossMm: Millimetres; dropMm: Millimetres };

/**
 * From the piece's left edge to a hanger, in millimetres, or null when nothing says. What was said from the
 * right or from the centre goes before `fromLeftMm`, which is derived from it and may belong to an older width.
 */
function acrossOf(point: Omit<HangerPoint, 'fromTopMm'>, widthMm: Millimetres): Millimetres | null {
  if (point.fromRightMm !== undefined) return mm(widthMm - point.fromRightMm);
  if (point.fromCentreMm !== undefined) return mm(widthMm / 2 + point.fromCentreMm);
  return point.fromLeftMm ?? null;
}

/** Hangers from left to right; null when one of them has no figure across. */
export function placedHangers(points: readonly HangerPoint[], widthMm: Millimetres): PlacedHanger[] | null {
  const placed: PlacedHanger[] = [];
  for (const point of points) {
    const acrossMm = acrossOf(point, widthMm);
    if (acrossMm === null) return null;
    placed.push({ acrossMm, dropMm: point.fromTopMm });
  }
  return placed.sort((one, other) => one.acrossMm - other.acrossMm || one.dropMm - other.dropMm);
}
