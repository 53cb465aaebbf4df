import type Fraction from 'fraction.js';
import { type Millimetres, mm } from '../../core/quantity.ts';
import type { QuestionName } from '../question.ts';
import type { DisplayUnit } from '../reading.ts';
import { type Band, bandOf, within } from './band.ts';
import { mayBeInward, speaksInches } from './inward.ts';
import { type Measure, measures } from './measure.ts';
import { saidBetween, type Token } from './token.ts';
import { type LengthUnit, MM_IN } from './unit.ts';

/**
 *   lengthsIn(tokens, { unit, question? }): Found[]
 *
 * Every length of a message in order: each with the tokens it was read from (`to` exclusive), its value,
 * and the unit said (null when bare). `valueMm` is the likeliest reading. Look at `readings`: one = sure;
 * two or more = ask, naming them; none = nothing plausible for the question. `inferred`: the unit was
 * judged by plausibility, so the fact is to be confirmed. `negative`: a minus was typed; the value is positive.
 * Masses, counts ("two rings", "2x4 studs"), gauges and shares are left out.
 */
export type Found = {
  from: number;
  to: number;
  valueMm: Millimetres;
  unitSaid: LengthUnit | null;
  negative: boolean;
  text: string;
  readings: readonly LengthReading[];
  inferred: boolean;
  /** The "in" behind it was read as "inward", not as inches. */
  inward: boolean;
};

export type LengthReading = { valueMm: Millimetres; unit: LengthUnit };

export type Hearing = { unit: DisplayUnit; question?: QuestionName };

/** From this many feet up a bare figure for a wall may be feet even where metres are spoken; our choice. */
const FEET_FROM = 7;

export function lengthsIn(all: readonly Token[], hearing: Hearing): Found[] {
  const said = sharedUnits(all, measures(all), bandOf(hearing.question));
  const inches = speaksInches(all, said, hearing.unit);
  return said.map((measure) => found(all, measure, hearing, inches));
}

function found(all: readonly Token[], said: Measure, hearing: Hearing, inches: boolean | null): Found {
  const band = bandOf(hearing.question);
  const doubtful = mayBeInward(all, said, hearing.question);
  const inward = doubtful && inches === false;
  const bare = { ...said, unit: null };
  const open = doubtful && inches === null;
  const readings = open
    ? [...readingsOf(said, hearing, band), ...readingsOf(bare, hearing, band).slice(0, 1)]
    : readingsOf(inward ? bare : said, hearing, band);
  const unit = inward ? null : said.unit;
  const fallback = amount(said.value, unit ?? (hearing.unit === 'in' ? 'in' : 'mm'));
  const first = readings[0]?.valueMm ?? fallback.valueMm;
  const plain = unit ?? (hearing.unit === 'in' ? 'in' : 'mm');
  return {
    from: said.from,
    to: inward ? said.to - 1 : said.to,
    valueMm: first,
    unitSaid: unit,
    negative: said.negative,
    text: saidBetween(all, said.from, inward ? said.to - 1 : said.to),
    readings,
    inferred: readings.length === 1 && first !== amount(said.value, plain).valueMm,
    inward,
  };
}

const amount = (value: Fraction, unit: LengthUnit): LengthReading => ({
  valueMm: mm(value.mul(MM_IN[unit]).valueOf()),
  unit,
});

function readingsOf(said: Measure, hearing: Hearing, band: Band): LengthReading[] {
  const values = said.other === undefined ? [said.value] : [said.value, said.other];
  if (said.unit !== null) {
    const unit = said.unit;
    return values.map((value) => amount(value, unit)).filter((each) => within(each.valueMm, band.said));
  }
  const units = bareUnits(said, hearing.unit);
  const first = units[0] ?? 'mm';
  const plain = values.map((value) => amount(value, first)).filter((each) => within(each.valueMm, band.bare));
  if (plain.length > 0) return plain;
  const small = values.map((value) => amount(value, first)).filter((each) => within(each.valueMm, band.said));
  const others = units
    .slice(1)
    .flatMap((unit) => values.map((value) => amount(value, unit)))
    .filter((each) => within(each.valueMm, band.bare));
  return others.length === 0 ? small : [...small, ...others];
}

/** The units a bare figure may be in, the conversation's first. */
function bareUnits(said: Measure, spoken: DisplayUnit): LengthUnit[] {
  const whole = said.value.d === 1n;
  if (spoken === 'in') return said.value.lt(40) ? ['in', 'ft'] : ['in', 'mm'];
  if (said.tape && said.value.lt(200)) return ['in'];
  const feet: LengthUnit[] = whole && said.value.gte(FEET_FROM) && said.value.lt(40) ? ['ft'] : [];
  const fine: LengthUnit[] = ['cm', 'in'];
  return ['mm', ...(said.value.lt(30) ? (['m'] as const) : []), ...fine, ...feet];
}

/** "0.9 by 1.2 m", "15 to 18 in": a unit said once holds for the figures joined to it, if that is sensible. */
function sharedUnits(all: readonly Token[], said: readonly Measure[], band: Band): Measure[] {
  const shared = [...said];
  const give = (to: number, from: number) => {
    const [taker, giver] = [shared[to], shared[from]];
    if (!taker || !giver || taker.unit !== null || giver.unit === null) return;
    const joint = all.slice(Math.min(taker.to, giver.to), Math.max(taker.from, giver.from));
    if (joint.length !== 1 || !/^(x|to|-|or)$/.test(joint[0]?.text ?? '')) return;
    const unit = giver.unit;
    const values = taker.other === undefined ? [taker.value] : [taker.value, taker.other];
    if (values.some((value) => within(amount(value, unit).valueMm, band.said)))
      shared[to] = { ...taker, unit };
  };
  for (let at = shared.length - 2; at >= 0; at -= 1) give(at, at + 1);
  for (let at = 1; at < shared.length; at += 1) give(at, at - 1);
  return shared;
}
