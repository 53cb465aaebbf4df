import type { AskBack } from '../../reading.ts';
import { saysNotKnown } from '../steering/dont-know.ts';
import { asks, type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { BOTH, FAR, NEAR } from './accessory-face.ts';

/** Nothing there, said of the wall: a missed fitting is a hole in a cable, so "no idea" and the like must not match. */
const NONE = [
  /^\W*(?:(?:no|nope|nah|none|nothing|nil|zero|neither|clear|all clear|bare|empty|nothing at all|not a thing|mate|please|there|is|are|its|at|all|here|on|it|this|that|the|wall|side|sides|face|faces|either|both|of|any|to|see|i|can|or|and|as far as|that|know|of|aware|think|probably|should|be|,|\.) ?)+$/,
  /\b(?:none|nothing|nil|zero)\b(?: (?!know|sure|idea|wrong|to|yet|special|much|matter|like)\w+){0,3} (?:side|sides|face|faces|here|there|wall|it|either|both|behind)\b/,
  /\b(?:no|not any|isnt any|arent any|without)(?: \w+)? (?:accessor(?:y|ies)|sockets?|switch(?:es)?|powerpoints?|outlets?|lights?|fittings?|services|pipes?|plugs?|points?|cables?)\b/,
  /\b(?:both|either)(?: \w+)? (?:are |is )?(?:clear|bare|empty)\b/,
  /^\W*(?:no|none|nothing)\W+(?:i |we |ive |weve )?(?:have )?(?:checked|looked|been round)\b/,
  /\bneither (?:side|face) (?:has|have|had)\b/,
];
const SAYS_NONE =
  /\b(?:no|nope|nah|none|nothing|nil|zero|neither|clear|bare|empty|not any|isnt any|arent any|without)\b/;

/** Nothing on the wall, on this face or on both. */
export function none(outline: Outline, farUnknown: boolean): Found {
  const { text, said } = outline;
  if (!SAYS_NONE.test(text) || !NONE.some((form) => form.test(text))) return nothing(outline);
  if (saysNotKnown(text) && !farUnknown) return nothing(outline);
  if (NOT_LOOKED_AT.test(text)) return asks(outline, haveYouLooked(said));
  const thisOnly = NEAR.test(text) && !BOTH.test(text) && !/\bnothing (?:on|at) the (?:other|far)/.test(text);
  const farOnly =
    FAR.test(text) &&
    !BOTH.test(text) &&
    !NEAR.test(text) &&
    !farUnknown &&
    /\b(?:none|nothing) (?:\w+ )?(?:on|at|in) the (?:other|far|back)/.test(text);
  if (farOnly) return nothing(outline);
  const far =
    farUnknown || (thisOnly && !FAR.test(text))
      ? { farSide: 'unknown' as const }
      : BOTH.test(text) || FAR.test(text)
        ? { farSide: 'seen' as const }
        : {};
  return facts(outline, fact('wall.accessories', { wall: { accessories: [], ...far } }, said));
}

/** "None that I know of" is not the word of someone who has looked. */
const NOT_LOOKED_AT =
  /\b(?:that|as far as) i(?:m| am)? (?:know|aware|can tell|can see)\b|\bafaik\b|\bi (?:think|guess|believe|reckon|assume|suppose|doubt)\b|\b(?:probably|should be|hopefully|shouldnt be|presumably|maybe)\b/;

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

/** Said before it was asked: only words that leave no doubt. */
export function unaskedNone(outline: Outline): Found {
  const clear =
    /\b(?:no|none|without)(?: \w+)? (?:sockets?|switch(?:es)?|powerpoints?|outlets?)(?: (?:or|nor|and|no) \w+)* (?:on|at) (?:either|both|each) (?:side|face|sides|faces)\b/;
  if (!clear.test(outline.text)) return nothing(outline);
  return facts(
    outline,
    fact('wall.accessories', { wall: { accessories: [], farSide: 'seen' } }, outline.said),
  );
}
