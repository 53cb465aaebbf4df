import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Fact, Listening } from '../../reading.ts';
import { dimensionOf, isHeightFirst } from '../lengths/dimension.ts';
import { type Found, lengthsIn } from '../lengths/length.ts';
import { subjectBefore } from '../lengths/subject.ts';
import { corrected } from '../words/correction.ts';
import { asked, fact, type Heard, lengthLabel, outside, refused } from '../words/heard.ts';
import { isWord, saidBetween, type Token } from '../words/token.ts';
import { massesIn } from './mass.ts';
import { correctsMass } from './mass-again.ts';
import { common, turned } from './size-laid.ts';
import { isOfPiece, isRound, named, pairAt, type Side } from './size-side.ts';

const QUESTION = 'piece.size';

/** "Middle at 1500" says where the piece goes and nothing of how big it is. */
const isOfPlace = (all: readonly Token[], from: number): boolean =>
  isWord(all[from - 1], 'at') && isWord(all[from - 2], 'middle', 'centre', 'center', 'top', 'bottom', 'mid');

/**
 * Reads the size over the frame: "900 x 1200" is width by height, "1200 high 900 wide" by its words, a round
 * one both ways. One side alone is a partial fact. Unless the size was asked for, only figures joined by
 * "x" or named by a word, and not the wall's, count.
 */
export function readSize(said: readonly Token[], listening: Listening): Heard {
  const all = corrected(said);
  const open = listening.awaiting === QUESTION;
  if (open && correctsMass(said, all, listening)) return null;
  const lengths = oneSystem(all, listening);
  const sides = lengths.map((each) => ({ ...each, dimension: dimensionOf(all, each) }));
  const mine = sides.filter((each) => isOfPiece(all, each, listening, open) && !isOfPlace(all, each.from));
  const joined = pairAt(all, mine);
  const lone =
    mine.length === 1 &&
    mine[0] !== undefined &&
    isRound(all, mine[0]) &&
    subjectBefore(all, mine[0]) === 'piece';
  const chosen = joined ?? named(mine, open) ?? (open ? mine.slice(0, 2) : lone ? mine : []);
  const rest = outside(all, chosen);
  const [first, second] = chosen;
  if (first === undefined) {
    const mass = massesIn(all).some((each) => each.unit !== null);
    return open && mass && listening.awaiting === QUESTION && onlyMass(all)
      ? refused(QUESTION, 'that is a mass, and the size is wanted', rest)
      : null;
  }
  if (chosen.some((each) => each.negative || each.valueMm <= 0)) {
    return refused(QUESTION, 'a size is more than nothing', rest);
  }
  const text = saidBetween(all, first.from, chosen.at(-1)?.to ?? first.to);
  const [before, behind] = [all[first.from - 1], all[first.to]];
  if (second === undefined && (isWord(before, 'x', 'by') || isWord(behind, 'x', 'by'))) {
    return open
      ? asked(QUESTION, 'One of the two figures was not clear. Width, then height?', [], rest)
      : null;
  }
  if (second === undefined) return oneSide(first, isRound(all, first), text, rest);
  const heard = twoSides(first, second, {
    text,
    rest,
    loose: joined === null && first.dimension === null,
    open,
    all,
  });
  return joined === null ? heard : withDepth(heard, all, second, listening);
}

/** Where inches are spoken but one bare figure can only be millimetres, all the bare ones are. */
function oneSystem(all: readonly Token[], listening: Listening): Found[] {
  const spoken = lengthsIn(all, { unit: listening.unit, question: QUESTION });
  const metric = spoken.some((each) => each.unitSaid === null && each.readings[0]?.unit === 'mm');
  return listening.unit === 'in' && metric ? lengthsIn(all, { unit: 'mm', question: QUESTION }) : spoken;
}

/** "900 x 1200 x 30": the third figure is how deep it is. */
function withDepth(heard: Heard, all: readonly Token[], height: Found, listening: Listening): Heard {
  const deep = lengthsIn(all, { unit: listening.unit, question: 'piece.depthMm' }).find(
    (each) =>
      all[height.to]?.text === 'x' &&
      (each.from === height.to + 1 || isWord(all[each.from - 1], 'd')) &&
      each.from <= height.to + 2,
  );
  if (heard?.kind !== 'facts' || deep === undefined || deep.readings.length !== 1 || deep.negative)
    return heard;
  const depth = fact('piece.depthMm', { piece: { depthMm: deep.valueMm } }, deep.text, deep.inferred);
  return { ...heard, facts: [...heard.facts, depth] };
}

type Circumstance = { text: string; rest: Token[]; loose: boolean; open: boolean; all: readonly Token[] };

function onlyMass(all: readonly Token[]): boolean {
  return massesIn(all).length === all.filter((each) => each.kind === 'number').length;
}

function oneSide(side: Side, round: boolean, text: string, rest: Token[]): Heard {
  const both = round && side.dimension !== 'wide' && side.dimension !== 'high';
  const make = (value: Millimetres, doubt: boolean): Fact => {
    const length = side.dimension === 'radius' ? mm(2 * value) : value;
    if (both) return sizeFact(length, length, text, doubt);
    const high = side.dimension === 'high';
    const piece = high ? { heightMm: value } : { widthMm: value };
    return { ...fact(QUESTION, { piece }, text, doubt), partial: high ? 'piece.widthMm' : 'piece.heightMm' };
  };
  const [first] = side.readings;
  if (first === undefined) return refused(QUESTION, `${text} is no size for a piece on a wall`, rest);
  if (side.readings.length === 1) return { kind: 'facts', facts: [make(first.valueMm, side.inferred)], rest };
  const readings = side.readings.map((each) => ({
    label: lengthLabel(each.valueMm, each.unit),
    fact: make(each.valueMm, true),
  }));
  return asked(QUESTION, `"${text}" in which unit?`, readings, rest);
}

function twoSides(first: Side, second: Side, at: Circumstance): Heard {
  const upFirst = isHeightFirst(at.all) || first.dimension === 'high' || second.dimension === 'wide';
  const [width, height] = upFirst ? [second, first] : [first, second];
  const inferred = at.loose || first.inferred || second.inferred;
  const options = common(width, height);
  const [only] = options;
  if (only === undefined) {
    return at.open || first.unitSaid !== null
      ? refused(QUESTION, `${at.text} is no size for a piece on a wall`, at.rest)
      : null;
  }
  const laid = turned(at.all, only);
  if (options.length === 1) {
    return {
      kind: 'facts',
      facts: [sizeFact(laid.width, laid.height, at.text, inferred || laid.turned)],
      rest: at.rest,
    };
  }
  const readings = options.map((each) => ({
    label: `${lengthLabel(each.width, each.unit)} wide, ${lengthLabel(each.height, each.unit)} high`,
    fact: sizeFact(each.width, each.height, at.text, true),
  }));
  return asked(QUESTION, `"${at.text}" in which unit?`, readings, at.rest);
}

function sizeFact(widthMm: Millimetres, heightMm: Millimetres, said: string, inferred: boolean): Fact {
  return fact(QUESTION, { piece: { widthMm, heightMm } }, said, inferred);
}
