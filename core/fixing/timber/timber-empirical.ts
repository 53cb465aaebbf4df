import { MM_PER_INCH, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { NominalDiameter } from '../steel/screw-sizes.ts';
import type { NotCovered } from './timber-withdrawal.ts';
import { NEWTONS_PER_LBF } from './us-units.ts';

type Wood = 'softwood' | 'hardwood';
type Band = { readonly from: number; readonly to: number; readonly k: number };

/** K of p = K D^2, N/mm2, by specific gravity on 12 % volume. */
const HANDBOOK_K = sourced<Record<Wood, readonly Band[]>>(
  {
    softwood: [
      { from: 0.29, to: 0.42, k: 23.3 },
      { from: 0.43, to: 0.47, k: 29.79 },
      { from: 0.48, to: 0.52, k: 36.4 },
    ],
    hardwood: [
      { from: 0.33, to: 0.47, k: 23.17 },
      { from: 0.48, to: 0.56, k: 31.99 },
      { from: 0.57, to: 0.74, k: 44.13 },
    ],
  },
  'FPL-GTR-282',
  'ch. 8 Eq. 8-13, K table',
  'from-memory',
);

/** C of p = C D^2 lbf, inches, by group of species. */
const TEXTBOOK_C = sourced(
  { I: 4800, II: 3960, III: 3240, IV: 2520 },
  'civil-engineering-formulas',
  'Eq. 6.38, Table 6.2',
  'read',
);

/**
 * Proportional-limit lateral load of a wood screw at a small slip: p = K D^2 (Wood Handbook Eq. 8-13),
 * penetration 7 D or more, N. Outside the table's gravities not covered.
 */
export function proportionalLateral(
  wood: Wood,
  g: number,
  { nominalMm }: NominalDiameter,
): Newtons | NotCovered {
  const band = HANDBOOK_K.value[wood].find((each) => g >= each.from && g <= each.to);
  if (!band) return { notCovered: `no K for ${wood} of G ${g}` };
  return newtons(band.k * nominalMm ** 2);
}

/** Allowable lateral load of a wood screw by species group: p = C D^2 lbf, inches (textbook Eq. 6.38), N. */
export function textbookLateral(
  group: keyof typeof TEXTBOOK_C.value,
  { nominalMm }: NominalDiameter,
): Newtons {
  return newtons(TEXTBOOK_C.value[group] * (nominalMm / MM_PER_INCH) ** 2 * NEWTONS_PER_LBF);
}
