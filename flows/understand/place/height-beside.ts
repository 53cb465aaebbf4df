import type { Listening } from '../../reading.ts';
import { type Found, fact } from '../words/found.ts';
import { type Outline, without } from '../words/outline.ts';
import { readUp } from './up.ts';

/** Words that make a figure a height, whatever was asked: "140 above the mantel", "1500 off the floor", "1500 high". */
const A_HEIGHT =
  /<\d+>(?: \w+){0,2} (?:above|over|off|up|below|under|high|down)\b|<\d+> (?:from|to) (?:the )?(?:floor|ground|ceiling|mantel)/;

/** "Centre, 300 above the bed": the centre is along the wall, and the 300 is the gap under the frame. */
const CENTRED_FIRST =
  /^(?:(?:in|the|dead|its|it|put|right|bang) )*(?:centre|centred|central|middle)(?: (?:of|on|in) (?:the )?wall)? (?:,|and|then) /;

/** A height said along with the place across is read first, so that it is not taken along the wall. */
export function heightBeside(outline: Outline, listening: Listening): Found | null {
  if (listening.awaiting !== 'place.across' || !A_HEIGHT.test(outline.text)) return null;
  const first = CENTRED_FIRST.exec(outline.text);
  const found = readUp(first === null ? outline : without(outline, first), { ...listening, awaiting: null });
  if (!found.facts.some(({ question }) => question === 'place.up')) return null;
  if (first === null) return found;
  const centred = fact('place.across', { place: { across: { by: 'centre' } } }, outline.said);
  return { ...found, facts: [centred, ...found.facts] };
}
