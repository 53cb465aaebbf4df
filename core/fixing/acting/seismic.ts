import { sourced } from '../../sources.ts';

const AS1170 = sourced({ kcLow: 0.17, lowUpToM: 12, kcOver: 2, least: 0.05 }, 'AS1170.4:2007', '8.3', 'read');
const EN1998 = sourced({ height: 3, less: 0.5 }, 'EN1998-1:2004', '4.3.5.2 Eq. 4.25', 'from-memory');

/** Height amplification: a_x = 1 + k_c h_x, k_c 0.17 under 12 m, else 2/h_n (AS 1170.4 8.3), heights in metres. */
export function heightFactor(atM: number, topM: number): number {
  const { kcLow, lowUpToM, kcOver } = AS1170.value;
  return 1 + (topM < lowUpToM ? kcLow : kcOver / topM) * atM;
}

/** Sideways force on a part over its weight: k_pZ C_h(0) a_x I_c a_c / R_c, at least 0.05 (AS 1170.4 8.3, simple method). */
export function partForceRatio(part: {
  kpZ: number;
  ch0: number;
  heightFactor: number;
  importance: number;
  amplification: number;
  ductility: number;
}): number {
  const ratio =
    (part.kpZ * part.ch0 * part.heightFactor * part.importance * part.amplification) / part.ductility;
  return Math.max(ratio, AS1170.value.least);
}

/** Seismic coefficient: S_a = alpha S (3 (1 + z/H) / (1 + (1 - Ta/T1)^2) - 0.5), at least alpha S (EN 1998-1 Eq. 4.25). */
export function seismicCoefficient(alpha: number, soil: number, zOverH: number, taOverT1: number): number {
  const { height, less } = EN1998.value;
  const shape = (height * (1 + zOverH)) / (1 + (1 - taOverT1) ** 2) - less;
  return Math.max(alpha * soil * shape, alpha * soil);
}

/** Sideways force over weight: F_a/W_a = S_a gamma_a / q_a (EN 1998-1 Eq. 4.24). */
export function nonStructuralRatio(coefficient: number, importance: number, behaviour: number): number {
  return (coefficient * importance) / behaviour;
}

const ASCE = sourced(
  { base: 0.4, rise: 2, least: 0.3, most: 1.6 },
  'ASCE7-16',
  '13.3-1, 13.3-2, 13.3-3',
  'read',
);

/**
 * Sideways force over weight: F_p/W_p = 0.4 a_p S_DS (1 + 2 z/h) / (R_p/I_p), at least 0.3 S_DS I_p, at most
 * 1.6 S_DS I_p (ASCE 7-16 13.3-1 to 13.3-3).
 */
export function asceRatio(part: { sDs: number; ap: number; rp: number; ip: number; zOverH: number }): number {
  const { base, rise, least, most } = ASCE.value;
  const whole = (base * part.ap * part.sDs * (1 + rise * part.zOverH)) / (part.rp / part.ip);
  return Math.min(most * part.sDs * part.ip, Math.max(least * part.sDs * part.ip, whole));
}
