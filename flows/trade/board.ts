import { BOARD_ANCHORS, BOARD_ONLY } from '../../core/fixing/board/board-anchors.ts';
import { by, figureBefore, type TradeAnswer } from './trade-answer.ts';

/** More than a handful of anchors on one piece is another question. */
const MOST = 8;

/** How much so many board anchors hold: each kind's cap times how many, and the limit on the sheet. */
function hold(text: string): string | null {
  const count =
    figureBefore(
      text,
      '(?:board |plasterboard |drywall |hollow |wall |screw-?in )*(?:anchors?|toggles?|fixings?|fasteners?)',
    ) ?? 1;
  if (!Number.isInteger(count) || count < 1 || count > MOST) return null;
  const wanted = BOARD_ANCHORS.filter((each) => named(each.fastener, text));
  const kinds = wanted.length > 0 ? wanted : BOARD_ANCHORS;
  const each = kinds.map(
    (kind) => `${kind.name} ${kind.cap.value * count} kg (${kind.usualKg * count} is comfortable)`,
  );
  const first = kinds[0];
  if (!first) return null;
  return `${count === 1 ? 'One' : `${count} of them`} in sound 13 mm board, as a cap: ${each.join('; ')}. Each has to have a hanger of its own, and over ${BOARD_ONLY.value.wholeKg} kg the whole piece goes to the studs. The packet beats this. ${by(first.cap)}`;
}

function named(fastener: string, text: string): boolean {
  if (fastener.includes('toggle')) return text.includes('toggle');
  if (fastener === 'screw-in-anchor') return /\bscrew ?-?in\b|\bspiral\b/.test(text);
  return /\bsleeve\b|\bexpanding\b/.test(text);
}

export const BOARD_ANSWERS: readonly TradeAnswer[] = [
  { asks: [/\b(?:how much|hold|carry|take|load|weight)\b/, /\b(?:anchors?|toggles?)\b/], answer: hold },
  {
    asks: [/\b(?:board|drywall|plasterboard) screws?\b/],
    answer: () =>
      'Not for hanging: board screws are hard and brittle and snap. Use wood or tapping screws. (Common practice, no source.)',
  },
];
