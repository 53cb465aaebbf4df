import type { Millimetres } from '../../quantity.ts';
import { newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { linear, type PointLoad, type WorstCheck } from '../acting/worst-check.ts';
import type { Shank } from '../masonry/walk-row.ts';
import { bendingResistance, steelBasis } from '../steel/shank-strength.ts';
import type { HoldingCap } from './holding-cap.ts';

/** Outward, an anchor in board is reckoned at half of what it carries downward. */
export const OUTWARD_SHARE = sourced(
  1 / 2,
  'our-choice',
  'board anchors pull out sooner than they shear; half the cap outward',
  'our-choice',
);

/**
 * The worse of a cap of common practice and the bending of what goes through the hole, loaded `armMm` out
 * from what holds it: V/cap + N/(cap/2), V/V_M. A proven value counts whole outward. Forces in newtons.
 */
export function cappedCheck(point: PointLoad, cap: HoldingCap, shank: Shank, armMm: Millimetres): WorstCheck {
  const outward = cap.noSource ? newtons(cap.forceN * OUTWARD_SHARE.value) : cap.forceN;
  const held: WorstCheck = {
    mode: cap.mode,
    resistanceN: cap.forceN,
    utilisation: linear(point, cap.forceN, outward),
    basis: cap.basis,
    noSource: cap.noSource,
    acting: point,
    allowed: { shearN: cap.forceN, tensionN: outward },
  };
  const bending = bendingResistance(shank, armMm, point.tensionN);
  const bent = point.shearN === 0 ? 0 : point.shearN / bending;
  if (bent <= held.utilisation) return held;
  return {
    mode: 'screw-bending',
    resistanceN: bending,
    utilisation: bent,
    basis: steelBasis('screw-bending', shank),
    noSource: false,
    acting: point,
    allowed: { shearN: bending, tensionN: outward },
  };
}
