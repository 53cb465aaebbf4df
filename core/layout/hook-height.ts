import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';

/** Least gap over furniture: "8 in (20 cm)" of a quoted page. */
const GAP_OVER_FURNITURE = sourced(
  mm(200),
  'common-practice',
  'layout 8: at least 8 in, 20 cm',
  'read-secondary',
);

/** Where a piece and its hook come when its centre is at a height: seat = centre + height / 2 - drop; screw above it. Millimetres. */
export function hookOfCentre(
  centreMm: Millimetres,
  heightMm: Millimetres,
  dropMm: Millimetres,
  seatToScrewMm: Millimetres,
): { seatMm: Millimetres; screwMm: Millimetres; bottomMm: Millimetres; topMm: Millimetres } {
  const top = centreMm + heightMm / 2;
  return {
    seatMm: mm(top - dropMm),
    screwMm: mm(top - dropMm + seatToScrewMm),
    bottomMm: mm(centreMm - heightMm / 2),
    topMm: mm(top),
  };
}

/** Gap a centre height leaves over furniture, and the centre that would leave enough. Millimetres. */
export function overFurniture(
  furnitureTopMm: Millimetres,
  heightMm: Millimetres,
  centreMm: Millimetres,
  leastGapMm: Millimetres = GAP_OVER_FURNITURE.value,
): { gapMm: Millimetres; enough: boolean; centreNeededMm: Millimetres } {
  const gap = centreMm - heightMm / 2 - furnitureTopMm;
  const needed = furnitureTopMm + leastGapMm + heightMm / 2;
  return { gapMm: mm(gap), enough: gap >= leastGapMm, centreNeededMm: mm(Math.max(centreMm, needed)) };
}
