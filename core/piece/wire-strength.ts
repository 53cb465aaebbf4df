import { type Megapascals, type Millimetres, mpa, type Newtons, newtons, times } from '../quantity.ts';
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

type SpringWire = { a: number; m: number; fromMm: number; toMm: number };

/** S_ut = A / d^m in MPa, d in mm: hard-drawn (A227) and stainless (302) wire, within the sizes drawn. */
export const SPRING_WIRE = {
  'hard-drawn-steel': sourced<SpringWire>(
    { a: 1783, m: 0.19, fromMm: 0.7, toMm: 12.7 },
    'spring-wire',
    'A227 hard-drawn; the sizes from memory',
    'read-secondary',
  ),
  'stainless-wire': sourced<SpringWire>(
    { a: 1867, m: 0.146, fromMm: 0.3, toMm: 2.5 },
    'spring-wire',
    'A313 type 302',
    'from-memory',
  ),
} as const;

/** Breaking force of one solid wire: S_ut pi d^2 / 4, S_ut = A / d^m, newtons; null outside the sizes it covers. */
export function wireBreakingForce(kind: keyof typeof SPRING_WIRE, diameterMm: Millimetres): Newtons | null {
  const { a, m, fromMm, toMm } = SPRING_WIRE[kind].value;
  if (!(diameterMm >= fromMm && diameterMm <= toMm)) return null;
  const strength = mpa(a / diameterMm ** m);
  return newtons((strength * Math.PI * diameterMm ** 2) / 4);
}
