import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { asks, type Found, fact, nothing } from '../words/found.ts';
import { lengthOf, type Outline } from '../words/outline.ts';

/** A length of a room, said in metres or feet; our choice. */
const LEAST: Millimetres = mm(1500);
const ALONE = /^\W*(?:(?:its|it|is|about|around|roughly|and|oh|say|approx|so) )*<(\d+)>\W*$/;

/** Questions that a length of a room can't answer, so that a lone one is looked at. */
const ELSEWHERE: ReadonlySet<Listening['awaiting']> = new Set([
  null,
  'piece.kind',
  'piece.massKg',
  'piece.hanging',
  'wall.baseMaterial',
  'wall.accessories',
  'place.below',
  'hazards',
]);

/** "3.4m" and nothing else, once the piece's size is known: the wall's, perhaps; asked, never guessed. */
export function readLoneMetres(outline: Outline, { awaiting, known }: Listening): Found {
  const match =
    ELSEWHERE.has(awaiting) && known.piece?.widthMm !== undefined ? ALONE.exec(outline.text) : null;
  const length = match === null ? null : lengthOf(outline, match[1], 'wall.widthMm');
  if (length === null || length.negative || (length.unitSaid !== 'm' && length.unitSaid !== 'ft'))
    return nothing(outline);
  if (length.readings.length !== 1 || length.valueMm < LEAST || known.wall?.widthMm !== undefined)
    return nothing(outline);
  return asks(outline, {
    question: 'wall.widthMm',
    text: `${length.text}: is that how wide the wall is, or how high?`,
    readings: [
      {
        label: `the wall is ${length.text} wide`,
        fact: fact('wall.widthMm', { wall: { widthMm: length.valueMm } }, outline.said),
      },
      {
        label: `the wall is ${length.text} high`,
        fact: fact('wall.heightMm', { wall: { heightMm: length.valueMm } }, outline.said),
      },
    ],
  });
}
