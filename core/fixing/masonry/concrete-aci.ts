import { type Megapascals, type Millimetres, MM_PER_INCH, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { MPA_PER_PSI, NEWTONS_PER_LBF } from '../timber/us-units.ts';

const KC_INCH = sourced({ 'cast-in': 24, 'post-installed': 17 }, 'ACI318-19', '17.6.2.2.1', 'read');
const KC_SI = sourced(
  { 'cast-in': 10, 'post-installed': 7 },
  'ACI318-19',
  '318M-19 17.6.2.2.1',
  'from-memory',
);
const POWER = sourced(1.5, 'ACI318-19', '17.6.2.2.1', 'read');
const SHEAR = sourced({ welded: 8, other: 7, lengthPower: 0.2 }, 'ACI349.2R-07', 'Example A2', 'read');

type Anchor = 'cast-in' | 'post-installed';

/** Basic breakout in tension, cracked, normal weight: N_b = k_c sqrt(f'c) h_ef^1.5, k_c 24 or 17, psi and inch (ACI 318 17.6.2.2.1), N. */
export function aciTensionBreakout(anchor: Anchor, cylinder: Megapascals, depthMm: Millimetres): Newtons {
  const lbf =
    KC_INCH.value[anchor] * Math.sqrt(cylinder / MPA_PER_PSI) * (depthMm / MM_PER_INCH) ** POWER.value;
  return newtons(lbf * NEWTONS_PER_LBF);
}

/** The same in its metric edition: N_b = k_c sqrt(f'c) h_ef^1.5, k_c 10 or 7, MPa and mm (ACI 318M 17.6.2.2.1), N. */
export function aciTensionBreakoutMetric(
  anchor: Anchor,
  cylinder: Megapascals,
  depthMm: Millimetres,
): Newtons {
  return newtons(KC_SI.value[anchor] * Math.sqrt(cylinder) * depthMm ** POWER.value);
}

/** Basic breakout in shear: V_b = 8 or 7 (l_e/d)^0.2 sqrt(d) sqrt(f'c) c_a1^1.5, psi and inch (ACI 349.2R Example A2), N. */
export function aciShearBreakout(
  kind: 'welded' | 'other',
  diameterMm: Millimetres,
  bearingMm: Millimetres,
  edgeMm: Millimetres,
  cylinder: Megapascals,
): Newtons {
  const d = diameterMm / MM_PER_INCH;
  const slender = (bearingMm / diameterMm) ** SHEAR.value.lengthPower;
  const lbf =
    SHEAR.value[kind] *
    slender *
    Math.sqrt(d) *
    Math.sqrt(cylinder / MPA_PER_PSI) *
    (edgeMm / MM_PER_INCH) ** POWER.value;
  return newtons(lbf * NEWTONS_PER_LBF);
}
