import Fraction from 'fraction.js';
import { isNumber, isWord, saidBetween, type Token } from '../words/token.ts';
import type { MassSaid } from './mass.ts';

type Weighed = MassSaid & { kg: Fraction };

/** What several figures, and the words around one, come to. `worked` when it was not simply said. */
type MassSense =
  | { kind: 'mass'; kg: Fraction; from: readonly Weighed[]; worked: boolean }
  | { kind: 'ask'; text: string; readings: Fraction[] };

const MORE_THAN =
  /\b(over|above|more than|north of|upwards? of|at least|min|minimum|exceeds?|heavier than|bit more|plus a bit|and a bit|>)( \w+)? *$|> *$/;
const MORE_AFTER =
  /^ *(\+|plus(?! \d)|and a bit|and change|something|odd|or more|and up|upwards|at least|min\b|minimum)/;
const SCALES = /\b(me|my ?self|without|holding|on my own|i weigh|im|minus|less|bathroom scales?)\b/;
const SUM = /\b(plus|added|add|another|extra)\b|\+|\b\d+ \w+ and\b/;
const TOTAL =
  /\b(total|altogether|all up|all in|all told|in all|overall|combined|together|so|makes|making)\b|=/;
const EACH = /\b(each|apiece|per piece|one of them)\b/;
const PAIR =
  /\b(pair|both(?! (?:sides|edges|ends|ways|down|in)\b)|the two|two of them|the lot|all of them|set)\b/;
/** How near a mass the words must stand that make it one of several; our choice. */
const NEAR = 8;
const TOLERANCE = /±|\b(plus or minus|give or take|plus minus|tolerance)\b/;
const RANGE =
  /^ *(-|to|or|and|\/|,)?( *(maybe|perhaps|possibly|probably|up to|even|to|but|it|its|might be|could be|may be|nearer|closer to|more like|or|and|,))* *$/;
/** What to add to an estimate (trade knowledge, our choice): ten per cent. */
const MARGIN = new Fraction(11, 10);
/** Two figures this close are one mass in two units; our choice. */
const SAME = 0.03;

/** Makes one mass of what was said: heavier end of a range, sum, total, difference on a scale. */
export function howMuch(all: readonly Token[], masses: readonly Weighed[]): MassSense {
  const [first, second, third] = masses;
  const last = masses.at(-1);
  if (first === undefined || last === undefined) throw new Error('howMuch is given at least one mass');
  const text = saidBetween(all, 0, all.length);
  if (second === undefined) return oneFigure(all, first, text);
  const between = saidBetween(all, first.to, second.from);
  const heaviest = masses.reduce((most, each) => (each.kg.gt(most.kg) ? each : most));
  if (third === undefined && TOLERANCE.test(between)) return said(first.kg.add(second.kg), masses, true);
  if (third === undefined && sameInTwoUnits(first, second)) return said(first.kg, [first], false);
  const beforeLast = saidBetween(all, masses.at(-2)?.to ?? 0, last.from);
  if (third === undefined && SCALES.test(text)) return said(first.kg.sub(second.kg).abs(), masses, true);
  const parts = masses.slice(0, -1).reduce((total, each) => total.add(each.kg), last.kg.sub(last.kg));
  const after = saidBetween(all, last.to, last.to + 3);
  if ((TOTAL.test(beforeLast) || TOTAL.test(after)) && (third !== undefined || last.kg.gt(first.kg))) {
    if (third === undefined || parts.equals(last.kg)) return said(last.kg, [last], false);
    return ask(
      `The parts come to ${parts.valueOf()} kg and the total said is ${last.kg.valueOf()} kg. Which is it?`,
      [parts, last.kg],
    );
  }
  if (SUM.test(between)) return said(parts.add(last.kg), masses, true);
  if (third === undefined && between !== '' && RANGE.test(between))
    return said(heaviest.kg, [heaviest], true);
  return ask(
    'More than one mass there. Which is the whole piece?',
    masses.map((each) => each.kg),
  );
}

const said = (value: Fraction, from: readonly Weighed[], worked: boolean): MassSense => ({
  kind: 'mass',
  kg: value,
  from,
  worked,
});

const ask = (text: string, readings: Fraction[]): MassSense => ({ kind: 'ask', text, readings });

function oneFigure(all: readonly Token[], mass: Weighed, text: string): MassSense {
  const before = saidBetween(all, Math.max(0, mass.from - 4), mass.from);
  const after = saidBetween(all, mass.to, mass.to + 3);
  const share = percentMore(all, mass);
  if (share !== null) return said(mass.kg.mul(share), [mass], true);
  if (
    /^,? ?(without|excluding|excl|minus|less|not including|not counting|before)\b/.test(after.trimStart())
  ) {
    return ask(`${mass.text} ${after.trim()}: how heavy is it all together?`, []);
  }
  const no = /\b(no|not|never|isnt) *$/.test(before.replace(MORE_THAN, ''));
  if ((MORE_THAN.test(before) && !no) || MORE_AFTER.test(after)) {
    return ask(`Over ${mass.text}: what is the most it can weigh?`, [mass.kg, mass.kg.mul(MARGIN)]);
  }
  const near = saidBetween(all, Math.max(0, mass.from - NEAR), mass.to + NEAR);
  if (PAIR.test(near) && !EACH.test(text))
    return ask('Is that for one piece, or for all of them?', [mass.kg, mass.kg.div(2)]);
  if (all[mass.from - 1]?.text === 'x' || all[mass.to]?.text === 'x')
    return ask('Is that each, or all together?', [mass.kg]);
  const times = all[mass.from - 1];
  const sizes = isWord(all[mass.from - 2], 'x', 'by');
  if (!sizes && isNumber(times) && mass.unit !== null && times.value.d === 1n && times.value.gt(1))
    return ask('Is that each, or all together?', [mass.kg.mul(times.value), mass.kg]);
  return said(mass.kg, [mass], false);
}

/** "+/- 10 %", "plus 10%": the heavier end, as a factor. */
function percentMore(all: readonly Token[], mass: Weighed): Fraction | null {
  const at = all.findIndex(
    (each, index) => index > mass.to && isNumber(each) && isWord(all[index + 1], '%', 'percent'),
  );
  const share = all[at];
  const more = isWord(all[at - 1], '±', '+', 'plus') && at - mass.to <= REACH;
  return at > 0 && more && isNumber(share) ? share.value.div(100).add(1) : null;
}

/** How far behind a mass its tolerance may stand; our choice. */
const REACH = 4;

function sameInTwoUnits(first: Weighed, second: Weighed): boolean {
  if (first.unit === second.unit || first.unit === null || second.unit === null || first.kg.equals(0))
    return false;
  return second.kg.sub(first.kg).abs().div(first.kg).lt(SAME);
}
