import type Fraction from 'fraction.js';
import { type Kilograms, kg } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { corrected } from '../words/correction.ts';
import { asked, type Heard, outside, refused, type Span } from '../words/heard.ts';
import { measures } from '../words/measure.ts';
import { isNumber, saidBetween, type Token } from '../words/token.ts';
import { KG_IN, type MassUnit } from '../words/unit.ts';
import { type MassSaid, massesIn } from './mass.ts';
import { correctsMass } from './mass-again.ts';
import { askUnit, decade, LEAST_KG, MOST_KG, massFact, reading, round, twoReadings } from './mass-ask.ts';
import { howMuch } from './mass-sense.ts';

/** Above this a figure without a unit is asked about: pounds, or a slip; our choice. */
const MOST_BARE_KG: Kilograms = kg(150);

/** Nobody says more masses than this of one piece; our choice. */
const MOST_FIGURES = 6;

/** Words that say that a bare figure is a mass. */
const WEIGHS = /^(weigh|weighs|weighed|weighing|weight|wieght|weigth|weights|mass|heavy|kilos|kg|m)$/;

/**
 * Reads how heavy the piece is: kilograms, pounds, stone, ranges (the heavier end), sums, scale differences.
 * Bare figures count only when the mass was asked for, or beside a word for weight.
 */
export function readMass(said: readonly Token[], listening: Listening): Heard {
  const all = corrected(said);
  const open = listening.awaiting === 'piece.massKg';
  const spoken: MassUnit = listening.unit === 'in' ? 'lb' : 'kg';
  const every = massesIn(all);
  const withUnit = every.filter((each) => each.unit !== null);
  const again = correctsMass(said, all, listening);
  const bare = every.filter((each) => each.unit === null && (open || isWeighed(all, each) || again));
  const near =
    withUnit.length === 0
      ? bare
      : every.filter(
          (each) =>
            each.unit !== null ||
            (open && isSmall(each)) ||
            (isSmall(each) && joinsOthers(all, each, withUnit, open)),
        );
  const masses = near.map((each) => ({ ...each, kg: inKg(each, unitBeside(withUnit) ?? spoken) }));
  const rest = outside(all, masses);
  if (masses.length === 0) return open ? (decade(all, rest) ?? wrongKind(all, rest)) : null;
  if (masses.some((each) => each.negative)) return refused(QUESTION, 'a mass is more than nothing', rest);
  if (masses.length > MOST_FIGURES)
    return asked(QUESTION, 'Too many figures there. How heavy is the whole piece?', [], rest);
  const sense = howMuch(all, masses);
  const text = saidIn(all, masses);
  if (sense.kind === 'ask') {
    return asked(
      QUESTION,
      sense.text,
      sense.readings.map((each) => reading(each, text)),
      rest,
    );
  }
  const from = masses.find((each) => sense.from.includes(each)) ?? masses[0];
  const doubled = from === undefined ? null : twoReadings(from, spoken, rest);
  if (doubled !== null && masses.length === 1) return doubled;
  const read = sense.kg.valueOf();
  if (read <= 0) return refused(QUESTION, 'a mass is more than nothing', rest);
  const unsaid = sense.from.every((each) => each.unit === null);
  if (unsaid && read > MOST_BARE_KG && read <= MOST_KG) return askUnit(sense.kg, text, rest);
  if (read < LEAST_KG || read > MOST_KG) {
    return refused(QUESTION, `${round(read)} kg is no mass for a piece on a wall`, rest);
  }
  const worked = sense.worked || sense.from.some((each) => each.words) || (unsaid && spoken === 'lb');
  return { kind: 'facts', facts: [massFact(sense.kg, text, worked)], rest };
}

const QUESTION = 'piece.massKg';

function inKg(mass: MassSaid, spoken: MassUnit): Fraction {
  return mass.value.mul(KG_IN[mass.unit ?? spoken]);
}

/** The unit said in the message, where only one was. */
function unitBeside(withUnit: readonly MassSaid[]): MassUnit | null {
  const units = new Set(withUnit.map((each) => each.unit));
  const [only = null] = units;
  return units.size === 1 ? only : null;
}

function isSmall(bare: MassSaid): boolean {
  return bare.value.lte(MOST_KG);
}

function isWeighed(all: readonly Token[], mass: MassSaid): boolean {
  const before = all.slice(Math.max(0, mass.from - 4), mass.from);
  if (before.some(isNumber)) return false;
  return (
    before.some((each) => each.kind !== 'mark' && WEIGHS.test(each.text)) || all[mass.to]?.text === 'heavy'
  );
}

/** A bare figure counts beside a mass with a unit when only joining words stand between. */
function joinsOthers(
  all: readonly Token[],
  bare: MassSaid,
  withUnit: readonly MassSaid[],
  open: boolean,
): boolean {
  if (/^(all|total|altogether|in|combined|overall)$/.test(all[bare.to]?.text ?? '')) return true;
  return withUnit.some((each) => {
    const [left, right] = each.from < bare.from ? [each, bare] : [bare, each];
    const between = all.slice(left.to, right.from);
    const firm = between.some((token) => /^(-|to|or|±|plus|minus|give|less|=)$/.test(token.text));
    if (!open && !firm && !all.some((token) => token.text === 'between')) return false;
    return (
      between.length <= 5 &&
      between.every((token) =>
        /^(-|to|or|and|so|±|give|take|plus|minus|nearer|more|like|might|be|maybe|holding|with|me|it|,|total|=|makes|less|without)$/.test(
          token.text,
        ),
      )
    );
  });
}

function wrongKind(all: readonly Token[], rest: Token[]): Heard {
  const length = measures(all).some((each) => each.unit !== null);
  if (length) return refused(QUESTION, 'that is a length, and the mass is wanted', rest);
  const vague = all.some((each) => /^(heavy|light|heavyish|lightweight|ton|tons)$/.test(each.text));
  return vague ? refused(QUESTION, 'a figure is needed', rest) : null;
}

function saidIn(all: readonly Token[], spans: readonly Span[]): string {
  return saidBetween(all, spans[0]?.from ?? 0, spans.at(-1)?.to ?? all.length);
}
