import type { Hanging } from '../piece/piece.ts';
import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';

/** From the finished face out to where a hanger bears, when nobody measured it. */
export const STAND_OFF = sourced(mm(6), 'our-choice', 'contract 4: standOffMm defaults to 6', 'our-choice');

/** The wall half of a batten, or a board across studs: thickness, and from its screw line to its lower edge. */
export const BATTEN = sourced(
  { thicknessMm: mm(18), screwToLowerEdgeMm: mm(40) },
  'our-choice',
  'timber or ply of 18 to 25 mm, about 80 high, screwed along its middle',
  'our-choice',
);

/** The stand-off of a hanging, and what was taken for it, mm. */
export function standOffOf(hanging: Hanging): { standOffMm: Millimetres; assumptions: Assumption[] } {
  const given = hanging.standOffMm;
  if (given !== undefined && given >= 0) return { standOffMm: given, assumptions: [] };
  if (hanging.by === 'batten') return { standOffMm: mm(0), assumptions: [] };
  const because = 'not measured: how far the hanger bears off the finished face, which bends the screw';
  return {
    standOffMm: STAND_OFF.value,
    assumptions: [{ field: 'piece.hanging.standOffMm', value: STAND_OFF.value, because }],
  };
}
