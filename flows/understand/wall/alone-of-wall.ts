import type { Listening } from '../../reading.ts';
import { type Found, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

/** "2800 wide" and no more, once the piece's own width is known: it is the wall's that is missing. */
export function aloneOfWall(outline: Outline, { known, awaiting }: Listening): Found | null {
  // While its place is asked for the piece's own size is behind them; before that it may be a correction of it.
  if (awaiting !== 'place.across' && awaiting !== 'place.up') return null;
  if (known.piece?.widthMm === undefined || known.wall?.widthMm !== undefined) return null;
  const match = /^\W*<(\d+)> (?:wide|long|across)\W*$/.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'wall.widthMm');
  if (match === null || length === null || length.readings.length !== 1 || length.negative) return null;
  return settled(without(outline, match), 'wall.widthMm', length, (widthMm) => ({ wall: { widthMm } }), {
    expected: 'the width of a wall',
    example: '2700, or 2.7 m',
  });
}
