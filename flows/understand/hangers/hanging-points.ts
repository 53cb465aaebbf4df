import type { HangingSoFar } from '../../../core/piece/piece.ts';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import { isNumber, isWord, type Token } from '../words/token.ts';
import type { Placed } from './hanging-roles.ts';
import type { Side } from './hanging-side.ts';

export type Points = NonNullable<HangingSoFar['points']>;
type Point = Points[number];

/** Points, and whether they were laid out by more than the words; or the reason why not. */
export type Laid = { points: Points; inferred: boolean } | { ask: string } | null;

export type Circumstance = {
  single: boolean;
  middle: boolean;
  /** Three or more. */
  many: boolean;
  /** "The right is the same": what is said of one side holds for both. */
  same: boolean;
  downMm: Millimetres | null;
};

/** Lays out the points from figures in, from the left or right, and down. */
export function pointsOf(placed: readonly Placed[], about: Circumstance): Laid {
  const span = placed.find((each) => each.role === 'span');
  const across = placed.filter(
    (each) => each.role === 'in' || each.role === 'from-left' || each.role === 'from-right',
  );
  const downs = placed.filter((each) => each.role === 'down');
  const down = (side: Side, index: number): Millimetres | undefined =>
    pick(downs, side, index)?.valueMm ?? about.downMm ?? undefined;
  if (across.length === 0 && span !== undefined) {
    if (about.many) return { ask: 'How far is each of them from the left side of the frame?' };
    const half = span.valueMm / 2;
    const points = [mm(-half), mm(half)].map((fromCentreMm) => ({ fromCentreMm, ...top(down('both', 0)) }));
    return { points, inferred: !about.middle };
  }
  if (across.length === 0) {
    if ((about.single || about.middle) && downs.length <= 1) {
      const point: Point = { fromCentreMm: mm(0), ...top(down('both', 0)) };
      return { points: [point], inferred: !about.middle };
    }
    return null;
  }
  const listed = across.filter((each) => each.role !== 'in');
  if (listed.length >= 2 && listed.length === across.length) {
    if (downs.length > 1 && downs.length !== listed.length)
      return { ask: 'Which figure down is for which hanger?' };
    return { points: listed.map((each, at) => point(each, 'left', down(each.side, at))), inferred: false };
  }
  return handed(across, downs, down, about.same) ?? plain(across, downs, down, about);
}

type Down = (side: Side, index: number) => Millimetres | undefined;

/** "left …, right …". */
function handed(across: readonly Placed[], downs: readonly Placed[], down: Down, same: boolean): Laid {
  const hands = [...across, ...downs].filter((each) => each.side !== 'both');
  if (hands.length === 0) return null;
  const points = (['left', 'right'] as const).flatMap((side) => {
    const said = hands.some((each) => each.side === side || (same && across.length === 1));
    const only = across.length === 1 && across[0]?.role === 'in' ? across[0] : undefined;
    const figure =
      across.find((each) => each.side === side) ?? across.find((each) => each.side === 'both') ?? only;
    const drop = down(side, 0) ?? (same ? downs[0]?.valueMm : undefined);
    return said && figure !== undefined ? [point(figure, side, drop)] : [];
  });
  return points.length === 0 ? null : { points, inferred: false };
}

function plain(across: readonly Placed[], downs: readonly Placed[], down: Down, about: Circumstance): Laid {
  const [first, second, third] = across;
  if (first === undefined || third !== undefined || downs.length > 2)
    return { ask: 'Which figure is for which hanger?' };
  if (second !== undefined) {
    return {
      points: [point(first, 'left', down('both', 0)), point(second, 'right', down('both', 1))],
      inferred: true,
    };
  }
  if (about.single) {
    if (first.role !== 'in') return { points: [point(first, 'left', down('both', 0))], inferred: false };
    return { ask: 'One hanger: in from the left side, or from the right?' };
  }
  // "rings 95 in, 240 and 238 down": the left one is said first.
  const uneven = downs.length === 2;
  const points = [
    point(first, 'left', down('both', 0)),
    point({ ...first, role: 'in' }, 'right', down('both', 1)),
  ];
  return { points, inferred: uneven || first.role !== 'in' };
}

function pick(downs: readonly Placed[], side: Side, index: number): Placed | undefined {
  if (side !== 'both') {
    return downs.find((each) => each.side === side) ?? downs.find((each) => each.side === 'both');
  }
  return downs[index] ?? downs[0];
}

function point(found: Placed, side: 'left' | 'right', down: Millimetres | undefined): Point {
  const right = found.role === 'from-right' || (found.role === 'in' && side === 'right');
  return right ? { fromRightMm: found.valueMm, ...top(down) } : { fromLeftMm: found.valueMm, ...top(down) };
}

const top = (down: Millimetres | undefined) => (down === undefined ? {} : { fromTopMm: down });

/** "P1 (95, 240), P2 (745, 240) from top left": pairs across and down, from the left unless "right" is said. */
export function coordinates(all: readonly Token[]): { points: Points; from: number; to: number } | null {
  const points: Points = [];
  const right = all.some((each, at) => each.text === 'right' && isWord(all[at - 1], 'top'));
  let from = -1;
  let to = -1;
  for (let at = 0; at < all.length; at += 1) {
    if (all[at]?.text !== '(') continue;
    const read = pairIn(all, at + 1);
    if (read === null) continue;
    const [across, down] = read.pair;
    const place = right ? { fromRightMm: mm(across) } : { fromLeftMm: mm(across) };
    points.push({ ...place, fromTopMm: mm(down) });
    if (from < 0) from = at;
    to = read.to;
  }
  return points.length === 0 ? null : { points, from, to };
}

function pairIn(all: readonly Token[], at: number): { pair: [number, number]; to: number } | null {
  const first = all[at];
  if (!isNumber(first) || first.negative) return null;
  if (first.pair !== undefined && all[at + 1]?.text === ')') {
    return { pair: [first.pair[0].valueOf(), first.pair[1].valueOf()], to: at + 2 };
  }
  const second = all[at + 2];
  if (!isWord(all[at + 1], ',', ';', '/', '|') || !isNumber(second) || second.negative) return null;
  const unit = all[at + 3]?.kind === 'unit' ? 1 : 0;
  if (all[at + 3 + unit]?.text !== ')') return null;
  return { pair: [first.value.valueOf(), second.value.valueOf()], to: at + 4 + unit };
}
