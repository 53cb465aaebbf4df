import type { Refusal } from '../../reading.ts';
import { type Outline, without } from '../words/outline.ts';

const THINGS =
  '(?:bags?|sacks?|boxes|box|crates?|slabs?|bottles?|tins?|cans?|cases?|buckets?|bricks?|blocks?|pavers?|tyres?|dumbbells?|suitcases?|kids?|babies|dogs?|cats?|people|lads?)';
const LIKE =
  '(?:(?:weighs?|is|its|feels?|about|around|roughly|maybe|probably|just|nearly) )*(?:as (?:much|heavy) as|like|(?:the )?same(?: weight)? as|equal to|similar to|equivalent (?:to|of))';
const NUMBER = '(?:an?|one|two|three|four|five|six|\\d{1,2}|half an?|a couple of|a few|several)';
const COMPARED = new RegExp(`\\b${LIKE} [^,;.]*`);
const THINGS_ALONE = new RegExp(
  `^\\W*(?:(?:about|around|roughly|maybe|its|it|is|weighs?|say|probably|like|or so|more than|less than) )*${NUMBER} (?:\\w+ )?${THINGS}(?: of \\w+)?(?: or so| i think| maybe| i reckon)?\\W*$`,
);
/** "More like 30": a figure, and nothing it counts. */
const BARE_FIGURE =
  /\b(?:like|as|to|of) (?:\d[\d.,]*|(?:[a-z]+ty|[a-z]+teen|ten|eleven|twelve)(?:[ -][a-z]+)?)(?: (?:or so|ish|maybe|i think|i reckon|odd))*\W*$/;
const WITH_A_FIGURE = /\d\s*(?:kgs?|kilos?|lbs?|pounds?|stone|st)\b/;

/**
 * "As much as two bags of cement", "about three bricks": a likeness is no figure, and what it is likened to is
 * nothing of the job's. The message without it, and the refusal; null when nothing is likened.
 */
export function likened(outline: Outline, asked: boolean): { rest: Outline; refusal: Refusal } | null {
  const weighs = asked || /\bweigh|\bheavy\b|\bweight\b/.test(outline.words);
  const match = weighs
    ? (COMPARED.exec(outline.words) ?? (asked ? THINGS_ALONE.exec(outline.words) : null))
    : null;
  if (match === null || WITH_A_FIGURE.test(match[0]) || BARE_FIGURE.test(match[0])) return null;
  const there = COMPARED.exec(outline.text) ?? (asked ? THINGS_ALONE.exec(outline.text) : null);
  const words = outline.words.replace(match[0], ' , ');
  const rest = there === null ? outline : without(outline, there);
  return {
    rest: { ...rest, words },
    refusal: {
      question: 'piece.massKg',
      because: 'That likeness gives me no figure, and they differ; I need the weight in kg or pounds',
      example: '24 kg',
    },
  };
}
