import type { Assumption } from '../../plan-shape.ts';
import { type Kilograms, kg, type Millimetres, mm, type Newtons, newtons, weightOf } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { LOAD_DURATION_CD } from './duration.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearing,
  leastThread,
  PENETRATION,
  penetrationShare,
  reductionTerm,
} from './timber-bearing.ts';
import { lateralBareScrew, lateralWithGap } from './timber-gap.ts';
import { UNKNOWN_STUD_G } from './timber-species.ts';
import { allowableWithdrawal } from './timber-withdrawal.ts';

/** What a screw in a stud may bear for good, newtons. */
export type StudStrength = { readonly lateralN: Newtons; readonly withdrawalN: Newtons };

/** What every screw into a stud takes for granted. */
export const TIMBER_TAKEN: Assumption = {
  field: 'wall.studs.density',
  value: UNKNOWN_STUD_G.value.g,
  because: 'the timber of the studs is not known; this is the lightest of the common softwoods',
};

const G = UNKNOWN_STUD_G.value.g;
const BEARING = dowelBearing(G);
const C_D = LOAD_DURATION_CD.value.permanent;
/** How much of a screw's length is thread is not known: the least a wood screw may have. */
const GAP_MODEL = {
  source: 'AWC-TR12',
  at: 'Table 1-1, bare screw derived from it',
  standing: 'derived',
} as const;
const YIELD_MODEL = { source: 'NDS-2018', at: '12.3.1, 12.2.2.1, Table 2.3.2', standing: 'read' } as const;

export const STUD_BASIS: readonly Basis[] = [GAP_MODEL, YIELD_MODEL, UNKNOWN_STUD_G, PENETRATION].map(
  basisOf,
);

/** Caps of the trade for a screw through board into a stud, by sheet thickness: the lower holds. */
const STUD_CAPS = sourced(
  [
    { upToBoardMm: 13, kg: { 6: 0, 8: 9, 10: 15, 12: 19, 14: 19 } },
    { upToBoardMm: 16, kg: { 6: 0, 8: 8, 10: 13, 12: 16, 14: 16 } },
  ] as const,
  'common-practice',
  'plasterboard on timber studs, line 1',
  'common-practice',
);
export const STUD_CAP_BASIS: readonly Basis[] = [basisOf(STUD_CAPS)];

/** The trade's cap for it; none through a thicker sheet, where only the computed value holds. */
export function studCap(gauge: Gauge, boardMm: Millimetres): Newtons | null {
  const row = STUD_CAPS.value.find((each) => boardMm <= each.upToBoardMm);
  return row ? weightOf(kg(row.kg[gauge]) as Kilograms) : null;
}

/**
 * A hanger on a screw that projects bare through board into a stud: lateral by limit analysis of the bare
 * screw, withdrawal by NDS 12.2.2.1, both x C_D 0.9 for a load that stays. Unknown softwood, side grain.
 */
export function bareStudStrength(
  gauge: Gauge,
  inWoodMm: Millimetres,
  armMm: Millimetres,
  lengthMm: Millimetres,
): StudStrength {
  const nominal = nominalOf(gauge);
  const d = WOOD_SCREW_ROOT.value[gauge];
  const yieldMpa = bendingYield(nominal);
  const share = penetrationShare(inWoodMm, nominal);
  if (typeof yieldMpa === 'object' || share === 0) return NOTHING;
  const lateral = lateralBareScrew({
    d,
    lengthInWoodMm: bearingLength(inWoodMm, nominal),
    bearing: BEARING,
    bendingYield: yieldMpa,
    reduction: reductionTerm(d),
    armMm,
  });
  return { lateralN: newtons(lateral * share * C_D), withdrawalN: withdrawal(gauge, inWoodMm, lengthMm) };
}

/** A batten or board screwed through board into a stud: the yield modes across the gap (AWC TR-12), x C_D 0.9, N. */
export function cleatStrength(
  gauge: Gauge,
  inWoodMm: Millimetres,
  gapMm: Millimetres,
  sideMm: Millimetres,
  lengthMm: Millimetres,
): StudStrength {
  const nominal = nominalOf(gauge);
  const d = WOOD_SCREW_ROOT.value[gauge];
  const yieldMpa = bendingYield(nominal);
  const share = penetrationShare(inWoodMm, nominal);
  if (typeof yieldMpa === 'object' || share === 0) return NOTHING;
  const { allowable } = lateralWithGap({
    d,
    main: { lengthMm: bearingLength(inWoodMm, nominal), bearing: BEARING },
    side: { lengthMm: sideMm, bearing: BEARING },
    bendingYield: yieldMpa,
    reduction: reductionTerm(d),
    gapMm,
  });
  return { lateralN: newtons(allowable * share * C_D), withdrawalN: withdrawal(gauge, inWoodMm, lengthMm) };
}

const NOTHING: StudStrength = { lateralN: newtons(0), withdrawalN: newtons(0) };

function withdrawal(gauge: Gauge, inWoodMm: Millimetres, lengthMm: Millimetres): Newtons {
  const nominal = nominalOf(gauge);
  const thread = mm(Math.min(inWoodMm, leastThread(nominal, lengthMm)));
  const force = allowableWithdrawal(G, nominal, thread);
  return typeof force === 'object' ? newtons(0) : newtons(force * C_D);
}
