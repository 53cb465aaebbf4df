import { massOf } from '../piece/mass.ts';
import type { Piece } from '../piece/piece.ts';
import { shareOf } from '../piece/share.ts';
import {
  type Degrees,
  degrees,
  type Kilograms,
  kg,
  type Millimetres,
  mm,
  newtons,
  toTenth,
} from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Bearing } from './bearing.ts';
import { lengthText } from './length-text.ts';
import { degreesText, tiltOf } from './level.ts';
import { TAPE_READING } from './tolerance.ts';

/** From this much of the weight on one of two hangers it is worth saying which. */
const UNEVEN = sourced(0.55, 'our-choice', 'more than 55 to 45 is said', 'our-choice');

export const OFF_CENTRE_BASIS = [basisOf(UNEVEN)];

/**
 * How far a piece turns on one hook that holds its cord or ring where it is, until its weight is below the hook:
 * atan(offset / hook above the centre). Right side down positive, degrees; null where its weight is not below the hook.
 */
export function turnsOnOneHook(offMm: Millimetres, hookAboveMm: Millimetres): Degrees | null {
  return hookAboveMm > 0 ? tiltOf(offMm, hookAboveMm) : null;
}

/** What comes of a weight that is not in the middle: it hangs crooked on one hook, or one of two hangers carries more. */
export function offCentreAdvice(piece: Piece, bearings: readonly Bearing[]): string[] {
  const { comFromLeftMm: com } = piece;
  const [first] = bearings;
  const last = bearings.at(-1);
  if (com === undefined || !first || !last || piece.hanging.by === 'batten') return [];
  return bearings.length === 1 ? onOneHook(piece, first, com) : onTwo(piece, first, last, com);
}

const side = (offMm: number): string => (offMm < 0 ? 'left' : 'right');

function onOneHook(piece: Piece, hook: Bearing, com: Millimetres): string[] {
  const off = mm(com - hook.acrossMm);
  if (Math.abs(off) <= TAPE_READING.value) return [];
  const turn = turnsOnOneHook(off, mm(piece.heightMm / 2 - hook.dropMm));
  const hangs =
    turn === null
      ? 'it will turn over'
      : `it will hang crooked, ${degreesText(degrees(Math.abs(turn)))} down on the ${side(off)}`;
  return [
    `The weight is ${lengthText(mm(Math.abs(off)))} to one side of the hook: on one hook ${hangs}. Use two.`,
  ];
}

/** The outer two carry it all; a weight outside them lifts the far one off. */
function onTwo(piece: Piece, first: Bearing, last: Bearing, com: Millimetres): string[] {
  const apart = mm(last.acrossMm - first.acrossMm);
  if (!(apart > 0) || piece.hanging.by === 'cord') return [];
  const share = shareOf(newtons(1), first.acrossMm, last.acrossMm, com);
  const heavy = Math.max(share.left, share.right);
  const way = share.left > share.right ? 'left' : 'right';
  if (heavy > 1) {
    return [
      `The weight is outside the hangers, to the ${way}: the other one lifts off. Put a hanger on each side of it.`,
    ];
  }
  if (heavy < UNEVEN.value) return [];
  const all: Kilograms = massOf(piece).massKg;
  return [
    `The weight is off the middle: the ${way} hanger carries ${toTenth(kg(all * heavy))} kg of ${toTenth(all)} kg.`,
  ];
}
