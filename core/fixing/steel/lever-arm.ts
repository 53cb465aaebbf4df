import {
  type CubicMillimetres,
  type Megapascals,
  type Millimetres,
  mm,
  mm3,
  type NewtonMillimetres,
  type Newtons,
  newtonMm,
  newtons,
} from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { CoreDiameter, RootDiameter } from './screw-sizes.ts';

/** Plastic reserve of a round section. */
const PLASTIC = sourced(1.2, 'ETAG001-C', '5.2.3.2 b', 'from-memory');
/** Share of the core that the base material crushes before it holds: a3 = 0.5 d. */
const A3 = sourced(0.5, 'EN1992-4:2018', '6.2.2.3, not clamped by nut and washer', 'from-memory');
/** A head that may turn; a restrained one would be 2. */
const ALPHA_M = sourced(1, 'CEN/TS1992-4-2:2009', '6.3.3.2, free head', 'from-memory');

/** Elastic section modulus of a round core: W_el = pi d^3 / 32, mm3. */
export function sectionModulus({ coreMm }: CoreDiameter): CubicMillimetres {
  return mm3((Math.PI * coreMm ** 3) / 32);
}

/** Characteristic bending resistance without tension: M0_Rk,s = 1.2 W_el f_uk (ETAG 001 Annex C 5.2.3.2 b), Nmm. */
export function bendingCharacteristic(diameter: CoreDiameter, tensileMpa: Megapascals): NewtonMillimetres {
  return newtonMm(PLASTIC.value * sectionModulus(diameter) * tensileMpa);
}

/** What tension leaves of it: M_Rk,s = M0_Rk,s (1 - N_Ed/N_Rd,s) (CEN/TS 1992-4-2 Eq. 31), never below nothing, Nmm. */
export function bendingWithTension(
  moment: NewtonMillimetres,
  tension: Newtons,
  tensionDesign: Newtons,
): NewtonMillimetres {
  return newtonMm(moment * Math.max(0, 1 - tension / tensionDesign));
}

/**
 * Lever arm from where the base material starts to bear out to the load: l = a3 + e1, a3 = 0.5 d
 * (EN 1992-4 6.2.2.3). Plaster, tile, render, board and air carry nothing, so e1 spans them, mm.
 */
export function leverArm({ coreMm }: CoreDiameter, beyondBase: Millimetres): Millimetres {
  return mm(A3.value * coreMm + beyondBase);
}

/** Shear that a screw bears on a lever arm: V_Rk,s = alpha_M M_Rk,s / l (CEN/TS 1992-4-2 Eq. 30), N. */
export function shearOnArm(
  moment: NewtonMillimetres,
  arm: Millimetres,
  alphaM: number = ALPHA_M.value,
): Newtons {
  return newtons((alphaM * moment) / arm);
}

/** Bending yield moment of a wood screw in the NDS model: M = F_yb D_r^3 / 6 (NDS Appendix I), Nmm. */
export function yieldMoment({ rootMm }: RootDiameter, bendingYield: Megapascals): NewtonMillimetres {
  return newtonMm((bendingYield * rootMm ** 3) / 6);
}

/** Droop of the end of a projecting screw: delta = P e^3 / (3 E I), I = pi d^4 / 64 (strength of materials), mm. */
export function droop(
  load: Newtons,
  arm: Millimetres,
  modulus: Megapascals,
  { coreMm }: CoreDiameter,
): Millimetres {
  const inertia = (Math.PI * coreMm ** 4) / 64;
  return mm((load * arm ** 3) / (3 * modulus * inertia));
}
