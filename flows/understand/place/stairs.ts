import type { WallDatum } from '../../../core/wall/wall.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const IS = '(?: (?:is|are|of|about|at|each|:|,|=))*';
/** The words before their figures, or after them; never one of each. */
const ORDERS = [
  {
    riseMm: new RegExp(`\\b(?:rises?|risers?)${IS} <(\\d+)>`),
    goingMm: new RegExp(`\\b(?:goings?|treads?)${IS} <(\\d+)>`),
  },
  { riseMm: /<(\d+)> (?:rise|risers?)\b/, goingMm: /<(\d+)> (?:goings?|treads?)\b/ },
] as const;
const CLIMBS =
  /\b(?:climb(?:s|ing)?|go(?:es|ing)? up|run(?:s|ning)? up|ris(?:es|ing)|up) (?:to|towards?) (?:the |my )?(left|right)\b/;

/** A flight beside the piece: "rise 180, going 250, climbs to the right". Only with both, or once heights are from its nosings; a riser alone is a pipe. */
export function readStairs(outline: Outline, listening: Listening): Found {
  const known = listening.known.wall?.datum?.kind === 'nosing';
  const spoken = /\b(?:stairs?|staircase|steps|nosings?|risers?)\b/.test(outline.text);
  if (!known && !spoken) return nothing(outline);
  const stairs: Pick<WallDatum, 'riseMm' | 'goingMm' | 'climbs'> = {};
  let rest = outline;
  const order =
    ORDERS.find((each) => each.riseMm.test(rest.text) && each.goingMm.test(rest.text)) ?? ORDERS[0];
  for (const field of ['riseMm', 'goingMm'] as const) {
    const match = order[field].exec(rest.text);
    const length = match === null ? null : lengthOf(rest, match[1], 'wall.datum');
    if (match === null || length === null || length.negative || length.readings.length !== 1) continue;
    stairs[field] = length.readings[0]?.valueMm ?? length.valueMm;
    rest = without(rest, match);
  }
  const way = CLIMBS.exec(rest.text);
  const both = stairs.riseMm !== undefined && stairs.goingMm !== undefined;
  if (way !== null && (both || known)) {
    stairs.climbs = way[1] === 'left' ? 'left' : 'right';
    rest = without(rest, way);
  }
  const aPipe = !both && /\brisers?\b/.test(outline.text);
  if (Object.keys(stairs).length === 0 || aPipe || !(both || known)) return nothing(outline);
  return facts(rest, fact('wall.datum', { wall: { datum: { kind: 'nosing', ...stairs } } }, outline.said));
}
