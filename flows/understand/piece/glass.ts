import type { Piece } from '../../../core/piece/piece.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';

type Glass = NonNullable<Piece['glass']>;

const FORMS: [Glass, RegExp][] = [
  [
    'none',
    /\b(?:no|without|not any|not|aint got|hasnt got|hasnt any|unglazed)(?: (?:a|any|the|got))* ?(?:glass|glazing)\b|\bunglazed\b|\bno front\b|\bopen front\b/,
  ],
  ['acrylic', /\b(?:acrylic|polycarbonate|plastic (?:front|glazing|glass|sheet)|plastic not glass)\b/],
  [
    'safety',
    /\b(?:safety|toughened|tempered|laminated|film ?backed|vinyl ?backed|shatter ?proof|safety ?backed)\b/,
  ],
  [
    'plain',
    /\b(?:ordinary|plain|normal|standard|regular|float|annealed|old|untreated|just|picture|clear|thin|usual|non ?reflective|museum) (?:glass|glazing|float)\b|\b\d+ ?mm glass\b|<\d+> glass\b/,
  ],
];

const ANSWERS: [Glass, RegExp][] = [
  ['none', /^\W*(?:no|none|nope|nah|nothing|nil)\W*$|\bno glass\b|\bjust (?:the )?canvas\b|\bbare canvas\b/],
  ['acrylic', /\bplastic\b/],
  [
    'plain',
    /\b(?:ordinary|plain|normal|standard|regular|float|annealed)\b|^\W*(?:yes|its|it is|just|with|has|got|behind)?\W*(?:a )?glass\W*$|^\W*glass\b|^\W*(?:yes|yeah|yep)\W*$|\bnot safety\b/,
  ],
];

/** What the front is made of, where it can break. */
export function readGlass(outline: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'piece.glass';
  const text = outline.text.replace(
    /\bsafety (?:glasses|first|goggles)\b|\bnot (?:safety|toughened|tempered|laminated)(?: glass)?\b/g,
    ' ',
  );
  // "9 kg without the glass" weighs the frame alone: there is glass.
  const weighedApart =
    /\d\s*(?:kgs?|kilos?|lbs?|pounds?)\W+(?:without|not counting|excluding|less) (?:the )?(?:glass|glazing)\b/.test(
      outline.words,
    );
  const forms = (asked ? [...FORMS, ...ANSWERS] : FORMS).filter(([kind]) => !weighedApart || kind !== 'none');
  const hit = forms.find(([, words]) => words.test(text));
  if (asked && hit === undefined && /\bnot (?:safety|toughened|tempered|laminated)\b/.test(outline.text)) {
    return facts(outline, fact('piece.glass', { piece: { glass: 'plain' } }, outline.said));
  }
  if (hit === undefined) return nothing(outline);
  const yesOnly = asked && /^\W*(?:yes|yeah|yep|glass|its glass)\W*$/.test(text);
  return facts(outline, fact('piece.glass', { piece: { glass: hit[0] } }, outline.said, yesOnly));
}
