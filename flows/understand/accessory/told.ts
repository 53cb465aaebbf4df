import type { JobSoFar } from '../../../core/job.ts';
import type { Millimetres } from '../../../core/quantity.ts';
import type { Accessory, Unplaced } from '../../../core/wall/wall.ts';
import type { Listening } from '../../reading.ts';
import { type Atom, atomsIn } from './atoms.ts';
import { roomsAreFar, SEEN_FROM_HERE } from './face.ts';
import { type Item, itemsIn } from './items.ts';
import type { Mention } from './mentions.ts';
import { placeOf } from './place.ts';
import type { Place } from './settled.ts';
import { type Each, partsOf, shareOut } from './share-out.ts';
import type { Lengths, Read } from './units.ts';
import { HAS_A_WIDTH } from './words.ts';

/** The fittings of a message: those with their place, and those still without. */
export type Told = { placed: Accessory[]; unplaced: Unplaced[]; inferred: boolean };

type InUnit = { unit: string; told: Told };

/** The readings of a list whose figures bear no unit: those that put every fitting inside the room. */
export function inEachUnit(
  text: string,
  heads: readonly Mention[],
  figures: Read,
  { known, awaiting }: Listening,
): InUnit[] {
  const items = itemsIn(text, heads);
  const pending = awaiting === 'wall.accessories' ? known.wall?.unplaced?.[0] : undefined;
  const unmarked = awaiting === 'wall.farSide' ? 'far' : 'this';
  const all = figures.units.map((unit) => ({
    unit,
    told: toldOf(items, { wall: known.wall, lengths: figures.in(unit), text, unmarked, pending }),
  }));
  const most = Math.max(...all.map(({ told }) => told.placed.length));
  const fit = all.filter(({ told }) => told.placed.length === most);
  const [first] = fit;
  if (first === undefined || all.length === 1) return all;
  if (most > 0) return fit.map(({ unit, told }) => ({ unit, told: { ...told, inferred: true } }));
  const unplaced = first.told.unplaced.map(({ xMm: _, yMm: __, ...each }) => each);
  return [{ unit: first.unit, told: { ...first.told, unplaced } }];
}

type Setting = {
  wall: JobSoFar['wall'];
  lengths: Lengths;
  text: string;
  unmarked: 'this' | 'far';
  /** What was asked for. */
  pending: Unplaced | undefined;
};
/** Every fitting gets its own place or is asked for; figures that do not fit are nobody's. */
function toldOf(items: readonly Item[], setting: Setting): Told {
  const each = items.map((item, at) => readOne(item, items[at + 1], setting));
  shareOut(each);
  const told: Told = { placed: [], unplaced: [], inferred: false };
  each.forEach((one, at) => {
    const left = Math.max(0, one.count - partsOf(each, at));
    fill(told, { ...one, count: left });
  });
  return told;
}

function readOne(item: Item, next: Item | undefined, setting: Setting): Each {
  const { wall, lengths, text } = setting;
  const mirrored = item.words.search(SEEN_FROM_HERE) >= 0;
  const words = item.words.replace(SEEN_FROM_HERE, ' ');
  const atoms = atomsIn(words, item.count !== 1 || next?.as === 'one');
  const face = faceOf(item, text, setting);
  const most = item.count ?? manyIn(atoms);
  const place = placeOf(atoms, most, {
    words,
    wall,
    lengths,
    mirrored: mirrored && face === 'far',
    kind: item.kind,
    atEnd: endIn(words),
    onlyUp:
      isPending(item, setting) && setting.pending?.xMm !== undefined && setting.pending.yMm === undefined,
  });
  return { item, place, count: item.face === 'both' ? 1 : most, face };
}

/** "Sockets at 500, 1500 and 2500, all 300 up": as many as are placed, and at least two. */
function manyIn(atoms: readonly Atom[]): number {
  const of = (...roles: Atom['role'][]): number => atoms.filter(({ role }) => roles.includes(role)).length;
  const ups = of('up', 'high');
  return Math.max(
    2,
    of('left'),
    of('right'),
    of('along'),
    ups,
    ups > 0 ? of('bare') : Math.floor(of('bare') / 2),
  );
}

const isPending = ({ kind }: Item, { pending }: Setting): boolean => pending?.kind === kind;

const endIn = (words: string): 'left' | 'right' | null => {
  const end =
    /\b(?:at|in|by|on|against|tight to|hard against) (?:the |my )?(?:far |very |extreme )?(left|right)(?: hand)?(?: (?:end|corner|side|edge))/.exec(
      words,
    )?.[1];
  return end === 'left' || end === 'right' ? end : null;
};

/** What was asked for is on the face it was told of; another fitting told with it need not be. */
function faceOf(item: Item, text: string, setting: Setting): 'this' | 'far' | undefined {
  const { face } = item;
  const { pending, unmarked } = setting;
  if (face === 'room') return roomsAreFar(text) ? 'far' : undefined;
  if (face !== null) return face === 'this' || face === 'far' ? face : undefined;
  if (pending === undefined) return unmarked;
  return isPending(item, setting) || pending.face === 'this' ? pending.face : undefined;
}

function fill(told: Told, { item, place, count, face }: Each): void {
  const { kind } = item;
  const size = {
    ...(place.widthMm !== undefined && { widthMm: place.widthMm }),
    ...(place.heightMm !== undefined && HAS_A_WIDTH.has(kind) && { heightMm: place.heightMm }),
  };
  const both = item.face === 'both';
  for (let at = 0; at < count; at += 1) {
    const [xMm, yMm] = [xOf(place, at), oneOf(place.ys, at)];
    const at_ = both ? ('this' as const) : face;
    if (at_ !== undefined && xMm !== undefined && yMm !== undefined) {
      told.placed.push({ kind, face: at_, xMm, yMm, ...size });
      told.inferred ||= place.inferred || at_ === 'far';
    } else told.unplaced.push(without(kind, at_, xMm, yMm, size));
  }
  if (both) told.unplaced.push(without(kind, 'far', undefined, oneOf(place.ys, 0), size));
}

/** One figure across for two fittings places one of them, unless they stand one above the other. */
const xOf = ({ xs, ys }: Place, at: number): Millimetres | undefined =>
  ys.length > 1 ? oneOf(xs, at) : xs[at];

const oneOf = (values: readonly Millimetres[], at: number): Millimetres | undefined =>
  values[at] ?? (values.length === 1 ? values[0] : undefined);

function without(
  kind: Unplaced['kind'],
  face: Unplaced['face'],
  xMm: Millimetres | undefined,
  yMm: Millimetres | undefined,
  size: object,
): Unplaced {
  return {
    kind,
    ...(face !== undefined && { face }),
    ...(xMm !== undefined && { xMm }),
    ...(yMm !== undefined && { yMm }),
    ...size,
  };
}
