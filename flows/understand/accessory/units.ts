import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { lengthsIn } from '../lengths/length.ts';
import { type Outline, outlineOf } from '../words/outline.ts';
import { isNumber, type NumberToken, type Token } from '../words/token.ts';
import { isLengthUnit, type LengthUnit, MM_IN } from '../words/unit.ts';

/** What each figure of a message comes to, in one unit for the bare ones; null is no length of a wall. */
export type Lengths = (n: number) => Millimetres | null;

/** A bare figure under this is no millimetres of a fitting, and over the next no inches; our choice. */
const LEAST_BARE_MM = 100;
const MOST_BARE_IN = 100;
const LEAST_BARE_METRES = 20;

export type Read = {
  /** Units the bare figures may be in; one when that is plain. */
  units: readonly LengthUnit[];
  in: (unit: LengthUnit) => Lengths;
  /** A bare whole number that can only count things. */
  small: (n: number) => number | null;
};

const NAMED =
  /^(?:sockets?|switch(?:es)?|outlets?|points?|lights?|plates?|plugs?|windows?|doors?|wires?|pieces?)$/;
/** More of one fitting than this are not counted: "300 socket" ends with its height. Our choice. */
const MOST_COUNTED = 9;

/** "600,300" is two figures, and "600 along 300 socket" is no three hundred sockets. */
export function withFiguresApart(outline: Outline): Outline {
  const { tokens } = outline;
  let isApart = false;
  const apart = tokens.flatMap((token, at): Token[] => {
    const next = tokens[at + 1];
    if (!isNumber(token) || next?.kind === 'unit') return [token];
    if (token.pair !== undefined) {
      isApart = true;
      return pairApart(token, token.pair);
    }
    if (next?.kind !== 'word' || !NAMED.test(next.text) || token.value.lte(MOST_COUNTED)) return [token];
    isApart = true;
    return [token, { kind: 'word', text: 'a', glued: false }];
  });
  return isApart ? outlineOf(apart, outline) : outline;
}

function pairApart(token: NumberToken, [first, second]: NonNullable<NumberToken['pair']>): Token[] {
  const { other: _, pair: __, ...rest } = token;
  return [
    { ...rest, value: first, text: first.toString() },
    { kind: 'mark', text: ',', glued: false },
    { ...rest, value: second, text: second.toString(), glued: false },
  ];
}

/** Reads the figures. Bare ones are one unit throughout: the one said beside them, else as large as they are. */
export function figuresIn(outline: Outline, listening: Listening): Read {
  const found = lengthsIn(outline.tokens, { unit: outline.unit, question: 'wall.accessories' });
  const bare = found.flatMap((each) => {
    const token = outline.tokens[each.from];
    const isBare = each.unitSaid === null && isNumber(token) && !(token.fraction && !token.words);
    return isBare ? [token.value.valueOf()] : [];
  });
  const value =
    (unit: LengthUnit): Lengths =>
    (n) => {
      const each = found[n];
      const token = each && outline.tokens[each.from];
      if (each === undefined || each.negative) return null;
      if (each.unitSaid !== null || !isNumber(token) || (token.fraction && !token.words))
        return each.readings.length === 0 ? null : each.valueMm;
      const isDecimal = token.value.d !== 1n && token.value.valueOf() < LEAST_BARE_METRES && unit !== 'in';
      return mm(token.value.mul(MM_IN[isDecimal ? 'm' : unit]).valueOf());
    };
  const small = (n: number): number | null => {
    const token = found[n] && outline.tokens[found[n].from];
    if (found[n]?.unitSaid !== null || !isNumber(token) || token.value.d !== 1n) return null;
    const count = token.value.valueOf();
    return count >= 1 && count <= 9 ? count : null;
  };
  return { units: unitsOf(bare, saidIn(outline), listening.unit), in: value, small };
}

function saidIn({ tokens }: Outline): ReadonlySet<LengthUnit> {
  return new Set(
    tokens.flatMap((token, at) =>
      token.kind === 'unit' && isLengthUnit(token.unit) && (token.text !== 'in' || isNumber(tokens[at - 1]))
        ? [token.unit]
        : [],
    ),
  );
}

function unitsOf(
  bare: readonly number[],
  said: ReadonlySet<LengthUnit>,
  spoken: Listening['unit'],
): LengthUnit[] {
  const whole = bare.filter((value) => value > 9 && Number.isInteger(value));
  const least = Math.min(...whole);
  const most = Math.max(...whole);
  if (whole.length === 0) return [spoken === 'in' ? 'in' : 'mm'];
  const metric = said.has('mm') || said.has('cm') || said.has('m');
  if ((said.has('in') || said.has('ft')) && !metric && most < MOST_BARE_IN) return ['in'];
  if (spoken === 'in' && !metric)
    return most < MOST_BARE_IN ? ['in'] : least >= LEAST_BARE_MM ? ['mm'] : ['in', 'cm', 'mm'];
  if (said.has('mm') && !said.has('cm')) return ['mm'];
  if (said.has('cm') && most < 10 * LEAST_BARE_MM && least < LEAST_BARE_MM) return ['cm'];
  if (most >= 3 * LEAST_BARE_MM && (least >= LEAST_BARE_MM / 2 || spoken === 'mm'))
    return spoken === 'cm' && most < 400 ? ['cm', 'mm'] : ['mm'];
  if (least >= LEAST_BARE_MM) return spoken === 'cm' ? ['cm', 'mm'] : ['mm'];
  if (spoken === 'cm') return ['cm'];
  return metric ? ['cm', 'mm'] : ['cm', 'in', 'mm'];
}
