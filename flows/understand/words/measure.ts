import Fraction from 'fraction.js';
import { isCount } from './counted.ts';
import { isNumber, isUnit, isWord, type NumberToken, type Token } from './token.ts';
import { isLengthUnit, type LengthUnit, MM_IN } from './unit.ts';

/** A length as it was said, before plausibility: `value` in `unit`, or bare. `to` is exclusive. */
export type Measure = {
  from: number;
  to: number;
  unit: LengthUnit | null;
  value: Fraction;
  /** The other reading of the figure, in the same unit. */
  other?: Fraction;
  negative: boolean;
  /** A tape fraction in figures: "10 1/2". */
  tape: boolean;
  /** Feet and inches, metres and centimetres: no doubt about the unit. */
  compound: boolean;
};

const INCHES_IN_FOOT = 12;
/** Eighths and finer are said of inches only. */
const EIGHTHS = 8n;

/** Every length of a message, compounds joined ("12' 3 1/2\"", "3m05", "a metre twenty"). Linear. */
export function measures(all: readonly Token[]): Measure[] {
  const found: Measure[] = [];
  for (let at = 0; at < all.length; ) {
    const read = measureAt(all, at);
    if (read !== null) found.push(read);
    at = read?.to ?? at + 1;
  }
  return found;
}

function measureAt(all: readonly Token[], at: number): Measure | null {
  const token = all[at];
  if (isWord(token, 'a', 'an')) {
    const unit = all[at + 1];
    if (!isUnit(unit) || !isLengthUnit(unit.unit) || unit.text.length < 3) return null;
    return compound(all, base(at, at + 2, unit.unit, new Fraction(1), false));
  }
  const lone = loneUnit(all, at);
  if (lone !== null) return lone;
  if (!isNumber(token) || isCount(all, at)) return null;
  const unit = all[at + 1];
  const tape = token.fraction && (!token.words || token.value.d >= EIGHTHS);
  if (!isUnit(unit)) return { ...base(at, at + 1, null, token.value, token.negative), ...other(token), tape };
  if (!isLengthUnit(unit.unit)) return null;
  return compound(all, {
    ...base(at, at + 2, unit.unit, token.value, token.negative),
    ...other(token),
    tape,
  });
}

/** "inch and a half", "metre twenty": one of the unit, the "a" left out. */
function loneUnit(all: readonly Token[], at: number): Measure | null {
  const unit = LONE.get(all[at]?.text ?? '');
  if (unit === undefined || isNumber(all[at - 1])) return null;
  const read = compound(all, base(at, at + 1, unit, new Fraction(1), false));
  const square = isWord(all[at + 1], 'x', 'by', 'square') || isWord(all[at - 1], 'x', 'by');
  return read.compound || square ? read : null;
}

const LONE = new Map<string, LengthUnit>(
  Object.entries({ metre: 'm', meter: 'm', inch: 'in', foot: 'ft', yard: 'yd' }),
);

const base = (
  from: number,
  to: number,
  unit: LengthUnit | null,
  value: Fraction,
  negative: boolean,
): Measure => ({
  from,
  to,
  unit,
  value,
  negative,
  tape: false,
  compound: false,
});

const other = (token: NumberToken) => (token.other === undefined ? {} : { other: token.other });

function compound(all: readonly Token[], first: Measure): Measure {
  const joined = withHalf(all, first) ?? withSmaller(all, first);
  return joined ?? first;
}

/** "a metre and a half": half of the unit just said. */
function withHalf(all: readonly Token[], first: Measure): Measure | null {
  const part = all[first.to + 1];
  if (!isWord(all[first.to], 'and', 'an', 'n') || !isNumber(part) || !part.fraction) return null;
  if (part.value.gte(1) || isUnit(all[first.to + 2]) || isWord(all[first.to + 2], 'of', 'way')) return null;
  return { ...first, to: first.to + 2, value: first.value.add(part.value), compound: true };
}

function withSmaller(all: readonly Token[], first: Measure): Measure | null {
  if (first.unit === null || first.value.d !== 1n) return null;
  const joint = all[first.to];
  const joins = isWord(joint, 'and', '-', ',') ? 1 : 0;
  const second = all[first.to + joins];
  if (!isNumber(second) || second.negative || isCount(all, first.to + joins)) return null;
  const at = first.to + joins;
  const unit = all[at + 1];
  if (first.unit === 'ft') return inchesAfter(first, second, at, unit, joins === 1 && joint?.text !== '-');
  if (first.unit !== 'm' && first.unit !== 'cm') return null;
  if (isUnit(unit)) {
    const finer = unit.unit === 'mm' || (unit.unit === 'cm' && first.unit === 'm');
    if (!finer || joint?.text === ',' || !isLengthUnit(unit.unit)) return null;
    return plus(first, at + 2, second.value.mul(MM_IN[unit.unit]));
  }
  if (joins === 1 || first.unit === 'cm' || second.value.d !== 1n) return null;
  // "4 m 900 x 1200" is a wall and a size; "2m10 x 90" and "two metre ten by 900" are a size.
  if (unit?.text === 'x' && !second.glued && second.value.gte(100)) return null;
  return metresAnd(first, second, at + 1);
}

/** "10 foot 6", "11'2\"": under twelve, and with a comma or "and" only when the inch is said. */
function inchesAfter(
  first: Measure,
  second: NumberToken,
  at: number,
  unit: Token | undefined,
  needsUnit: boolean,
): Measure | null {
  const said = isUnit(unit) && unit.unit === 'in';
  const decimal = second.value.d !== 1n && !second.fraction;
  if (second.value.gte(INCHES_IN_FOOT) || (!said && (needsUnit || decimal || isUnit(unit)))) return null;
  if (!said && unit?.text === 'x' && second.glued === false)
    return plus(first, at + 1, second.value.mul(MM_IN.in));
  return plus(first, said ? at + 2 : at + 1, second.value.mul(MM_IN.in));
}

/** "2m70" and "3 metres 40" are centimetres, "3m400" millimetres; "2m5" may be 2.5 or 2.05. */
function metresAnd(first: Measure, second: NumberToken, to: number): Measure | null {
  const digits = second.words ? `${second.value.valueOf()}` : second.text;
  if (digits.length === 1 && !second.value.equals(0)) {
    const tenth = plus(first, to, second.value.mul(100));
    return { ...tenth, other: plus(first, to, second.value.mul(10)).value };
  }
  if (digits.length === 2) return plus(first, to, second.value.mul(10));
  return digits.length === 3 ? plus(first, to, second.value) : null;
}

function plus(first: Measure, to: number, more: Fraction): Measure {
  const { other: _, ...kept } = first;
  const unit = first.unit ?? 'mm';
  return { ...kept, to, value: first.value.add(more.div(MM_IN[unit])), compound: true };
}
