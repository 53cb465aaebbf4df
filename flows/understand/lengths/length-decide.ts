import { type Millimetres, MM_PER_INCH, mm } from '../../../core/quantity.ts';
import type { Fact, Listening } from '../../reading.ts';
import { asked, fact, type Heard, lengthLabel, outside, refused } from '../words/heard.ts';
import { saidBetween, type Token } from '../words/token.ts';
import { bandOf, within } from './band.ts';
import type { Found } from './length.ts';
import { jobPart, type LengthQuestion } from './length-value.ts';

/** Nobody answers one length with more figures than this; our choice. */
const MOST_FIGURES = 6;

/** One fact of the lengths that may answer `question`, or why not: several figures, several units, nothing sensible. */
export function decide(
  question: LengthQuestion,
  all: readonly Token[],
  lengths: readonly Found[],
  listening: Listening,
): Heard {
  const rest = outside(all, lengths);
  const [first, second] = lengths;
  if (first === undefined) return null;
  if (lengths.length > MOST_FIGURES)
    return asked(question, 'Too many figures there. Which one is it?', [], rest);
  if (lengths.some((each) => each.negative)) return refused(question, 'a length is more than nothing', rest);
  const make = (value: Millimetres, inferred: boolean): Fact =>
    fact(question, jobPart(question, value, all, listening), first.text, inferred);
  if (second !== undefined && !sameLength(first, second)) {
    const grouped = spacedThousands(all, first, second, question);
    if (grouped !== null) return { kind: 'facts', facts: [make(grouped, true)], rest };
    const readings = [
      ...feetAndInches(all, first, second, question),
      ...lengths.flatMap((each) => each.readings.slice(0, 1)),
    ];
    return asked(
      question,
      `More than one figure there: ${lengths.map((each) => each.text).join(', ')}. Which is it?`,
      readings.map((each) => ({
        label: lengthLabel(each.valueMm, each.unit),
        fact: make(each.valueMm, true),
      })),
      rest,
    );
  }
  const [only] = first.readings;
  if (only === undefined) {
    return refused(
      question,
      first.valueMm <= 0 ? 'a length is more than nothing' : `${first.text} can't be right for that`,
      rest,
    );
  }
  if (isMultiplied(all, first))
    return asked(question, `${first.text}, or more than that? What is the whole length?`, [], rest);
  const vague = isVague(all, first);
  if (first.readings.length === 1)
    return { kind: 'facts', facts: [make(only.valueMm, first.inferred || vague)], rest };
  const readings = first.readings.map((each) => ({
    label: lengthLabel(each.valueMm, each.unit),
    fact: make(each.valueMm, true),
  }));
  return asked(question, `"${first.text}" in which unit?`, readings, rest);
}

/** The same length in two units, this near: "3.4 m (about 11 feet)"; our choice. */
const SAME = 0.02;

function sameLength(first: Found, second: Found): boolean {
  return (
    first.unitSaid !== second.unitSaid && Math.abs(first.valueMm - second.valueMm) <= SAME * first.valueMm
  );
}

/** "3 400": a space between thousands. */
function spacedThousands(
  all: readonly Token[],
  first: Found,
  second: Found,
  question: LengthQuestion,
): Millimetres | null {
  const [left, right] = [all[first.from], all[second.from]];
  if (
    first.to !== second.from ||
    first.unitSaid !== null ||
    left?.kind !== 'number' ||
    right?.kind !== 'number'
  )
    return null;
  if (!/^\d{1,2}$/.test(left.text) || !/^\d{3}$/.test(right.text)) return null;
  const value = mm(Number(left.text + right.text));
  return within(value, bandOf(question).bare) ? value : null;
}

const INCHES_IN_FOOT = 12;

/** "13-6": perhaps thirteen foot six. */
function feetAndInches(all: readonly Token[], first: Found, second: Found, question: LengthQuestion) {
  const [feet, inches] = [all[first.from], all[second.from]];
  if (
    !(all[first.to]?.text === '-' || first.to === second.from) ||
    feet?.kind !== 'number' ||
    inches?.kind !== 'number' ||
    inches.value.gte(INCHES_IN_FOOT)
  )
    return [];
  const value = mm(feet.value.mul(INCHES_IN_FOOT).add(inches.value).valueOf() * MM_PER_INCH);
  return within(value, bandOf(question).said) ? [{ valueMm: value, unit: 'ft' as const }] : [];
}

/** "twice 1.7 m", "2 times 1.7". */
function isMultiplied(all: readonly Token[], found: Found): boolean {
  return /^(twice|double|times|half)$/.test(all[found.from - 1]?.text ?? '');
}

const VAGUE =
  /\b(over|under|nearly|almost|shy|bit|more than|less than|at least|guess|guessing|think|reckon)\b/;

/** "just over 3 m", "3 m and a bit": taken, and confirmed before the plan. */
function isVague(all: readonly Token[], found: Found): boolean {
  const before = saidBetween(all, Math.max(0, found.from - 5), found.from);
  return VAGUE.test(before) || VAGUE.test(saidBetween(all, found.to, found.to + 5));
}
