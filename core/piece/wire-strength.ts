import { type Megapascals, type Millimetres, type Newtons, newtons, times } from '../quantity.ts';
import { type Sourced, sourced } from '../sources.ts';

/** Strength factor of a 6x7 wire rope with fibre core: K' in F_min = K' d2 R_r / 1000 (kN). */
export const ROPE_6X7_FC = sourced(0.332, 'EN12385-4', "K' of 6x7 with fibre core", 'from-memory');

/** Share of the nominal strength a line may carry for good. */
export const WORKING_SHARE = {
  tieDown: sourced(1 / 4, '49CFR393.108', '(e)(1): a quarter of the nominal strength', 'read'),
  lifting: sourced(1 / 5, '2006/42/EC', '4.1.2.5: wire rope, five to one', 'from-memory'),
} as const satisfies Record<string, Sourced<number>>;

/**
 * Minimum breaking force of a small wire rope: F_min = K' d2 R_r (EN 12385-4), millimetres and MPa in,
 * newtons out. Not for picture wire, which is soft and far weaker: that wants the packet's value.
 */
export function ropeBreakingForce(
  factor: Sourced<number>,
  diameterMm: Millimetres,
  grade: Megapascals,
): Newtons {
  return newtons(factor.value * diameterMm ** 2 * grade);
}

/** What a line may carry for good: its nominal strength times the share of the rule it falls under. */
export function workingLoad(strength: Newtons, share: Sourced<number>): Newtons {
  return times(strength, share.value);
}
