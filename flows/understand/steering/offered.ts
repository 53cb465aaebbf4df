import type { AskBack, Fact } from '../../reading.ts';
import { isNo, isYes } from './yes-no.ts';

const ORDER: RegExp[] = [
  /^(?:the |its |it is |number |no |option |choice )*(?:1|1st|first|one|a|former)(?: (?:one|option|of them|please))*$/,
  /^(?:the |its |it is |number |no |option |choice )*(?:2|2nd|second|two|b|latter)(?: (?:one|option|of them|please))*$/,
  /^(?:the |its |it is |number |no |option |choice )*(?:3|3rd|third|three|c)(?: (?:one|option|of them|please))*$/,
  /^(?:the |its |it is |number |no |option |choice )*(?:4|4th|fourth|four|d)(?: (?:one|option|of them|please))*$/,
  /^(?:the |its |it is |number |no |option |choice )*(?:5|5th|fifth|five|e)(?: (?:one|option|of them|please))*$/,
];
const LAST = /^(?:the )?last(?: one)?$/;

/** What a unit is called, for readings that differ in their unit. */
const UNITS: [RegExp, RegExp][] = [
  [/^(?:in |its )*(?:inch|inches|ins?|imperial)(?: please| of course)*$/, /\bin\b|"|inch/],
  [/^(?:in |its )*(?:centimetres?|centimeters?|cms?|centi)(?: please| of course)*$/, /\bcm\b/],
  [
    /^(?:in |its )*(?:millimetres?|millimeters?|mms?|mil|mills?|metric)(?: please| of course)*$/,
    /(?:^|[^(\d.])\s*[\d.]+ mm\b|\bmm\b/,
  ],
  [/^(?:in |its )*(?:metres?|meters?|m)(?: please| of course)*$/, /\bm\b/],
  [/^(?:in |its )*(?:feet|foot|ft)(?: please| of course)*$/, /\bft\b/],
  [/^(?:in |its )*(?:kilograms?|kilos?|kgs?)(?: please| of course)*$/, /\bkg\b/],
  [/^(?:in |its )*(?:pounds?|lbs?)(?: please| of course)*$/, /\blb\b/],
];

const FILLER = new Set(
  'the a an its it is i think on of with and to at please yes yeah yep one im that not sure mate just in only stuck'.split(
    ' ',
  ),
);

type Picked = { fact: Fact } | { narrowed: AskBack } | null;

/** Which of the readings last offered a message picks: by order, by unit, by its words, by yes to the only one. */
export function pickOffered(text: string, offered: AskBack): Picked {
  const plain = text
    .replace(/[^\p{L}\p{N}" ]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const { readings } = offered;
  const at = LAST.test(plain) ? readings.length - 1 : ORDER.findIndex((form) => form.test(plain));
  const byOrder = at >= 0 ? readings[at]?.fact : undefined;
  if (byOrder !== undefined) return { fact: byOrder };
  const facts = readings.flatMap((reading) => (reading.fact ? [reading.fact] : []));
  if (facts.length === 1 && facts[0] !== undefined && isYes(text) && !isNo(text)) return { fact: facts[0] };
  const unit = UNITS.find(([said]) => said.test(plain));
  const matching =
    unit === undefined
      ? byWords(plain, offered)
      : readings.filter(({ label }) => unit[1].test(label.replace(/\(.*?\)/g, ' ')));
  const [only, other] = matching;
  if (only?.fact !== undefined && other === undefined) return { fact: { ...only.fact, said: text } };
  if (matching.length > 1 && matching.length < readings.length) {
    return {
      narrowed: {
        ...offered,
        text: `Which: ${matching.map(({ label }) => label).join(', or ')}?`,
        readings: matching,
      },
    };
  }
  return null;
}

/** The readings whose label holds every word that was said; figures make it an answer of its own. */
function byWords(plain: string, { readings }: AskBack): AskBack['readings'] {
  const said = plain.split(' ').filter((word) => word !== '' && !FILLER.has(word));
  if (said.length === 0 || said.length > 6) return [];
  const labels = readings.map((reading) => ({
    reading,
    words: new Set(reading.label.toLowerCase().split(/[^\p{L}\p{N}"]+/u)),
  }));
  return labels
    .filter(({ words }) =>
      said.every((word) => words.has(word) || words.has(`${word}s`) || words.has(word.replace(/s$/, ''))),
    )
    .map(({ reading }) => reading);
}
