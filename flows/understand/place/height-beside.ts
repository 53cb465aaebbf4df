import type { Listening } from '../../reading.ts';
import { asks, type Found } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import { loneCentre } from './lone-centre.ts';
import { readUp } from './up.ts';
import { whichLine } from './up-value.ts';

/** Words that make a figure a height, whatever was asked: "140 above the mantel", "1500 off the floor", "1500 high". */
const A_HEIGHT =
  /<\d+>(?: \w+){0,2} (?:above|over|off|up|below|under|high|down)\b|<\d+> (?:from|to) (?:the )?(?:floor|ground|ceiling|mantel)/;

/** A height said along with the place across is read first, so that it is not taken along the wall. */
export function heightBeside(outline: Outline, listening: Listening): Found | null {
  if (listening.awaiting !== 'place.across') return null;
  const elsewhere: Listening = { ...listening, awaiting: null };
  if (!A_HEIGHT.test(outline.text) && loneCentre(outline, elsewhere) === null) return null;
  const found = readUp(outline, elsewhere);
  const isHeard = [...found.facts, ...found.asks].some(({ question }) => question === 'place.up');
  return isHeard ? found : bareHeight(outline);
}

const UP_ALONE = /(?:, |; |and )<(\d+)> (?:up|high)(?= ?(?:$|[,;.]))/;

/** "Centre 1200 from the left, 1500 up": of which line of the frame is asked. */
function bareHeight(outline: Outline): Found | null {
  const match = UP_ALONE.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'place.up');
  if (match === null || length?.readings.length !== 1 || length.negative) return null;
  return asks(without(outline, match), whichLine(length.valueMm, length.text, outline.said, null));
}
