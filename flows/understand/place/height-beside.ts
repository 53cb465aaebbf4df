import type { Listening } from '../../reading.ts';
import type { Found } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { readUp } from './up.ts';

/** Words that make a figure a height, whatever was asked: "140 above the mantel", "1500 off the floor", "1500 high". */
const A_HEIGHT =
  /<\d+>(?: \w+){0,2} (?:above|over|off|up|below|under|high|down)\b|<\d+> (?:from|to) (?:the )?(?:floor|ground|ceiling|mantel)/;

/** A height said along with the place across is read first, so that it is not taken along the wall. */
export function heightBeside(outline: Outline, listening: Listening): Found | null {
  if (listening.awaiting !== 'place.across' || !A_HEIGHT.test(outline.text)) return null;
  const found = readUp(outline, { ...listening, awaiting: null });
  return found.facts.some(({ question }) => question === 'place.up') ? found : null;
}
