import { type Megapascals, type Millimetres, mpa, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

type Crack = 'cracked' | 'uncracked';
/** k1 with cylinder strength: post-installed, and cast-in headed. */
const K1 = sourced(
  { 'post-installed': { cracked: 7.7, uncracked: 11 }, headed: { cracked: 8.9, uncracked: 12.7 } },
  'EN1992-4:2018',
  '7.2.1.4 Eq. 7.2',
  'from-memory',
);
/** k1 with cube strength. */
const K1_CUBE = sourced({ cracked: 7.2, uncracked: 10.1 }, 'EOTA-TR029', '5.2.2.4 Eq. 5.3a', 'read');
const CONE_POWER = sourced(1.5, 'EN1992-4:2018', '7.2.1.4', 'from-memory');
const CRITICAL = sourced({ spacing: 3, edge: 1.5 }, 'CEN/TS1992-4-2:2009', 'Fig. 4', 'read');
const PRY_OUT = sourced({ shallow: 1, deep: 2, fromMm: 60 }, 'EN1992-4:2018', '7.2.2.4', 'from-memory');
/** gamma_Mc = 1.5 gamma_inst, with gamma_inst 1.2 for an ordinary fitting. */
export const GAMMA_MC = sourced(
  { concrete: 1.5, installation: 1.2 },
  'EN1992-4:2018',
  'Table 4.1',
  'from-memory',
);
/** Concrete of an unknown wall: C20/25, cracked. */
export const UNKNOWN_CONCRETE = sourced(
  { cylinderMpa: mpa(20) },
  'our-choice',
  'C20/25, cracked',
  'our-choice',
);
/** Least depth the equation is used for. */
export const LEAST_DEPTH = sourced(40, 'EN1992-4:2018', '1.1, h_ef 40 mm or more', 'from-memory');

/** Characteristic cone of one anchor: N0_Rk,c = k1 sqrt(f_ck) h_ef^1.5 (EN 1992-4 7.2.1.4), cylinder strength, N. */
export function coneCharacteristic(
  kind: 'post-installed' | 'headed',
  crack: Crack,
  cylinder: Megapascals,
  depthMm: Millimetres,
): Newtons {
  return newtons(K1.value[kind][crack] * Math.sqrt(cylinder) * depthMm ** CONE_POWER.value);
}

/** The same with cube strength: k1 7.2 or 10.1 (EOTA TR 029 Eq. 5.3a), N. */
export function coneByCubeStrength(crack: Crack, cube: Megapascals, depthMm: Millimetres): Newtons {
  return newtons(K1_CUBE.value[crack] * Math.sqrt(cube) * depthMm ** CONE_POWER.value);
}

/** Pry-out: V_Rk,cp = k8 N_Rk,c, k8 1 under 60 mm, else 2 (EN 1992-4 7.2.2.4), N. */
export function pryOut(cone: Newtons, depthMm: Millimetres): Newtons {
  const { shallow, deep, fromMm } = PRY_OUT.value;
  return newtons((depthMm < fromMm ? shallow : deep) * cone);
}

/** Share of two cones that two anchors close together have: A_c/A_c0 = (s + s_cr)/s_cr, s_cr = 3 h_ef (Fig. 4). */
export function pairAreaRatio(spacingMm: Millimetres, depthMm: Millimetres): number {
  const critical = CRITICAL.value.spacing * depthMm;
  return (Math.min(spacingMm, critical) + critical) / critical;
}
