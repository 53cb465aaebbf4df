import { type Megapascals, type Millimetres, MM_PER_INCH, mm, mpa } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { NominalDiameter, RootDiameter } from '../steel/screw-sizes.ts';
import type { NotCovered } from './timber-withdrawal.ts';
import { MPA_PER_PSI } from './us-units.ts';

/** F_e = 16600 G^1.84 psi for fasteners under 1/4 inch, rounded to 50 psi in the tables. */
const DOWEL_BEARING = sourced(
  { psi: 16600, power: 1.84, roundPsi: 50, underIn: 0.25 },
  'NDS-2018',
  'Table 12.3.3 footnote 2',
  'read',
);
/** Thin steel side plate (A653 grade 33). */
export const STEEL_PLATE_BEARING = sourced(mpa(61850 * MPA_PER_PSI), 'NDS-2018', 'Table 12M', 'read');

/** Bending yield strength by nominal diameter: the first band that holds it. */
const BENDING_YIELD = sourced(
  [
    { upToIn: 0.142, psi: 100000 },
    { upToIn: 0.177, psi: 90000 },
    { upToIn: 0.236, psi: 80000 },
    { upToIn: 0.273, psi: 70000 },
    { upToIn: 0.344, psi: 60000 },
    { upToIn: 0.375, psi: 45000 },
  ],
  'NDS-2018',
  'Appendix I, Table I1',
  'read',
);
const BENDING_YIELD_FROM_IN = sourced(0.099, 'NDS-2018', 'Appendix I, Table I1', 'read');

/** K_D: 2.2 to 0.17 in, 10 D + 0.5 to 1/4 in. */
const REDUCTION = sourced(
  { small: 2.2, upToIn: 0.17, slope: 10, base: 0.5 },
  'NDS-2018',
  'Table 12.3.1B',
  'read',
);

/** Penetration: least 6 D, full value from 10 D, tip 2 D (NDS 12.1.5.6, Table L3). */
export const PENETRATION = sourced(
  { least: 6, full: 10, tip: 2 },
  'NDS-2018',
  '12.1.5.6; Table L3 note 3',
  'read',
);

/** Dowel bearing strength: F_e = 16600 G^1.84 psi (NDS Table 12.3.3), D under 1/4 in, MPa. */
export function dowelBearing(g: number): Megapascals {
  return mpa(DOWEL_BEARING.value.psi * MPA_PER_PSI * g ** DOWEL_BEARING.value.power);
}

/** The same as the table prints it, to the nearest 50 psi, MPa. */
export function dowelBearingAsTabled(g: number): Megapascals {
  const { roundPsi } = DOWEL_BEARING.value;
  return mpa(Math.round(dowelBearing(g) / MPA_PER_PSI / roundPsi) * roundPsi * MPA_PER_PSI);
}

/** Bending yield strength F_yb of a wood screw or nail by nominal diameter (NDS Table I1), MPa, 0.099 to 0.375 in. */
export function bendingYield({ nominalMm }: NominalDiameter): Megapascals | NotCovered {
  const inch = nominalMm / MM_PER_INCH;
  const band = BENDING_YIELD.value.find((each) => inch <= each.upToIn);
  if (!band || inch < BENDING_YIELD_FROM_IN.value)
    return { notCovered: `NDS Table I1 does not cover ${nominalMm} mm` };
  return mpa(band.psi * MPA_PER_PSI);
}

/** Reduction term R_d = K_D of a fastener under 1/4 in (NDS Table 12.3.1B), by its root diameter. */
export function reductionTerm({ rootMm }: RootDiameter): number {
  const inch = rootMm / MM_PER_INCH;
  const { small, upToIn, slope, base } = REDUCTION.value;
  return inch <= upToIn ? small : slope * inch + base;
}

/** Share of the full lateral value a penetration earns: p/(10 D), nothing under 6 D (NDS 12.1.5.6). */
export function penetrationShare(penetrationMm: Millimetres, { nominalMm }: NominalDiameter): number {
  const inDiameters = penetrationMm / nominalMm;
  if (inDiameters < PENETRATION.value.least) return 0;
  return Math.min(1, inDiameters / PENETRATION.value.full);
}

/** Bearing length in the main member: l_m = p - E/2 with the tip E = 2 D (NDS 12.3.5), mm. */
export function bearingLength(penetrationMm: Millimetres, { nominalMm }: NominalDiameter): Millimetres {
  return mm(penetrationMm - (PENETRATION.value.tip / 2) * nominalMm);
}

/** Least thread of a wood screw: T = max(4 D, 2 L / 3) (Table L3 note 3), mm. */
export function leastThread({ nominalMm }: NominalDiameter, lengthMm: Millimetres): Millimetres {
  return mm(Math.max(4 * nominalMm, (2 * lengthMm) / 3));
}
