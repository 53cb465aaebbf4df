import type { Listening } from '../../reading.ts';
import { lengthsIn } from '../lengths/length.ts';
import type { Token } from '../words/token.ts';
import { as, MOST_CM } from './hanging-doubt.ts';
import { isOfHangers, type Placed, placed } from './hanging-roles.ts';
import type { HangerWords } from './hanging-words.ts';

export const QUESTION = 'piece.hanging';

/** Lengths with a role; in inches throughout when the message speaks inches and no other unit. */
export function figuresOf(
  all: readonly Token[],
  listening: Listening,
  by: HangerWords['by'],
  open: boolean,
): Placed[] {
  const read = (unit: Listening['unit']) =>
    placed(all, lengthsIn(all, { unit, question: QUESTION }), by).filter((each) =>
      isOfHangers(all, each, open),
    );
  const inSpoken = read(listening.unit);
  // Where inches are spoken but one bare figure can only be millimetres, all the bare ones are.
  const metric =
    listening.unit === 'in' &&
    inSpoken.some((each) => each.unitSaid === null && each.readings[0]?.unit === 'mm');
  const first = metric ? read('mm').map((each) => ({ ...each, inferred: true })) : inSpoken;
  const units = new Set(first.filter((each) => each.readings.length === 1).map((each) => each.unitSaid));
  const bare = first.some((each) => each.unitSaid === null);
  if (!bare) return first;
  if ((units.has('in') || units.has('ft')) && !units.has('mm') && !units.has('cm')) return read('in');
  if (units.has('cm') && !units.has('mm')) {
    return first.map((each) => (each.unitSaid === null && each.valueMm < MOST_CM ? as(each, 'cm') : each));
  }
  return first;
}
