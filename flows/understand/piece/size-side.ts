import type { Listening } from '../../reading.ts';
import type { Dimension } from '../lengths/dimension.ts';
import type { Found } from '../lengths/length.ts';
import { isPartedFromNoun, subjectAfter, subjectBefore } from '../lengths/subject.ts';
import { isNumber, isWord, type Token } from '../words/token.ts';

/** A figure that may be a side of the piece, with the word for it. */
export type Side = Found & { dimension: Dimension | null };

/** A bare number word up to this counts things, unless it is one of a pair; our choice. */
const FEW = 12;

/** At these questions two figures with an "x" answer nothing of the wall's. */
const NO_PAIR_OF_ITS_OWN: ReadonlySet<Listening['awaiting']> = new Set([
  null,
  'piece.kind',
  'wall.baseMaterial',
  'wall.cores',
]);

/** Figures of the wall, the hangers, a coat of plaster or a place are not the piece's. */
export function isOfPiece(all: readonly Token[], side: Side, listening: Listening, open: boolean): boolean {
  if (side.dimension === 'deep' || (side.inward && side.dimension === null)) return false;
  const joined = all[side.to]?.text === 'x' || all[side.from - 1]?.text === 'x';
  if (joined && open && subjectBefore(all, side) !== 'wall') return true;
  const next = all[side.to];
  if (isWord(next, 'down', 'above', 'from', 'off', 'apart', 'up', 'below', 'between', 'each', 'inside'))
    return false;
  if (isWord(all[side.to], 'in') && isWord(all[side.to + 1], 'from', 'each')) return false;
  const figure = all[side.from];
  const few = isNumber(figure) && figure.words && figure.value.lte(FEW) && side.unitSaid === null;
  const paired = all[side.to]?.text === 'x' || all[side.from - 1]?.text === 'x';
  if (paired && subjectBefore(all, side) === 'piece') return true;
  if (few && !paired && side.dimension === null) return false;
  const after = subjectAfter(all, side) ?? afterPair(all, side);
  if (after !== null) return after === 'piece';
  const before = subjectBefore(all, side);
  if (
    before === 'wall' &&
    paired &&
    isPartedFromNoun(all, side) &&
    NO_PAIR_OF_ITS_OWN.has(listening.awaiting)
  )
    return true;
  if (before === 'wall' || before === 'ceiling') return false;
  if (before === 'datum') return paired || isPartedFromNoun(all, side);
  if (
    before === 'hanger' ||
    before === 'part' ||
    before === 'coat' ||
    before === 'sheet' ||
    before === 'place'
  ) {
    return side.dimension !== null || paired;
  }
  const wallAsked = listening.awaiting?.startsWith('wall.') === true;
  return open || before === 'piece' || !wallAsked || (paired && NO_PAIR_OF_ITS_OWN.has(listening.awaiting));
}

/** "900x1200 mirror": the noun is behind the second figure. */
function afterPair(all: readonly Token[], side: Side) {
  if (all[side.to]?.text !== 'x' || !isNumber(all[side.to + 1])) return null;
  const to = all[side.to + 2]?.kind === 'unit' ? side.to + 3 : side.to + 2;
  return subjectAfter(all, { from: side.to + 1, to });
}

/** Two figures with an "x" between, the words for them allowed: "1,250 mm (h) x 875 mm (w)". */
export function pairAt(all: readonly Token[], sides: readonly Side[]): Side[] | null {
  for (let at = 0; at + 1 < sides.length; at += 1) {
    const [left, right] = [sides[at], sides[at + 1]];
    if (!left || !right) continue;
    const between = all.slice(left.to, right.from);
    if (between.length <= 5 && between.some((each) => isWord(each, 'x', 'by'))) return [left, right];
  }
  return null;
}

/** Figures with a word for what they measure; both ways for a round one; null when none has one. */
export function named(sides: readonly Side[], open: boolean): Side[] | null {
  const labelled = sides.filter((each) => each.dimension !== null);
  const across = labelled.find((each) => each.dimension === 'wide' || each.dimension === 'long');
  const high = labelled.find(
    (each) => each !== across && (each.dimension === 'high' || each.dimension === 'long'),
  );
  const both = labelled.find(
    (each) => each.dimension === 'round' || each.dimension === 'square' || each.dimension === 'radius',
  );
  if (both !== undefined) return [both];
  if (across !== undefined && high !== undefined)
    return across.from < high.from ? [across, high] : [high, across];
  const one = across ?? high;
  if (one === undefined) return null;
  const other = open ? sides.find((each) => each !== one && each.dimension === null) : undefined;
  if (other === undefined) return [one];
  return one.from < other.from ? [one, other] : [other, one];
}

export function isRound(all: readonly Token[], side: Side): boolean {
  const told = side.dimension === 'round' || side.dimension === 'square' || side.dimension === 'radius';
  return told || all.some((each) => isWord(each, 'round', 'circular', 'diameter', 'dia', 'circle', 'square'));
}
