import { type Megapascals, type Millimetres, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

const K9 = sourced({ cracked: 1.7, uncracked: 2.4 }, 'EN1992-4:2018', '7.2.2.5 Eq. 7.40', 'read');
const EXPONENTS = sourced(
  { base: 0.1, alphaPower: 0.5, betaPower: 0.2, edgePower: 1.5, longest: 12 },
  'EN1992-4:2018',
  '7.2.2.5 Eq. 7.40 to 7.43',
  'read',
);

export type EdgeShear = { readonly alpha: number; readonly beta: number; readonly resistance: Newtons };

/**
 * Characteristic shear towards an edge: V0_Rk,c = k9 d^a l_f^b sqrt(f_ck) c1^1.5, a = 0.1 (l_f/c1)^0.5,
 * b = 0.1 (d/c1)^0.2, l_f = min(h_ef, 12 d) (EN 1992-4 7.2.2.5), N. d is the outside diameter, to 24 mm.
 */
export function edgeShear(
  crack: 'cracked' | 'uncracked',
  outsideMm: Millimetres,
  depthMm: Millimetres,
  edgeMm: Millimetres,
  cylinder: Megapascals,
): EdgeShear {
  const { base, alphaPower, betaPower, edgePower, longest } = EXPONENTS.value;
  const length = Math.min(depthMm, longest * outsideMm);
  const alpha = base * (length / edgeMm) ** alphaPower;
  const beta = base * (outsideMm / edgeMm) ** betaPower;
  const resistance =
    K9.value[crack] * outsideMm ** alpha * length ** beta * Math.sqrt(cylinder) * edgeMm ** edgePower;
  return { alpha, beta, resistance: newtons(resistance) };
}
