import type { Listening } from '../../reading.ts';
import { type Outline, without } from '../words/outline.ts';

/** "Centre, 300 above the bed": alone between commas it is the place along the wall, no line of the frame. */
const LONE =
  /(?:^|(?<= , ))(?:(?:in|the|dead|its|it|put) )*(?:centre|middle)(?: (?:of|on|in) (?:the )?wall)? , (?=<\d+>)/;

/** The message without such a centre, unless the height was asked for. */
export function lessLoneCentre(outline: Outline, { awaiting }: Listening): Outline {
  const match = awaiting === 'place.up' ? null : LONE.exec(outline.text);
  return match === null ? outline : without(outline, match);
}
