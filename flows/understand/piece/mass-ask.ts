import type Fraction from 'fraction.js';
import { type Kilograms, kg } from '../../../core/quantity.ts';
import type { Fact } from '../../reading.ts';
import { asked, fact, type Heard, refused } from '../words/heard.ts';
import { saidBetween, type Token } from '../words/token.ts';
import { KG_IN, type MassUnit } from '../words/unit.ts';
import type { MassSaid } from './mass.ts';
import { decadeOf } from './mass-decade.ts';

const QUESTION = 'piece.massKg';

/** Below this nothing that needs this program is hung; our choice. */
export const LEAST_KG: Kilograms = kg(0.1);
/** Above this no piece is, even of stone; our choice. */
export const MOST_KG: Kilograms = kg(600);

export function decade(all: readonly Token[], rest: Token[]): Heard {
  const tens = decadeOf(all);
  if (tens === null) return null;
  const unused = rest.filter((each) => !/^([1-9]0s|twenties|thirties|forties|fifties)$/.test(each.text));
  const text = saidBetween(all, 0, all.length);
  return asked(
    QUESTION,
    'What is the most it can weigh?',
    tens.map((each) => reading(each, text)),
    unused,
  );
}

/** "1,250 kg": one and a quarter, or a slip. */
export function twoReadings(mass: MassSaid, spoken: MassUnit, rest: Token[]): Heard {
  if (mass.other === undefined || mass.value.d !== 1n) return null;
  const both = [mass.value, mass.other]
    .map((value) => value.mul(KG_IN[mass.unit ?? spoken]))
    .filter((each) => each.gte(LEAST_KG) && each.lte(MOST_KG));
  if (both.length === 0) return refused(QUESTION, `${mass.text} is no mass for a piece on a wall`, rest);
  const text = `Is the comma in "${mass.text}" a decimal comma?`;
  return asked(
    QUESTION,
    text,
    both.map((each) => reading(each, mass.text)),
    rest,
  );
}

export function askUnit(value: Fraction, said: string, rest: Token[]): Heard {
  const figure = value.valueOf();
  const text = `${round(figure)} kg is a lot for one piece. Kilograms, or pounds?`;
  const pounds = value.mul(KG_IN.lb);
  return asked(
    QUESTION,
    text,
    [
      { label: `${round(figure)} kg`, fact: massFact(value, said, true) },
      { label: `${round(figure)} lb`, fact: massFact(pounds, said, true) },
    ],
    rest,
  );
}

export function reading(value: Fraction, said: string) {
  return { label: `${round(value.valueOf())} kg`, fact: massFact(value, said, true) };
}

export function massFact(value: Fraction, said: string, worked: boolean): Fact {
  return fact(QUESTION, { piece: { massKg: kg(value.valueOf()) } }, said, worked);
}

export const round = (value: number) => Math.round(value * 100) / 100;
