import { type Millimetres, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { NominalDiameter } from '../steel/screw-sizes.ts';
import { MPA_PER_PSI } from './us-units.ts';

export type NotCovered = { readonly notCovered: string };

/** p = 108.25 G^2 D L newtons: mean ultimate, side grain, seasoned. Not a working load. */
const HANDBOOK = sourced(108.25, 'FPL-GTR-282', 'ch. 8 Eq. 8-10a', 'read');
/** p = 15700 G^2 D L lbf, inches: the inch form of the same. */
const HANDBOOK_PSI = sourced(15700, 'FPL-GTR-282', 'ch. 8 Eq. 8-10b', 'read');
/** W = 2850 G^2 D lbf per inch of thread; already holds about 5.5 on the mean ultimate. */
const NDS_SCREW_PSI = sourced(2850, 'NDS-2018', '12.2.2.1 Eq. 12.2-2', 'read');
const NDS_SCREW_G = sourced({ least: 0.31, most: 0.73 }, 'NDS-2018', '12.2.2.1', 'read');
/** W = 1380 G^2.5 D lbf per inch, smooth nails. */
const NDS_NAIL_PSI = sourced({ perInch: 1380, power: 2.5 }, 'NDS-2018', '12.2.3.1 Eq. 12.2-3', 'read');

/** Mean ultimate withdrawal of a wood screw: p = 108.25 G^2 D L (Wood Handbook Eq. 8-10a), G on 12 % volume, N. */
export function ultimateWithdrawal(
  g: number,
  { nominalMm }: NominalDiameter,
  threadMm: Millimetres,
): Newtons {
  return newtons(HANDBOOK.value * g ** 2 * nominalMm * threadMm);
}

/** The inch form of it: p = 15700 G^2 D L (Wood Handbook Eq. 8-10b), N. */
export function ultimateWithdrawalInchForm(
  g: number,
  { nominalMm }: NominalDiameter,
  threadMm: Millimetres,
): Newtons {
  return newtons(HANDBOOK_PSI.value * MPA_PER_PSI * g ** 2 * nominalMm * threadMm);
}

/**
 * Reference allowable withdrawal of a wood screw over a length of thread: W p = 2850 G^2 D p (NDS 12.2.2.1),
 * G oven-dry, side grain only, before C_D, N. Outside 0.31 to 0.73 not covered.
 */
export function allowableWithdrawal(
  g: number,
  { nominalMm }: NominalDiameter,
  threadMm: Millimetres,
): Newtons | NotCovered {
  const { least, most } = NDS_SCREW_G.value;
  if (!(g >= least && g <= most))
    return { notCovered: `NDS 12.2.2.1 covers G ${least} to ${most}, not ${g}` };
  return newtons(NDS_SCREW_PSI.value * MPA_PER_PSI * g ** 2 * nominalMm * threadMm);
}

/** Reference allowable withdrawal of a smooth nail: W p = 1380 G^2.5 D p (NDS 12.2.3.1), side grain only, N. */
export function nailWithdrawal(g: number, { nominalMm }: NominalDiameter, depthMm: Millimetres): Newtons {
  const { perInch, power } = NDS_NAIL_PSI.value;
  return newtons(perInch * MPA_PER_PSI * g ** power * nominalMm * depthMm);
}
