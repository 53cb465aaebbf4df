import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import type { Token } from '../words/token.ts';
import type { Placed } from './hanging-roles.ts';
import type { HangerWords } from './hanging-words.ts';

/** "the left one is 3 lower": a difference, not a measure. */
export const LESS = /^(lower|higher|more|less|further|closer|different|out|shorter|longer)$/;

/** In from the nearer side no hanger is farther than this on a piece of unknown width; our choice. */
const MOST_INWARD: Millimetres = mm(1500);

export function isOffThePiece(found: Placed, listening: Listening): boolean {
  const { widthMm, heightMm } = listening.known.piece ?? {};
  if (found.readings.length !== 1) return false;
  if (found.role === 'in') return found.valueMm > (widthMm === undefined ? MOST_INWARD : widthMm / 2);
  const limit = found.role === 'down' ? heightMm : ACROSS.has(found.role) ? widthMm : undefined;
  return limit !== undefined && found.valueMm >= limit;
}

export const ACROSS: ReadonlySet<Placed['role']> = new Set<Placed['role']>(['in', 'from-left', 'from-right']);

/** Unasked, figures across count only with a figure down: "left ring 450 from the left" may be the wall's. */
export function isPlaced(figures: readonly Placed[]): boolean {
  return figures.some((each) => each.role === 'down');
}

/** Right after the hangers were told, and with no place being asked, a bare "230 down" is about them. */
export function isAfterwards(listening: Listening): boolean {
  const elsewhere = listening.awaiting?.startsWith('place.') || listening.awaiting === 'wall.accessories';
  return listening.lastAnswered === 'piece.hanging' && elsewhere !== true;
}

/** Wires, hooks and clips may also be on or in the wall when that is asked. */
export function isAboutTheWall(all: readonly Token[], listening: Listening): boolean {
  const asksWall = listening.awaiting === 'wall.accessories' || listening.awaiting === 'hazards';
  return asksWall && !all.some((each) => /^(rings?|keyholes?|back|drings?)$/.test(each.text));
}

/** Without figures a hanger counts only where it is said to be on the piece. */
export function isSaidOfPiece(all: readonly Token[], words: HangerWords, listening: Listening): boolean {
  if (listening.known.piece?.hanging?.by !== undefined || listening.awaiting?.startsWith('place.'))
    return false;
  if (words.by === 'keyholes' || words.by === 'cord' || words.by === 'batten') return true;
  return words.sawtooth || all.some((each) => /^(back|behind|frame|rings|drings)$/.test(each.text));
}
