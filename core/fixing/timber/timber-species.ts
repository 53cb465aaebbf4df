import { type KilogramsPerCubicMetre, kgPerM3, type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { type NominalDiameter, nominal, type RootDiameter } from '../steel/screw-sizes.ts';

/** Specific gravity, and on which volume it was reckoned: the two differ by a few hundredths. */
export type SpecificGravity = { readonly g: number; readonly volume: 'oven-dry' | '12-percent' };

/** An unknown softwood stud: the lightest of the softwoods it may be. */
export const UNKNOWN_STUD_G = sourced<SpecificGravity>(
  { g: 0.36, volume: 'oven-dry' },
  'NDS-2018',
  'Table 12.3.3A, the lowest of the common softwoods; that it is taken for an unknown stud is our choice',
  'our-choice',
);

/** EN 338 strength classes: characteristic and mean density, kg/m3. */
export const STRENGTH_CLASS_DENSITY = sourced(
  {
    C14: { characteristic: kgPerM3(290), mean: kgPerM3(350) },
    C16: { characteristic: kgPerM3(310), mean: kgPerM3(370) },
    C24: { characteristic: kgPerM3(350), mean: kgPerM3(420) },
    C30: { characteristic: kgPerM3(380), mean: kgPerM3(460) },
  },
  'EN338:2016',
  'Table 1',
  'read',
);

const WATER = sourced(1000, 'FPL-GTR-282', 'ch. 4 Eq. 4-6a', 'from-memory');

/** Density from specific gravity at a moisture content: rho = 1000 G (1 + M/100) (Wood Handbook Eq. 4-6a), kg/m3. */
export function densityOf(g: number, moistureRatio: number): KilogramsPerCubicMetre {
  return kgPerM3(WATER.value * g * (1 + moistureRatio));
}

/** Lead hole as a share of the root, and shank clearance as a share of the nominal diameter. */
export const LEAD_HOLE = sourced(
  { softwood: 0.7, hardwood: 0.9, shank: 7 / 8 },
  'CWC-lead-holes',
  'Fig. 5.5; NDS-2018 12.1.5.2',
  'read',
);

/** Pilot hole for the thread: 70 % of the root in softwood, 90 % in hardwood, mm. */
export function pilotHole({ rootMm }: RootDiameter, wood: 'softwood' | 'hardwood'): Millimetres {
  return mm(LEAD_HOLE.value[wood] * rootMm);
}

/** Clearance hole for the shank: 7/8 of the nominal diameter, mm. */
export function shankHole({ nominalMm }: NominalDiameter): NominalDiameter {
  return nominal(mm(LEAD_HOLE.value.shank * nominalMm));
}
