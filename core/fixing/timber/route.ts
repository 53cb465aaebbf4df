import type { Country, Unknown } from '../../job.ts';
import type { Assumption } from '../../plan-shape.ts';
import { type Megapascals, type Millimetres, mpa, type Newtons, newtons } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import { type Gauge, nominalOf, type RootDiameter, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { GAMMA_G, SCREW_STEEL } from '../steel/steel.ts';
import { K_MOD, LOAD_DURATION_CD } from './duration.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearing,
  leastThread,
  PENETRATION,
  penetrationShare,
  reductionTerm,
} from './timber-bearing.ts';
import { effectiveDiameter, embedmentStrength, withdrawalEc5, yieldMomentEc5 } from './timber-ec5.ts';
import { STRENGTH_CLASS_DENSITY, UNKNOWN_STUD_G } from './timber-species.ts';
import { allowableWithdrawal } from './timber-withdrawal.ts';

/** A screw in unknown softwood as one route reckons it: what the yield modes need, and from yield to what may act for good. */
type RoutedScrew = {
  readonly d: RootDiameter;
  readonly bearing: Megapascals;
  readonly bendingYield: Megapascals;
  readonly lengthInWoodMm: Millimetres;
  /** What may act for good = load at yield x this; 0 where the screw is not deep enough. */
  readonly forGood: number;
  readonly withdrawalN: Newtons;
};

/** A whole way of reckoning a screw in softwood: never a part of one with a part of the other. */
export type TimberRoute = {
  readonly id: 'NDS' | 'EC5';
  readonly name: string;
  readonly screw: (gauge: Gauge, inWoodMm: Millimetres, lengthMm: Millimetres) => RoutedScrew | null;
  /** A screw right through a board: no route has a penetration for it, so its whole thickness bears, and no more. */
  readonly rightThrough: (gauge: Gauge, thicknessMm: Millimetres) => RoutedScrew | null;
  readonly basis: readonly Basis[];
  readonly taken: readonly Assumption[];
};

const GAP_MODEL = {
  source: 'AWC-TR12',
  at: 'Table 1-1, bare screw derived from it',
  standing: 'derived',
} as const;
const YIELD_MODEL = { source: 'NDS-2018', at: '12.3.1, 12.2.2.1, Table 2.3.2', standing: 'read' } as const;
const G = UNKNOWN_STUD_G.value.g;

const DENSITY_TAKEN: Assumption = {
  field: 'wall.studs.density',
  value: G,
  because: 'the timber of the studs is not known; this is the lightest of the common softwoods',
};

function byNds(
  gauge: Gauge,
  lengthInWoodMm: Millimetres,
  threadMm: Millimetres,
  share: number,
): RoutedScrew | null {
  const nominal = nominalOf(gauge);
  const d = WOOD_SCREW_ROOT.value[gauge];
  const yieldMpa = bendingYield(nominal);
  if (typeof yieldMpa === 'object') return null;
  const draw = allowableWithdrawal(G, nominal, threadMm);
  const permanent = LOAD_DURATION_CD.value.permanent;
  return {
    d,
    bearing: dowelBearing(G),
    bendingYield: yieldMpa,
    lengthInWoodMm,
    forGood: (share * permanent) / reductionTerm(d),
    withdrawalN: typeof draw === 'object' ? newtons(0) : newtons(draw * permanent),
  };
}

/** Reference value over R_d x C_D 0.9, penetration counted to the tip, thread at its least (NDS 12.3, 12.2.2). */
const NDS: TimberRoute = {
  id: 'NDS',
  name: 'the US route, NDS-2018 with C_D 0.9 for a load that stays',
  screw: (gauge, inWoodMm, lengthMm) => {
    const nominal = nominalOf(gauge);
    const share = penetrationShare(inWoodMm, nominal);
    const thread = Math.min(inWoodMm, leastThread(nominal, lengthMm)) as Millimetres;
    return share === 0 ? null : byNds(gauge, bearingLength(inWoodMm, nominal), thread, share);
  },
  rightThrough: (gauge, thicknessMm) => byNds(gauge, thicknessMm, thicknessMm, 1),
  basis: [GAP_MODEL, YIELD_MODEL, UNKNOWN_STUD_G, PENETRATION].map(basisOf),
  taken: [DENSITY_TAKEN],
};

const GAMMA_M = sourced(1.3, 'EN1995-1-1', 'Table 2.3, connections', 'read');
const STUD_CLASS = sourced(
  STRENGTH_CLASS_DENSITY.value.C16.characteristic,
  'our-choice',
  'an unknown softwood stud is taken as C16 (EN 338), 310 kg/m3',
  'our-choice',
);
const LEAST_DEPTH = sourced(6, 'EN1995-1-1', '8.3.1.2, 8.7.1: at least 6 d in the point side', 'from-memory');
/** Outward, per millimetre of thread, where the Eurocode's formula does not reach a wood screw. */
const DRAW_PER_MM = sourced(
  4,
  'our-choice',
  'declared draw of a wood screw, 4 N a millimetre of thread; EN 1995-1-1 8.7.2 starts at 6 mm with a thinner root',
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
    withdrawalN: typeof draw === 'object' ? newtons(DRAW_PER_MM.value * threadMm) : newtons(draw * forGood),
  };
}

/** Characteristic x k_mod / (gamma_M x 1.35), with f_h, M_y and d_ef of EN 1995-1-1. */
const EC5: TimberRoute = {
  id: 'EC5',
  name: 'the Eurocode route, EN 1995-1-1 with k_mod 0.6, gamma_M 1.3 and 1.35',
  screw: (gauge, inWoodMm, lengthMm) => {
    const d = effectiveDiameter(WOOD_SCREW_ROOT.value[gauge]);
    if (inWoodMm < LEAST_DEPTH.value * d.rootMm) return null;
    return byEc5(gauge, inWoodMm, Math.min(inWoodMm, leastThread(nominalOf(gauge), lengthMm)) as Millimetres);
  },
  rightThrough: (gauge, thicknessMm) => byEc5(gauge, thicknessMm, thicknessMm),
  basis: [LIMIT_ANALYSIS, STUD_CLASS, SCREW_STEEL, DRAW_PER_MM].map(basisOf),
  taken: [
    {
      field: 'wall.studs.density',
      value: STUD_CLASS.value,
      because: 'the timber of the studs is not known; this is strength class C16, the weakest usually sold',
    },
  ],
};

const NDS_ELSEWHERE: TimberRoute = {
  ...NDS,
  taken: [
    DENSITY_TAKEN,
    {
      field: 'timber.route',
      value: 'NDS',
      because: 'no timber value of this country was read, so the screw is reckoned by the US route, whole',
    },
  ],
};

/** Whose rules a screw in timber is reckoned by: NDS in America, Eurocode 5 in Europe, elsewhere the US route and said so. */
export function timberRouteOf(country: Country | Unknown | undefined): TimberRoute {
  if (country === 'US' || country === 'CA') return NDS;
  return country === 'UK' || country === 'IE' || country === 'EU' ? EC5 : NDS_ELSEWHERE;
}
