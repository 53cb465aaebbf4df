import { type Millimetres, mm, type NewtonMillimetres, type Newtons, newtons } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import type { FailureMode } from '../fixing-shape.ts';
import { coreOf, type Shank } from '../masonry/walk-row.ts';
import { bendingCharacteristic, bendingWithTension, leverArm, shearOnArm } from './lever-arm.ts';
import { type CoreDiameter, core, GAUGES, TAPPING_SCREW_CORE, THICK_CORES } from './screw-sizes.ts';
import {
  areaOf,
  CLASS_4_6,
  GAMMA_G,
  gammaShear,
  gammaTension,
  SCREW_STEEL,
  shearCharacteristic,
  tensionCharacteristic,
} from './steel.ts';

/** What one shank of the declared steel may bear for good: characteristic / (gamma_Ms x 1.35). */
export type ShankStrength = {
  readonly core: CoreDiameter;
  readonly moment: NewtonMillimetres;
  readonly shearN: Newtons;
  readonly tensionN: Newtons;
};

const { tensileMpa, yieldMpa } = SCREW_STEEL.value;
export const SHEAR_FACTOR = gammaShear(yieldMpa, tensileMpa) * GAMMA_G.value;
export const TENSION_FACTOR = gammaTension(yieldMpa, tensileMpa) * GAMMA_G.value;

function strengthOf(core: CoreDiameter): ShankStrength {
  return {
    core,
    moment: bendingCharacteristic(core, tensileMpa),
    shearN: newtons(shearCharacteristic(areaOf(core), tensileMpa) / SHEAR_FACTOR),
    tensionN: newtons(tensionCharacteristic(core, tensileMpa) / TENSION_FACTOR),
  };
}

const SHANKS: readonly Shank[] = [...GAUGES, 'coach-8', 'stud-M8', 'stud-M10', 'concrete-screw-6', 'bolt-M5'];
const STRENGTHS = new Map(SHANKS.map((shank) => [shank, strengthOf(coreOf(shank))]));

/** Strength of a shank; worked out once, when the program starts. */
export function shankStrength(shank: Shank): ShankStrength {
  return STRENGTHS.get(shank) ?? strengthOf(coreOf(shank));
}

/**
 * Shear a shank may bear for good on a lever arm: V = alpha_M M0 (1 - N/N_R) / (l gamma_Ms 1.35), l = 0.5 d +
 * everything between the base material and the load. Newtons.
 */
export function bendingResistance(shank: Shank, beyondBase: Millimetres, tension: Newtons): Newtons {
  const { core, moment, tensionN } = shankStrength(shank);
  const left = bendingWithTension(moment, tension, tensionN);
  return newtons(shearOnArm(left, leverArm(core, beyondBase)) / SHEAR_FACTOR);
}

/** Between which cores one is looked for, and how near is near enough. */
const SEARCH = sourced(
  { leastMm: 0.1, mostMm: 20, closeMm: 0.001 },
  'our-choice',
  'no screw of a picture is thicker',
  'our-choice',
);

/**
 * Core a screw would need so as not to bend: the root of alpha_M 1.2 pi d^3/32 f_uk / (0.5 d + e) = V gamma_Ms 1.35
 * (the lever arm read backwards, by halving), without tension, mm. Nothing over 20 mm is looked for.
 */
export function coreNeeded(shear: Newtons, beyondBase: Millimetres): CoreDiameter | null {
  const { leastMm, mostMm, closeMm } = SEARCH.value;
  let [low, high]: [number, number] = [leastMm, mostMm];
  const bears = (coreMm: number): number =>
    shearOnArm(bendingCharacteristic(core(mm(coreMm)), tensileMpa), leverArm(core(mm(coreMm)), beyondBase)) /
    SHEAR_FACTOR;
  if (!(bears(high) >= shear)) return null;
  while (high - low > closeMm) {
    const middle = (low + high) / 2;
    if (bears(middle) >= shear) high = middle;
    else low = middle;
  }
  return core(mm(high));
}

const LEVER_ARM = { source: 'CEN/TS1992-4-2:2009', at: '6.3.3.2 Eq. 30, 31', standing: 'read' } as const;
const MODULUS = { source: 'ETAG001-C', at: '5.2.3.2 b', standing: 'from-memory' } as const;
const ARM_FROM_BASE = {
  source: 'EN1992-4:2018',
  at: '7.2.2.3.2, arm by 6.2.2.3',
  standing: 'from-memory',
} as const;

/** What the steel checks stand on, by mode. */
const STEEL_BASIS: Readonly<Record<'screw-bending' | 'screw-shear' | 'screw-tension', readonly Basis[]>> = {
  'screw-bending': [ARM_FROM_BASE, LEVER_ARM, MODULUS, TAPPING_SCREW_CORE, CLASS_4_6, SCREW_STEEL].map(
    basisOf,
  ),
  'screw-shear': [ARM_FROM_BASE, TAPPING_SCREW_CORE, CLASS_4_6, SCREW_STEEL].map(basisOf),
  'screw-tension': [ARM_FROM_BASE, TAPPING_SCREW_CORE, CLASS_4_6, SCREW_STEEL].map(basisOf),
};

/** Thick shanks stand on a declared core instead of a thread table. */
export function steelBasis(mode: FailureMode, shank: Shank): readonly Basis[] {
  if (mode !== 'screw-bending' && mode !== 'screw-shear' && mode !== 'screw-tension') return [];
  const basis = STEEL_BASIS[mode];
  if (typeof shank === 'number') return basis;
  return [...basis.filter((each) => each.id !== TAPPING_SCREW_CORE.source), basisOf(THICK_CORES)];
}
