import { standOffOf } from '../fixing/stand-off.ts';
import { forwardLean } from '../piece/lean.ts';
import { massOf } from '../piece/mass.ts';
import type { Piece } from '../piece/piece.ts';
import { type Degrees, kg, type Millimetres, mm, toTenth } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Why } from '../why.ts';
import { lengthText } from './length-text.ts';
import { degreesText, VISIBLE_TILT } from './level.ts';
import { tenths } from './mark-why.ts';
import { GEOMETRY, TAPE_READING } from './tolerance.ts';

/** How a piece stands off the wall: at its hanger, at its lower corners, and what comes of the difference. */
type Leaning = { standOffMm: Millimetres; bumperMm: Millimetres; aboveBottomMm: Millimetres; lean: Degrees };

/** Only what hangs on rings, a ring or a cord leans; a keyhole lies flat, unless it was measured to stand off. */
function leaningOf(piece: Piece, highestDropMm: Millimetres): Leaning | null {
  const { hanging, bumperMm = mm(0) } = piece;
  const { by } = hanging;
  const standsOff =
    by === 'rings' || by === 'cord' || (by === 'keyholes' && hanging.standOffMm !== undefined);
  if (!standsOff) return null;
  const { standOffMm } = standOffOf(hanging);
  const aboveBottomMm = mm(piece.heightMm - highestDropMm);
  const lean = forwardLean(standOffMm, bumperMm, aboveBottomMm);
  return lean === null ? null : { standOffMm, bumperMm, aboveBottomMm, lean };
}

/** What stands far out for its height pulls outward: said where that is more than this much of its weight. */
const DEEP = sourced(0.15, 'our-choice', 'outward pull over weight that is worth a line', 'our-choice');

export const LEAN_BASIS = [basisOf(VISIBLE_TILT), basisOf(DEEP)];

/** A deep piece hung low pulls its hangers off the wall: W e / h, said in kilograms (safety 10). */
export function deepAdvice(piece: Piece, highestDropMm: Millimetres): string[] {
  const outMm = piece.comFromWallMm ?? piece.depthMm;
  const aboveMm = piece.heightMm - highestDropMm;
  if (outMm === undefined || piece.hanging.by === 'batten' || !(outMm > aboveMm * DEEP.value)) return [];
  const pull = toTenth(kg((massOf(piece).massKg * outMm) / aboveMm));
  return [
    `It stands far out for its height and pulls ${pull} kg outward, off the wall: closed hooks, hangers as high on it as they go.`,
  ];
}

/** A lean that is seen, and the bumpers that take it away; or bumpers that tip the piece back. */
export function leanAdvice(piece: Piece, highestDropMm: Millimetres): string[] {
  const leaning = leaningOf(piece, highestDropMm);
  if (leaning === null) return [];
  const { standOffMm, bumperMm, lean } = leaning;
  if (bumperMm - standOffMm > TAPE_READING.value) {
    return [
      `The bumpers are ${lengthText(mm(bumperMm - standOffMm))} thicker than the hangers stand off: it tips back at the top. ${lengthText(standOffMm)} is enough.`,
    ];
  }
  if (lean < VISIBLE_TILT.value) return [];
  return [
    `It leans ${degreesText(lean)} forward: bumpers of ${lengthText(standOffMm)} at both lower corners set it upright.`,
  ];
}

/** Bumpers for the step at the wall: as thick as the hangers stand off; null where they are on, or nothing leans. */
export function bumpersFor(piece: Piece): Millimetres | null {
  const leaning = leaningOf(piece, mm(0));
  return leaning === null || leaning.standOffMm <= leaning.bumperMm ? null : leaning.standOffMm;
}

/** Why it leans, and how far out that carries the middle of it. */
export function leanWhys(piece: Piece, highestDropMm: Millimetres): Why[] {
  const leaning = leaningOf(piece, highestDropMm);
  if (leaning === null) return [];
  const { standOffMm, bumperMm, aboveBottomMm, lean } = leaning;
  const outMm = mm(((standOffMm - bumperMm) * piece.heightMm) / 2 / aboveBottomMm);
  return [
    {
      of: 'lean',
      formula: 'arcsine of ((stand-off - bumper) / hanger above the bottom edge)',
      inputs: tenths({
        'stand-off': standOffMm,
        bumper: bumperMm,
        'hanger above the bottom edge': aboveBottomMm,
      }),
      result: `${degreesText(lean)}, its middle ${lengthText(outMm)} further out`,
      basis: [basisOf(GEOMETRY)],
    },
  ];
}
