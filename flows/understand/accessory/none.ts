import type { AskBack } from '../../reading.ts';
import { saysNotKnown } from '../steering/dont-know.ts';
import { asks, type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { whatIsThere } from './ask.ts';
import type { Faces } from './empty.ts';
import { markersIn } from './face.ts';

/** Nothing there, said of the wall: a missed fitting is a hole in a cable, so "no idea" and the like must not match. */
const NONE = [
  /^\W*(?:(?:no|nope|nah|none|nothing|nil|zero|neither|clear|all clear|bare|empty|walls|yep|yeah|yes|isnt|arent|got|showing|blank|nothing at all|not a thing|mate|please|there|is|are|its|at|all|here|on|it|this|that|the|wall|side|sides|face|faces|either|both|of|any|anything|anywhere|to|see|i|can|or|and|as far as|that|know|aware|think|probably|should|be|obvious|visible|not|see|completely|totally|else|whatsoever|just|a|looked|checked|have|weve|ive|we|sure|yes|behind|,|\.|;) ?)+$/,
  /\b(?:no|not any|isnt any|arent any|without)(?: \w+)? (?:accessor(?:y|ies)|sockets?|switch(?:es)?|powerpoints?|outlets?|lights?|fittings?|services|pipes?|plugs?|points?|cables?|electrics?)\b/,
  /^\W*(?:no|none|nothing)\W+(?:i |we |ive |weve )?(?:have )?(?:checked|looked|been round)\b/,
];
const SAYS_NONE =
  /\b(?:isnt|arent|not) (?:anything|any)\b|\bnot that (?:i|we) can see\b|\b(?:no|nope|nah|none|nothing|nil|zero|neither|clear|bare|empty|blank|not any|isnt any|arent any|without)\b/;
/** "Nothing but an old bracket": something is there, whatever it is. */
const SOMETHING =
  /\b(?:but an?|but the|but some|except|apart from|other than|besides|bar (?:the|a|an)|only an?|just an?|unless|somewhere|something|maybe an?)\b/;
/** "None that I know of" is not the word of someone who has looked. */
const NOT_LOOKED_AT =
  /\b(?:obvious|obviously|visible)\b|\b(?:not )?that (?:i|we) can see\b|\b(?:that|as far as) i(?:m| am)? (?:know|aware|can tell|can see)\b|\bafaik\b|\bi (?:think|guess|believe|reckon|assume|suppose|doubt)\b|\b(?:probably|should be|hopefully|shouldnt be|presumably|maybe)\b/;

/** Nothing on the wall, on this face or on both. `denied`: fittings were named and said not to be there. */
export function none(outline: Outline, faces: Faces, denied: boolean): Found {
  const { text, said } = outline;
  const { unseen } = faces;
  const empty = denied ? withDenied(faces) : faces.empty;
  const says =
    empty.size > 0 ||
    denied ||
    (SAYS_NONE.test(text) && NONE.some((form) => form.test(text) || form.test(faces.text)));
  if (!says) return nothing(outline);
  if (SOMETHING.test(faces.text) || /<\d+>/.test(faces.text)) return nothing(outline);
  if (saysNotKnown(text) && !unseen) return nothing(outline);
  if (NOT_LOOKED_AT.test(text)) return asks(outline, haveYouLooked(said));
  const nearOnly = (empty.has('this') || faces.passedOver) && !empty.has('far');
  if (empty.has('far') && !empty.has('this') && (denied || !SAYS_NONE.test(faces.text)))
    return asks(outline, andThisSide(said));
  const far =
    unseen || nearOnly
      ? { farSide: 'unknown' as const }
      : empty.has('far')
        ? { farSide: 'seen' as const }
        : {};
  const read = fact('wall.accessories', { wall: { accessories: [], ...far } }, said);
  const found = facts(outline, read);
  return nearOnly && !unseen ? { ...found, asks: [whatIsThere(said)] } : found;
}

/** "No sockets on either face": the faces that a denial names. */
function withDenied({ text, empty }: Faces): ReadonlySet<'this' | 'far'> {
  const sides = markersIn(text).flatMap(({ side }): ('this' | 'far')[] =>
    side === 'both' ? ['this', 'far'] : side === 'this' || side === 'far' ? [side] : [],
  );
  return new Set([...empty, ...sides]);
}

function haveYouLooked(said: string): AskBack {
  const seen = fact('wall.accessories', { wall: { accessories: [], farSide: 'seen' } }, said);
  const near = fact('wall.accessories', { wall: { accessories: [], farSide: 'unknown' } }, said);
  return {
    question: 'wall.accessories',
    text: 'Have you looked? Both faces count, above and below too.',
    readings: [
      { label: 'looked at both faces: none', fact: seen },
      { label: 'looked at this face only: none', fact: near },
      { label: 'not looked yet' },
    ],
  };
}

/** Only the far face was spoken of. */
function andThisSide(said: string): AskBack {
  const seen = fact('wall.accessories', { wall: { accessories: [], farSide: 'seen' } }, said);
  return {
    question: 'wall.accessories',
    text: 'Nothing on the far side, then. And on this side: what is there, and where?',
    readings: [{ label: 'nothing on this side either', fact: seen }, { label: 'not looked yet' }],
  };
}

const CLEAR =
  /\b(?:no|none|without)(?: \w+)? (?:sockets?|switch(?:es)?|powerpoints?|outlets?|accessories|electrics|services)(?: (?:or|nor|and|no) \w+)* (?:(?:on|at) )?(?:either|both|each) (?:side|face|sides|faces)\b/;

/** Said before it was asked: only words that leave no doubt. */
export const saysClear = (text: string): boolean => CLEAR.test(text);

export function unaskedNone(outline: Outline): Found {
  if (!saysClear(outline.text)) return nothing(outline);
  const value = { wall: { accessories: [], farSide: 'seen' as const } };
  return facts(outline, fact('wall.accessories', value, outline.said));
}
