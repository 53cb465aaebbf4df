import { type Millimetres, mpa, newtons } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { GAMMA_G, SCREW_STEEL } from '../steel/steel.ts';
import { K_MOD } from './duration.ts';
import type { RoutedScrew, TimberRoute } from './route-shape.ts';
import { leastThread } from './timber-bearing.ts';
import { effectiveDiameter, embedmentStrength, withdrawalEc5, yieldMomentEc5 } from './timber-ec5.ts';
import { STRENGTH_CLASS_DENSITY } from './timber-species.ts';

const GAMMA_M = sourced(1.3, 'EN1995-1-1', 'Table 2.3, connections', 'read');
const STUD_CLASS = sourced(
  STRENGTH_CLASS_DENSITY.value.C16.characteristic,
  'our-choice',
  'an unknown softwood stud is taken as C16 (EN 338), 310 kg/m3',
  'our-choice',
);
const LEAST_DEPTH = sourced(6, 'EN1995-1-1', '8.3.1.2, 8.7.1: at least 6 d in the point side', 'from-memory');
/** Outward, on nominal diameter times thread, where the Eurocode's formula does not reach a wood screw. */
const DRAW = sourced(
  mpa(2),
  'our-choice',
  'declared draw of a wood screw, 2 N on each mm2 of diameter x thread; EN 1995-1-1 8.7.2 starts at 6 mm with a thinner root',
  'our-choice',
);
const LIMIT_ANALYSIS = {
  source: 'EN1995-1-1',
  at: '8.2, yield modes with f_h and M_y of 8.3.1.1 and d_ef of 8.7.1, over k_mod 0.6, gamma_M 1.3 and 1.35; across a gap derived',
  standing: 'derived',
} as const;

function byEc5(gauge: Gauge, lengthInWoodMm: Millimetres, threadMm: Millimetres): RoutedScrew {
  const root = WOOD_SCREW_ROOT.value[gauge];
  const d = effectiveDiameter(root);
  const forGood = K_MOD.value.permanent / (GAMMA_M.value * GAMMA_G.value);
  const draw = withdrawalEc5(STUD_CLASS.value, nominalOf(gauge), root, threadMm);
  return {
    d,
    bearing: embedmentStrength(STUD_CLASS.value, d, 'predrilled'),
    // As the yield modes take it: M = F d^3 / 6.
    bendingYield: mpa((6 * yieldMomentEc5(d, SCREW_STEEL.value.tensileMpa)) / d.rootMm ** 3),
    lengthInWoodMm,
    forGood,
    withdrawalN:
      typeof draw === 'object'
        ? newtons(DRAW.value * nominalOf(gauge).nominalMm * threadMm)
        : newtons(draw * forGood),
  };
}

/** Characteristic x k_mod / (gamma_M x 1.35), with f_h, M_y and d_ef of EN 1995-1-1. */
export const EC5: TimberRoute = {
  id: 'EC5',
  name: 'the Eurocode route, EN 1995-1-1 with k_mod 0.6, gamma_M 1.3 and 1.35',
  screw: (gauge, inWoodMm, lengthMm) => {
    const d = effectiveDiameter(WOOD_SCREW_ROOT.value[gauge]);
    if (inWoodMm < LEAST_DEPTH.value * d.rootMm) return null;
    return byEc5(gauge, inWoodMm, Math.min(inWoodMm, leastThread(nominalOf(gauge), lengthMm)) as Millimetres);
  },
  rightThrough: (gauge, thicknessMm) => byEc5(gauge, thicknessMm, thicknessMm),
  basis: [LIMIT_ANALYSIS, STUD_CLASS, SCREW_STEEL, DRAW].map(basisOf),
  taken: [
    {
      field: 'wall.studs.density',
      value: STUD_CLASS.value,
      because: 'the timber of the studs is not known; this is strength class C16, the weakest usually sold',
    },
  ],
};
