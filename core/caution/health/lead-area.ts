import { type Millimetres, MM_PER_INCH, mm2, type SquareMillimetres } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

/** Painted surface of one room, in square feet, 30 days added up. */
export const MINOR_REPAIR = sourced(6, '40CFR745.83', 'minor repair and maintenance, interior', 'read');

/** A foot is twelve inches, exact. */
const MM2_PER_FT2 = (MM_PER_INCH * 12) ** 2;

/** Area of round holes in square millimetres: n pi d^2 / 4. */
export function disturbedByHoles(holes: number, diameterMm: Millimetres): SquareMillimetres {
  return mm2((holes * Math.PI * diameterMm * diameterMm) / (2 * 2));
}

/** Area of a panel cut out: all of it counts. */
export function disturbedByPanel(widthMm: Millimetres, heightMm: Millimetres): SquareMillimetres {
  return mm2(widthMm * heightMm);
}

/** Square millimetres in square feet. */
export function squareFeet(area: number): number {
  return area / MM2_PER_FT2;
}

/** Whether an area (square millimetres) is minor repair under 40 CFR 745.83. */
export function withinMinorRepair(area: number): boolean {
  return squareFeet(area) <= MINOR_REPAIR.value;
}
