import type { Fact, Listening } from '../../reading.ts';
import { fact } from '../words/found.ts';
import { type Outline, without } from '../words/outline.ts';

const BEGIN = '(?:^|(?<= [,;.] )|(?<= and ))';
const LEAD = '(?:(?:in|the|its|it|put|want|please|so|just|right|bang|slap|smack|dead|exact|very) )*';
const END = '(?: (?:of|on|in) (?:the )?wall)?(?: please)? (?:,|;|and|then|with)(?: (?:it|at|so|its))* ';

/** "Centre, 300 above the bed": alone between commas it is the place along the wall, no line of the frame. */
const ALONE = new RegExp(`${BEGIN}${LEAD}(?:centre|middle)${END}(?=[^,]*<\\d+>)`);
/** "Centre it", "dead centre", "centred": the place along the wall even where the height was asked for. */
const ALONG = new RegExp(
  `${BEGIN}${LEAD}(?:centre (?:it|this|that|them)|centred|central|centrally|(?:dead|bang|slap|smack)(?: (?:in|bang|the|dead))* (?:centre|middle)|in the (?:very )?(?:middle|centre))(?: up)?${END}(?=[^,]*<\\d+>)`,
);

/** The message without such a centre, and the centre as a fact; null when there is none. */
export function loneCentre(outline: Outline, { awaiting }: Listening): { rest: Outline; fact: Fact } | null {
  const match = ALONG.exec(outline.text) ?? (awaiting === 'place.up' ? null : ALONE.exec(outline.text));
  if (match === null || HANGERS.test(besideIt(match))) return null;
  return {
    rest: without(outline, match),
    fact: fact('place.across', { place: { across: { by: 'centre' } } }, outline.said),
  };
}

/** The clause before it and the one after it; all there is where no comma parts them. */
function besideIt({ input, index, 0: own }: RegExpExecArray): string {
  const before =
    input
      .slice(0, index)
      .trimEnd()
      .replace(/[,;.]$/, '')
      .split(/ [,;.] /)
      .at(-1) ?? '';
  const after = input.slice(index + own.length).split(/ [,;.] /)[0] ?? '';
  return `${before} ${own} ${after}`;
}

/** A hook or a keyhole may be in the middle of the frame. */
const HANGERS = /\b(?:rings?|hooks?|cords?|wires?|keyholes?|hangers?|straps?|slots?|clips?|sawtooth)\b/;
