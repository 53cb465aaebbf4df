import { type KilogramsPerCubicMetre, kgPerM3, STANDARD_GRAVITY } from '../quantity.ts';
import { type Sourced, sourced } from '../sources.ts';

type Density = Sourced<KilogramsPerCubicMetre>;

/** Where a table gives a range, the heavier end: a mass is guessed high. */
const commonly = (value: number, at: string): Density =>
  sourced(kgPerM3(value), 'EN1991-1-1:2002', `annex A, ${at}`, 'from-memory');

export const GLAZING_DENSITY = {
  glass: sourced(kgPerM3(2500), 'EN572-1', 'density of soda-lime glass', 'from-memory'),
  acrylic: commonly(1190, 'acrylic sheet, 12 kN/m3'),
  polycarbonate: commonly(1200, 'polycarbonate, 12 kN/m3'),
} as const satisfies Record<string, Density>;

export const FRAME_DENSITY = {
  softwood: commonly(500, 'softwood, heavier end'),
  hardwood: commonly(700, 'hardwood'),
  oak: commonly(720, 'oak, heavier end'),
  mdf: commonly(750, 'medium density fibreboard'),
} as const satisfies Record<string, Density>;

export const BACKING_DENSITY = {
  mdf: commonly(750, 'medium density fibreboard'),
  hardboard: commonly(950, 'hardboard'),
  plywood: commonly(700, 'birch plywood, heavier than softwood ply'),
  'foam-board': sourced(kgPerM3(100), 'common-practice', 'foam board', 'common-practice'),
} as const satisfies Record<string, Density>;

export const STEEL_DENSITY = commonly(7850, 'steel, 77 to 78.5 kN/m3');

/** Newtons in a kilonewton, exact. */
const N_PER_KN = 1000;

/** Density of a weight per volume in kN/m3: rho = gamma / g (EN 1991-1-1 annex A gives weights, scales give masses). */
export function densityOfWeight(kilonewtonsPerM3: number): KilogramsPerCubicMetre {
  return kgPerM3((kilonewtonsPerM3 * N_PER_KN) / STANDARD_GRAVITY);
}
