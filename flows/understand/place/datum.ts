import { mm } from '../../../core/quantity.ts';
import type { DatumKind } from '../../../core/wall/wall.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const DATUM_WORDS: [DatumKind, string][] = [
  ['mantel', 'mantel|fireplace|hearth|chimney shelf'],
  ['floor', 'floor|ground|carpet|floorboards|deck|ffl|finished floor'],
  ['ceiling', 'ceiling|soffit|cornice|coving|crown moulding|crown molding'],
  ['nosing', 'nosings?|steps?|stairs?|treads?'],
  [
    'furniture',
    'sofa|couch|settee|lounge|bench|worktop|counter|countertop|sideboard|table|desk|console|cabinet|drawers|dresser|headboard|bed|vanity|basin|shelf|piano|bookcase|radiator|unit|buffet|credenza|cupboard|chest|seat|armchair|chair|tv|television|dado|dado rail|skirting|splashback',
  ],
];

export const ANY_DATUM = DATUM_WORDS.map(([, words]) => words).join('|');

const WHOLE_WORDS = DATUM_WORDS.map(([kind, words]) => [kind, new RegExp(`^(?:${words})$`)] as const);

/** The datum a word names. */
export function datumOf(word: string): DatumKind | null {
  return WHOLE_WORDS.find(([, form]) => form.test(word))?.[0] ?? null;
}

const STANDING =
  'mantel|sofa|couch|settee|bench|worktop|counter|sideboard|table|desk|console|cabinet|drawers|dresser|headboard|vanity|basin|shelf|unit|buffet|credenza|cupboard|dado|furniture';
const HEIGHT = [
  new RegExp(
    `\\b(${STANDING})(?: (?:top|shelf|back|rail|itself|which|that|thats|is|its|it is|sits|comes|stands|at|about|around|roughly|up|to|height|of|=|:|,|tops|out|surface))* <(\\d+)>(?: (?:high|tall|up|off|above|from|over|the|finished|my|floor|ground|ffl|level|it))*`,
  ),
  new RegExp(`<(\\d+)> (?:high|tall) (${STANDING})\\b`),
];

/** How high the mantel or the furniture is: "the mantel is 1100 off the floor". */
export function readDatum(outline: Outline, listening: Listening): Found {
  for (const form of HEIGHT) {
    const match = form.exec(outline.text);
    if (match === null || !aboutTheDatum(match[0], form, listening)) continue;
    const [word, n] = form === HEIGHT[0] ? [match[1], match[2]] : [match[2], match[1]];
    const length = lengthOf(outline, n, 'wall.datum');
    const kind = datumOf(word ?? '') ?? listening.known.wall?.datum?.kind ?? 'furniture';
    if (length === null) continue;
    return settled(
      without(outline, stillMeasuredFrom(match, word ?? '')),
      'wall.datum',
      length,
      (aboveFloorMm) => ({ wall: { datum: { kind, aboveFloorMm } } }),
      ASKED,
    );
  }
  return listening.awaiting === 'wall.datum' ? answer(outline, listening) : nothing(outline);
}

/** "140 above the mantel which is 1100 off the floor": the word is left for the reader of heights. */
function stillMeasuredFrom(match: RegExpExecArray, word: string): { index: number; 0: string } {
  const isDatum =
    match[0].startsWith(word) &&
    /\b(?:above|over|off|from)(?: (?:the|a|my|our))* $/.test(match.input.slice(0, match.index));
  return isDatum ? { index: match.index + word.length, 0: match[0].slice(word.length) } : match;
}

const ASKED = { expected: 'a height above the floor', example: '1100' };

/** Not "over the sofa 900 x 600": the height must be said of it. */
function aboutTheDatum(words: string, form: RegExp, listening: Listening): boolean {
  if (listening.awaiting === 'wall.datum' || form !== HEIGHT[0]) return true;
  return /\b(?:is|its|sits|comes|stands|at|height|=|high|tall|off the|above the|from the) /.test(`${words} `);
}

function answer(outline: Outline, listening: Listening): Found {
  const kind = listening.known.wall?.datum?.kind ?? 'furniture';
  const match = /^[^<]*<(\d+)>[^<]*$/.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'wall.datum');
  if (match !== null && length !== null) {
    return settled(
      without(outline, match),
      'wall.datum',
      length,
      (aboveFloorMm) => ({ wall: { datum: { kind, aboveFloorMm } } }),
      ASKED,
    );
  }
  if (/\b(?:the )?floor\b/.test(outline.text)) {
    return facts(
      outline,
      fact('wall.datum', { wall: { datum: { kind: 'floor', aboveFloorMm: mm(0) } } }, outline.said),
    );
  }
  return nothing(outline);
}
