import Fraction from 'fraction.js';
import { DIRECTIONS, isCount } from '../words/counted.ts';
import { isNumber, isUnit, isWord, type NumberToken, saidBetween, type Token } from '../words/token.ts';
import { isMassUnit, KG_IN, type MassUnit } from '../words/unit.ts';

/** A mass as said. `unit` null: a bare figure that could be one. `to` is exclusive. */
export type MassSaid = {
  from: number;
  to: number;
  unit: MassUnit | null;
  value: Fraction;
  other?: Fraction;
  negative: boolean;
  words: boolean;
  text: string;
};

/** What a figure without a unit behind a coarser one is: "2 stone 4", "18 lb 6", "24 kg 500". */
const SMALLER: Partial<Record<MassUnit, { unit: MassUnit; under: number }>> = {
  st: { unit: 'lb', under: 14 },
  lb: { unit: 'oz', under: 16 },
  kg: { unit: 'g', under: 1000 },
};
const PARTS_OF_KG = 100;

/** Every mass of a message, compounds joined; bare figures that measure something else are left out. Linear. */
export function massesIn(all: readonly Token[]): MassSaid[] {
  const found: MassSaid[] = [];
  for (let at = 0; at < all.length; ) {
    const read = massAt(all, at);
    if (read !== null) found.push(read);
    at = read?.to ?? at + 1;
  }
  return shared(all, found);
}

function massAt(all: readonly Token[], at: number): MassSaid | null {
  const token = all[at];
  const unit = all[at + 1];
  if (isWord(token, 'a', 'an') && isUnit(unit) && isMassUnit(unit.unit) && unit.text.length > 3) {
    return compound(all, { ...said(all, at, at + 2, unit.unit, new Fraction(1)), words: true });
  }
  if (!isNumber(token) || isCount(all, at)) return null;
  if (isUnit(unit)) {
    if (!isMassUnit(unit.unit) || (unit.unit === 'st' && /^(wall|walls)$/.test(all[at + 2]?.text ?? '')))
      return null;
    return compound(all, figureOf(token, said(all, at, at + 2, unit.unit, token.value)));
  }
  const measured =
    unit?.kind === 'word' && DIRECTIONS.has(unit.text) && !/^(to|or|and|at|both|each)$/.test(unit.text);
  if (measured || unit?.text === 'x' || all[at - 1]?.text === 'x') return null;
  return figureOf(token, said(all, at, at + 1, null, token.value));
}

function said(
  all: readonly Token[],
  from: number,
  to: number,
  unit: MassUnit | null,
  value: Fraction,
): MassSaid {
  return { from, to, unit, value, negative: false, words: false, text: saidBetween(all, from, to) };
}

function figureOf(token: NumberToken, mass: MassSaid): MassSaid {
  const { negative, words, other } = token;
  return { ...mass, negative, words, ...(other === undefined ? {} : { other }) };
}

function compound(all: readonly Token[], first: MassSaid): MassSaid {
  const and = isWord(all[first.to], 'and', 'an', 'n', ',') ? 1 : 0;
  const second = all[first.to + and];
  if (!isNumber(second) || second.negative || first.unit === null) return first;
  const at = first.to + and;
  const unit = all[at + 1];
  const half = second.fraction && second.value.lt(1);
  if (half && and === 1 && !isUnit(unit)) return joined(all, first, at + 1, second.value);
  const smaller = SMALLER[first.unit];
  if (smaller === undefined || second.value.gte(smaller.under)) return first;
  const ratio = KG_IN[smaller.unit].div(KG_IN[first.unit]);
  if (isUnit(unit))
    return unit.unit === smaller.unit ? joined(all, first, at + 2, second.value.mul(ratio)) : first;
  const grams = smaller.unit !== 'g' || (second.value.gte(PARTS_OF_KG) && second.glued);
  if (and === 1 || !grams || unit?.text === 'x' || isCount(all, at) || second.fraction) return first;
  if (unit?.kind === 'word' && DIRECTIONS.has(unit.text)) return first;
  return joined(all, first, at + 1, second.value.mul(ratio));
}

function joined(all: readonly Token[], first: MassSaid, to: number, more: Fraction): MassSaid {
  const { other: _, ...kept } = first;
  return { ...kept, to, value: first.value.add(more), text: saidBetween(all, first.from, to) };
}

/** "15-18 kg", "between 15 and 18 kg": the unit said last holds for both. */
function shared(all: readonly Token[], found: readonly MassSaid[]): MassSaid[] {
  const out = [...found];
  for (let at = out.length - 2; at >= 0; at -= 1) {
    const [left, right] = [out[at], out[at + 1]];
    if (!left || !right || left.unit !== null || right.unit === null) continue;
    const joint = all.slice(left.to, right.from);
    const joins =
      joint.some((each) => each.text !== ',') &&
      joint.length <= 3 &&
      joint.every((each) => JOINTS.has(each.text));
    if (joins) out[at] = { ...left, unit: right.unit };
  }
  return out;
}

const JOINTS = new Set('- to or and / , maybe perhaps possibly ± up minus less from plus + x'.split(' '));
