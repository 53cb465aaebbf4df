import { type KilogramsPerCubicMetre, kgPerM3, STANDARD_GRAVITY } from '../quantity.ts';
import { type Sourced, sourced } from '../sources.ts';

type Density = Sourced<KilogramsPerCubicMetre>;

/** Where the trade gives a range, the heavier end: a mass is guessed high. */
const remembered = (value: number, at: string): Density =>
  sourced(kgPerM3(value), 'common-practice', `trade 4.2, density of ${at}`, 'from-memory');
const tabled = (value: number, at: string): Density =>
  sourced(kgPerM3(value), 'EN1991-1-1:2002', `annex A, ${at}`, 'from-memory');

export const GLAZING_DENSITY = {
  glass: sourced(kgPerM3(2500), 'EN572-1', 'density of soda-lime glass', 'from-memory'),
  acrylic: tabled(1190, 'acrylic sheet, 12 kN/m3'),
  polycarbonate: remembered(1200, 'polycarbonate'),
} as const satisfies Record<string, Density>;

export const FRAME_DENSITY = {
  softwood: remembered(500, 'softwood'),
  hardwood: remembered(700, 'hardwood'),
  oak: remembered(720, 'oak'),
  mdf: remembered(750, 'fibreboard'),
} as const satisfies Record<string, Density>;

export const BACKING_DENSITY = {
  mdf: remembered(750, 'fibreboard'),
  hardboard: remembered(950, 'hardboard'),
  plywood: remembered(700, 'plywood, heavier end'),
  'foam-board': remembered(100, 'foam board'),
} as const satisfies Record<string, Density>;

export const STEEL_DENSITY = tabled(7850, 'steel, 77 to 78.5 kN/m3');

/** Newtons in a kilonewton, exact. */
const N_PER_KN = 1000;

/** Density of a weight per volume in kN/m3: rho = gamma / g (EN 1991-1-1 annex A gives weights, scales give masses). */
export function densityOfWeight(kilonewtonsPerM3: number): KilogramsPerCubicMetre {
  return kgPerM3((kilonewtonsPerM3 * N_PER_KN) / STANDARD_GRAVITY);
}
