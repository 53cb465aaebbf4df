import type Fraction from 'fraction.js';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { QuestionName } from '../../question.ts';
import type { DisplayUnit } from '../../reading.ts';
import { isPreposition, mayBeInward, speaksInches } from '../words/inward.ts';
import { type Measure, measures } from '../words/measure.ts';
import { isUnit, isWord, saidBetween, type Token } from '../words/token.ts';
import { isLengthUnit, type LengthUnit, MM_IN } from '../words/unit.ts';
import { type Band, bandOf, within } from './band.ts';

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

type LengthReading = { valueMm: Millimetres; unit: LengthUnit };

type Hearing = { unit: DisplayUnit; question?: QuestionName };

/** From this many feet up a bare figure for a wall may be feet even where metres are spoken; our choice. */
const FEET_FROM = 7;

export function lengthsIn(all: readonly Token[], hearing: Hearing): Found[] {
  const typed = measures(all).map(
    (each): Measure =>
      isPreposition(all, each, hearing.unit) ? { ...each, unit: null, to: each.to - 1 } : each,
  );
  const said = sharedUnits(all, typed, bandOf(hearing.question));
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
  const to = inward ? said.to - 1 : said.to;
  const fallback = amount(said.value, unit ?? (hearing.unit === 'in' ? 'in' : 'mm'));
  const first = readings[0]?.valueMm ?? fallback.valueMm;
  const plain = unit ?? (hearing.unit === 'in' ? 'in' : 'mm');
  return {
    from: said.from,
    to,
    valueMm: first,
    unitSaid: unit,
    negative: said.negative,
    text: saidBetween(all, said.from, to),
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
  const units = bareUnits(said, hearing);
  const first = units[0] ?? 'mm';
  const plain = values.map((value) => amount(value, first)).filter((each) => within(each.valueMm, band.bare));
  if (plain.length > 0) return plain;
  const small = values.map((value) => amount(value, first)).filter((each) => within(each.valueMm, band.said));
  const others = units
    .slice(1)
    .flatMap((unit) => values.map((value) => amount(value, unit)))
    .filter((each) => within(each.valueMm, band.bare));
  const spokenSo = hearing.unit === 'cm' && others.length > 0;
  return others.length === 0 ? small : [...(spokenSo ? [] : small), ...others];
}

/** The units a bare figure may be in, the conversation's first. */
function bareUnits(said: Measure, { unit: spoken, question }: Hearing): LengthUnit[] {
  const whole = said.value.d === 1n;
  if (spoken === 'in') {
    const decimal: LengthUnit[] = !whole && !said.tape ? ['m'] : [];
    return said.value.lt(40) ? ['in', 'ft', ...decimal, 'mm'] : ['in', 'mm'];
  }
  if (said.tape && said.value.lt(200)) return ['in'];
  if (spoken === 'cm') return ['mm', 'cm', 'm'];
  const feet: LengthUnit[] =
    whole && said.value.gte(question === 'piece.size' ? 1 : FEET_FROM) && said.value.lt(40) ? ['ft'] : [];
  const fine: LengthUnit[] = ['cm', 'in'];
  return ['mm', ...(said.value.lt(30) ? (['m'] as const) : []), ...fine, ...feet];
}

/** What may stand between two figures that share a unit; our choice. */
const JOINING = /^(x|to|-|or|nearer|maybe|perhaps|possibly|might|be|could|more|like|,|wide|high|tall|deep)$/;
const MOST_JOINING = 5;

/** "0.9 by 1.2 m", "15 to 18 in": a unit said once holds for the figures joined to it, if that is sensible. */
function sharedUnits(all: readonly Token[], said: readonly Measure[], band: Band): Measure[] {
  const declared = declaredUnit(all);
  const shared = said.map((each) => {
    const fits = declared !== null && each.unit === null;
    return fits && within(amount(each.value, declared).valueMm, band.said)
      ? { ...each, unit: declared }
      : each;
  });
  const give = (to: number, from: number) => {
    const [taker, giver] = [shared[to], shared[from]];
    if (!taker || !giver || taker.unit !== null || giver.unit === null) return;
    const joint = all.slice(Math.min(taker.to, giver.to), Math.max(taker.from, giver.from));
    const joins = joint.some((each) => /^(x|to|-|or|nearer|maybe|perhaps|possibly)$/.test(each.text));
    if (!joins || joint.length > MOST_JOINING || !joint.every((each) => JOINING.test(each.text))) return;
    const unit = giver.unit;
    const values = taker.other === undefined ? [taker.value] : [taker.value, taker.other];
    if (values.some((value) => within(amount(value, unit).valueMm, band.said)))
      shared[to] = { ...taker, unit };
  };
  for (let at = shared.length - 2; at >= 0; at -= 1) give(at, at + 1);
  for (let at = 1; at < shared.length; at += 1) give(at, at - 1);
  return shared;
}

/** "48 tall, 30 wide, inches", "in mm": a unit said for all the figures. */
function declaredUnit(all: readonly Token[]): LengthUnit | null {
  for (const [at, token] of all.entries()) {
    if (!isUnit(token) || !isLengthUnit(token.unit)) continue;
    const before = all[at - 1];
    if (before?.kind !== 'number' && !isWord(before, 'a', 'an', 'the', 'of', 'in')) return token.unit;
    if (isWord(before, 'in') && all[at - 2]?.kind !== 'number') return token.unit;
  }
  return null;
}
