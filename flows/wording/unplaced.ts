import type { Unplaced } from '../../core/wall/wall.ts';
import type { DisplayUnit } from '../reading.ts';
import { length } from './length.ts';
import { ACCESSORY } from './words.ts';

/** Asks for what is missing of the first fitting that has no place yet; null when all have. */
export function whereIs([first]: readonly Unplaced[], unit: DisplayUnit): string | null {
  if (first === undefined) return null;
  const { kind, face, xMm, yMm } = first;
  const name = ACCESSORY[kind];
  if (face === undefined && xMm !== undefined && yMm !== undefined)
    return `Which face of the wall is the ${name} on that is ${length(xMm, unit)} from the left: this one, or the other?`;
  const which = face === undefined ? ', and on which face of the wall' : '';
  const there = face === 'far' ? ' on the other side' : '';
  const left = `how far is its middle from the left end${face === 'far' ? ' as you face it there' : ''}`;
  const up = 'how high above the floor';
  const parts = [...(xMm === undefined ? [left] : []), ...(yMm === undefined ? [up] : [])];
  return `Where is the ${name}${there}${which}: ${parts.join(', and ')}, in mm?`;
}

/** "switch on the far face, not placed yet"; with as much of its place as is known. */
export function unplacedText({ kind, face, xMm, yMm, whereabouts }: Unplaced, unit: DisplayUnit): string {
  const told = [
    ...(xMm === undefined ? [] : [`${length(xMm, unit)} from the left`]),
    ...(yMm === undefined ? [] : [`${length(yMm, unit)} up`]),
  ];
  const known = told.length > 0 ? ` ${told.join(', ')}` : '';
  const missing =
    whereabouts === 'unknown'
      ? 'where it is not known'
      : face === undefined && told.length === 2
        ? 'on which face not said yet'
        : 'not placed yet';
  return `${ACCESSORY[kind]}${face === 'far' ? ' on the far face' : ''}${known}, ${missing}`;
}
