import { type Kilograms, kg, type Millimetres, type Newtons, newtons, weightOf } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import type { TimberRoute } from './route-shape.ts';
import { lateralBareScrew, lateralWithGap } from './timber-gap.ts';

/** What a screw in a stud may bear for good, newtons. */
export type StudStrength = {
  readonly lateralN: Newtons;
  readonly withdrawalN: Newtons;
  readonly basis: readonly Basis[];
};

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
 * screw, withdrawal side grain, for a load that stays, by one route whole. Unknown softwood, N.
 */
export function bareStudStrength(
  route: TimberRoute,
  gauge: Gauge,
  inWoodMm: Millimetres,
  armMm: Millimetres,
  lengthMm: Millimetres,
): StudStrength {
  const screw = route.screw(gauge, inWoodMm, lengthMm);
  if (screw === null) return { ...NOTHING, basis: route.basis };
  const lateral = lateralBareScrew({ ...screw, reduction: 1, armMm });
  return {
    lateralN: newtons(lateral * screw.forGood),
    withdrawalN: screw.withdrawalN,
    basis: route.basis,
  };
}

/** A batten or board screwed through board into a stud: the yield modes across the gap, by one route whole, N. */
export function cleatStrength(
  route: TimberRoute,
  gauge: Gauge,
  inWoodMm: Millimetres,
  gapMm: Millimetres,
  sideMm: Millimetres,
  lengthMm: Millimetres,
): StudStrength {
  const screw = route.screw(gauge, inWoodMm, lengthMm);
  if (screw === null) return { ...NOTHING, basis: route.basis };
  const { allowable } = lateralWithGap({
    d: screw.d,
    main: { lengthMm: screw.lengthInWoodMm, bearing: screw.bearing },
    side: { lengthMm: sideMm, bearing: screw.bearing },
    bendingYield: screw.bendingYield,
    reduction: 1,
    gapMm,
  });
  return {
    lateralN: newtons(allowable * screw.forGood),
    withdrawalN: screw.withdrawalN,
    basis: route.basis,
  };
}

const NOTHING = { lateralN: newtons(0), withdrawalN: newtons(0) };
