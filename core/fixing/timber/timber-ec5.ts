import {
  type KilogramsPerCubicMetre,
  type Megapascals,
  type Millimetres,
  mm,
  mpa,
  type NewtonMillimetres,
  type Newtons,
  newtonMm,
  newtons,
} from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { type NominalDiameter, type RootDiameter, root } from '../steel/screw-sizes.ts';
import type { NotCovered } from './timber-withdrawal.ts';

const EMBEDMENT = sourced(
  { base: 0.082, power: -0.3, predrilledLoss: 0.01 },
  'EN1995-1-1',
  '8.3.1.1 Eq. 8.15, 8.16',
  'from-memory',
);
const YIELD = sourced({ share: 0.3, power: 2.6 }, 'EN1995-1-1', '8.3.1.1 Eq. 8.14', 'from-memory');
const EFFECTIVE = sourced(1.1, 'EN1995-1-1', '8.7.1(3), threaded part', 'read');
const THIN = sourced({ bearing: 0.4, hinge: 1.15, upTo: 0.5 }, 'EN1995-1-1', '8.2.3 Eq. 8.9', 'read');
const THICK = sourced({ hinge: 2.3, rope: 1 / 4 }, 'EN1995-1-1', '8.2.3 Eq. 8.10', 'read');
const AXIAL = sourced(
  {
    strength: 0.52,
    perDiameter: -0.5,
    perLength: -0.1,
    density: 0.8,
    fullFrom: mm(8),
    leastMm: 6,
    mostMm: 12,
    leastRoot: 0.6,
    mostRoot: 0.75,
    leastDepth: 6,
  },
  'EN1995-1-1',
  '8.7.2(4), (5), A1 of 2008',
  'from-memory',
);

/** Diameter that a threaded screw is reckoned with: d_ef = 1.1 d_root (EN 1995-1-1 8.7.1(3)), mm. */
export function effectiveDiameter({ rootMm }: RootDiameter): RootDiameter {
  return root(mm(EFFECTIVE.value * rootMm));
}

/**
 * Characteristic embedment strength: f_h,k = 0.082 rho_k d^-0.3 without a pilot, 0.082 (1 - 0.01 d) rho_k with one
 * (EN 1995-1-1 Eq. 8.15, 8.16), rho_k kg/m3, d mm, MPa.
 */
export function embedmentStrength(
  density: KilogramsPerCubicMetre,
  { rootMm: d }: RootDiameter,
  pilot: 'predrilled' | 'not-predrilled',
): Megapascals {
  const { base, power, predrilledLoss } = EMBEDMENT.value;
  return mpa(base * density * (pilot === 'predrilled' ? 1 - predrilledLoss * d : d ** power));
}

/** Characteristic yield moment: M_y,Rk = 0.3 f_u d^2.6 (EN 1995-1-1 Eq. 8.14), Nmm. */
export function yieldMomentEc5({ rootMm: d }: RootDiameter, tensileMpa: Megapascals): NewtonMillimetres {
  return newtonMm(YIELD.value.share * tensileMpa * d ** YIELD.value.power);
}

/** A screw through one steel plate into timber; `rope` is its characteristic withdrawal, N. */
export type PlateJoint = {
  readonly d: RootDiameter;
  readonly embedment: Megapascals;
  readonly moment: NewtonMillimetres;
  readonly depthMm: Millimetres;
  readonly rope: Newtons;
};

/**
 * Characteristic lateral resistance under a steel plate of `plateMm`: thin to 0.5 d, thick from d, between them
 * interpolated (EN 1995-1-1 8.2.3 Eq. 8.9, 8.10), N.
 */
export function lateralUnderPlate(joint: PlateJoint, plateMm: Millimetres): Newtons {
  const d = joint.d.rootMm;
  const share = (plateMm - THIN.value.upTo * d) / (d - THIN.value.upTo * d);
  const thin = underThin(joint);
  const along = Math.min(1, Math.max(0, share));
  return newtons(thin + along * (underThick(joint) - thin));
}

function underThin({ d: { rootMm: d }, embedment, moment, depthMm, rope }: PlateJoint): number {
  const { bearing, hinge } = THIN.value;
  return Math.min(
    bearing * embedment * depthMm * d,
    hinge * Math.sqrt(2 * moment * embedment * d) + THICK.value.rope * rope,
  );
}

function underThick({ d: { rootMm: d }, embedment, moment, depthMm, rope }: PlateJoint): number {
  const q = embedment * d;
  const tied = THICK.value.rope * rope;
  const bearing = q * depthMm;
  return Math.min(
    bearing,
    bearing * (Math.sqrt(2 + (4 * moment) / (q * depthMm ** 2)) - 1) + tied,
    THICK.value.hinge * Math.sqrt(moment * q) + tied,
  );
}

/**
 * Characteristic withdrawal across the grain: F_ax,Rk = f_ax d l_ef k_d / 1.2, f_ax = 0.52 d^-0.5 l_ef^-0.1 rho_k^0.8,
 * k_d = min(d/8, 1); 1.2 is 1.2 cos^2 + sin^2 along the screw's own axis, so 1 across (EN 1995-1-1 8.7.2), N.
 * Only 6 to 12 mm, root 0.6 to 0.75 of it, 6 d deep: else not covered.
 */
export function withdrawalEc5(
  density: KilogramsPerCubicMetre,
  { nominalMm: d }: NominalDiameter,
  { rootMm }: RootDiameter,
  depthMm: Millimetres,
): Newtons | NotCovered {
  const { leastMm, mostMm, leastRoot, mostRoot, leastDepth, ...form } = AXIAL.value;
  const ratio = rootMm / d;
  if (!(d >= leastMm && d <= mostMm && ratio >= leastRoot && ratio <= mostRoot && depthMm >= leastDepth * d))
    return {
      notCovered: `EN 1995-1-1 8.7.2 covers screws of ${leastMm} to ${mostMm} mm with a root of ${leastRoot} to ${mostRoot} of that, ${leastDepth} diameters deep`,
    };
  const strength =
    form.strength * d ** form.perDiameter * depthMm ** form.perLength * density ** form.density;
  return newtons(strength * d * depthMm * Math.min(d / form.fullFrom, 1));
}
