import { type Megapascals, mm2, mpa, type Newtons, newtons, type SquareMillimetres } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { CoreDiameter } from './screw-sizes.ts';

/** Tensile and yield strength of class 4.6. */
export const CLASS_4_6 = sourced(
  { tensileMpa: mpa(400), yieldMpa: mpa(240) },
  'ISO898-1',
  'property class 4.6',
  'from-memory',
);
/** Screw steel unless the packet says more. */
export const SCREW_STEEL = sourced(
  CLASS_4_6.value,
  'our-choice',
  'screw steel is taken as class 4.6',
  'our-choice',
);

/** Permanent actions: what may act for good is design resistance over this. */
export const GAMMA_G = sourced(1.35, 'EN1990:2002', 'Table A1.2(B)', 'from-memory');
const GAMMA_MS_SHEAR_LEAST = sourced(1.25, 'ETAG001-C', '3.2.3.2', 'from-memory');
const GAMMA_MS_TENSION_LEAST = sourced(1.4, 'ETAG001-C', '3.2.3.2', 'from-memory');
const GAMMA_MS_TENSION = sourced(1.2, 'ETAG001-C', '3.2.3.2', 'from-memory');
const GAMMA_M2 = sourced(1.25, 'EN1993-1-8:2005', 'Table 2.1', 'from-memory');
const BOLT_TENSION = sourced(0.9, 'EN1993-1-8:2005', 'Table 3.4, k2', 'from-memory');
const K6 = sourced({ mild: 0.6, strong: 0.5, mildUpToMpa: 500 }, 'EN1992-4:2018', '7.2.2.3.1', 'from-memory');

/** Cross-section of a core: A = pi d^2 / 4, mm2. */
export function areaOf({ coreMm }: CoreDiameter): SquareMillimetres {
  return mm2((Math.PI * coreMm ** 2) / 4);
}

/** Partial factor of steel in shear or bending: gamma_Ms = 1/(fyk/fuk), at least 1.25 (ETAG 001 Annex C 3.2.3.2). */
export function gammaShear(yieldMpa: Megapascals, tensileMpa: Megapascals): number {
  return Math.max(tensileMpa / yieldMpa, GAMMA_MS_SHEAR_LEAST.value);
}

/** Partial factor of steel in tension: gamma_Ms = 1.2/(fyk/fuk), at least 1.4 (ETAG 001 Annex C 3.2.3.2). */
export function gammaTension(yieldMpa: Megapascals, tensileMpa: Megapascals): number {
  return Math.max((GAMMA_MS_TENSION.value * tensileMpa) / yieldMpa, GAMMA_MS_TENSION_LEAST.value);
}

/** Design tension of a bolt or screw: F_t,Rd = 0.9 f_ub A_s / gamma_M2 (EN 1993-1-8 Table 3.4), N. */
export function boltTensionDesign(diameter: CoreDiameter, tensileMpa: Megapascals): Newtons {
  return newtons((BOLT_TENSION.value * tensileMpa * areaOf(diameter)) / GAMMA_M2.value);
}

/** Characteristic tension of steel: N_Rk,s = A_s f_uk (EN 1992-4 7.2.1.3), N. */
export function tensionCharacteristic(diameter: CoreDiameter, tensileMpa: Megapascals): Newtons {
  return newtons(areaOf(diameter) * tensileMpa);
}

/** Characteristic shear without lever arm: V_Rk,s = k6 A_s f_uk (EN 1992-4 7.2.2.3.1), k6 0.6 to 500 MPa, else 0.5, N. */
export function shearCharacteristic(area: SquareMillimetres, tensileMpa: Megapascals): Newtons {
  const { mild, strong, mildUpToMpa } = K6.value;
  return newtons((tensileMpa <= mildUpToMpa ? mild : strong) * area * tensileMpa);
}
