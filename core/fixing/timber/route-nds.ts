import type { Assumption } from '../../plan-shape.ts';
import { type Millimetres, newtons } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { LOAD_DURATION_CD } from './duration.ts';
import type { RoutedScrew, TimberRoute } from './route-shape.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearing,
  leastThread,
  PENETRATION,
  penetrationShare,
  reductionTerm,
} from './timber-bearing.ts';
import { UNKNOWN_STUD_G } from './timber-species.ts';
import { allowableWithdrawal } from './timber-withdrawal.ts';

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
export const NDS: TimberRoute = {
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
