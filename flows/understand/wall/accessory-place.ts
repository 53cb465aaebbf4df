import type { AccessoryKind, JobSoFar } from '../../../core/job.ts';
import { difference, type Millimetres, mm, sum } from '../../../core/quantity.ts';
import type { Atom } from './accessory-roles.ts';
import type { Lengths } from './accessory-units.ts';
import { HAS_A_WIDTH } from './accessory-words.ts';

/** Where a fitting is, as far as the words tell. More than one of an axis: as many places. */
export type Place = {
  xs: Millimetres[];
  ys: Millimetres[];
  /** Told with "both" or "all": of those before it too. */
  sharedX: boolean;
  sharedY: boolean;
  widthMm?: Millimetres;
  heightMm?: Millimetres;
  /** No word said which way a figure is measured. */
  inferred: boolean;
  /** Figures that do not fit together: none of them is taken. */
  muddled: boolean;
};

/** Nearer than this to an end, or higher than this, no fitting has its middle; our choice. */
const LEAST_ACROSS = mm(20);
const LEAST_UP = mm(45);
const MOST_UP = mm(6000);
const MOST_ACROSS = mm(30_000);
/** The lower of the common door leaves: a door reaches from the floor at least so far. Our choice. */
const DOOR_HEIGHT = mm(1980);
const AS_HIGH: ReadonlySet<AccessoryKind> = new Set(['window', 'door', 'radiator']);
/** A figure given twice, in two units, differs by no more; our choice. */
const SAME = 0.02;

const FULL_HEIGHT =
  /\b(?:floor to ceiling|full height|all the way (?:up|down)|top to bottom|vertical(?:ly)?|(?:runs?|running|goes|going|comes|straight) (?:straight )?(?:up|down))\b/;

export type Room = {
  words: string;
  wall: JobSoFar['wall'];
  lengths: Lengths;
  mirrored: boolean;
  kind: AccessoryKind;
  atEnd: 'left' | 'right' | null;
  /** Across is known from before. */
  onlyUp: boolean;
};

/** Puts the figures of one fitting together; `count` is how many places there may be. */
export function placeOf(atoms: readonly Atom[], count: number, room: Room): Place {
  const { wall, kind, lengths } = room;
  const place: Place = { xs: [], ys: [], sharedX: false, sharedY: false, inferred: false, muddled: false };
  const bare: Millimetres[] = [];
  const edges: { start?: Millimetres; end?: Millimetres; bottom?: Millimetres; top?: Millimetres } = {};
  const big = HAS_A_WIDTH.has(kind);
  const sized = atoms.some(({ role }) => role === 'wide' || role === 'size' || role === 'range');
  const x = (value: Millimetres | null, shared: boolean): void => {
    if (value === null) return;
    place.xs.push(value);
    place.sharedX ||= shared;
  };
  for (const { role, n, m, shared } of atoms) {
    const value = lengths(n);
    const second = m === undefined ? null : lengths(m);
    if (role === 'void') continue;
    if (value === null) place.muddled = true;
    else if (role === 'left') x(value, shared);
    else if (role === 'leftUp' || role === 'rightUp') {
      const width = wall?.widthMm;
      x(role === 'leftUp' ? value : width === undefined ? null : difference(width, value), shared);
      if (second !== null) place.ys.push(second);
    } else if (role === 'along') {
      x(value, shared);
      place.inferred = true;
    } else if (role === 'right')
      x(wall?.widthMm === undefined ? null : difference(wall.widthMm, value), shared);
    else if (role === 'up') {
      place.ys.push(value);
      place.sharedY ||= shared;
    } else if (role === 'high') {
      // "600 high" of a radiator is its size as often as its place.
      if (big && sized) place.heightMm = value;
      else if (!AS_HIGH.has(kind)) place.ys.push(value);
    } else if (role === 'ceiling') {
      if (wall?.heightMm !== undefined) place.ys.push(difference(wall.heightMm, value));
    } else if (role === 'wide') place.widthMm = value;
    else if (role === 'tall') place.heightMm = value;
    else if ((role === 'size' || role === 'range' || role === 'rise') && second === null)
      place.muddled = true;
    else if (role === 'size' && second !== null) {
      if (big) [place.widthMm, place.heightMm] = [value, second];
      else bare.push(value, second);
    } else if (role === 'range' && second !== null) {
      if (big) [edges.start, edges.end] = [value, second];
      else place.muddled = true;
    } else if (role === 'rise' && second !== null) {
      if (big) [edges.bottom, edges.top] = [value, second];
      else place.muddled = true;
    } else if (role === 'start' || role === 'end' || role === 'bottom' || role === 'top') edges[role] = value;
    else bare.push(value);
  }
  fromEdges(place, edges);
  const missesX =
    place.xs.length === 0 &&
    !room.onlyUp &&
    !atoms.some(
      ({ role }) => role === 'right' || role === 'rightUp' || (role === 'void' && atoms.length > 1),
    );
  takeBare(place, bare, missesX, count, room.onlyUp);
  atTheEnd(place, room);
  doorStands(place, kind);
  runsUp(place, room);
  return settled(place, count, room);
}

function fromEdges(
  place: Place,
  {
    start,
    end,
    bottom,
    top,
  }: { start?: Millimetres; end?: Millimetres; bottom?: Millimetres; top?: Millimetres },
): void {
  if (start !== undefined && end !== undefined) {
    if (end <= start) place.muddled = true;
    place.xs.push(mm((start + end) / 2));
    place.widthMm = difference(end, start);
  } else if (start !== undefined && place.widthMm !== undefined)
    place.xs.push(sum(start, mm(place.widthMm / 2)));
  else if (end !== undefined && place.widthMm !== undefined)
    place.xs.push(difference(end, mm(place.widthMm / 2)));
  if (bottom !== undefined && top !== undefined) {
    if (top <= bottom) place.muddled = true;
    place.ys.push(mm((bottom + top) / 2));
    place.heightMm = difference(top, bottom);
  } else if (bottom !== undefined && place.heightMm !== undefined)
    place.ys.push(sum(bottom, mm(place.heightMm / 2)));
  else if (top !== undefined && place.heightMm !== undefined)
    place.ys.push(difference(top, mm(place.heightMm / 2)));
}

/** Across before up, as tapes are read out; confirmed, since no word said so. */
function takeBare(place: Place, bare: Millimetres[], missesX: boolean, count: number, onlyUp: boolean): void {
  if (bare.length === 0) return;
  place.inferred = true;
  if (missesX && place.ys.length === 0 && bare.length === 2 * count)
    for (let at = 0; at < count; at += 1) {
      place.xs.push(...bare.splice(0, 1));
      place.ys.push(...bare.splice(0, 1));
    }
  if (missesX && place.ys.length > 0) place.xs.push(...bare.splice(0, Math.max(1, count)));
  else if (missesX && bare.length === 2 && count === 1) {
    place.xs.push(...bare.splice(0, 1));
    place.ys.push(...bare.splice(0, 1));
  } else if (missesX && bare.length === 1) place.xs.push(...bare.splice(0, 1));
  else if (place.ys.length === 0 && (place.xs.length > 0 || onlyUp)) place.ys.push(...bare.splice(0, count));
  if (bare.length > 0) place.muddled = true;
}

function atTheEnd(place: Place, { atEnd, wall }: Room): void {
  if (atEnd === null || place.widthMm === undefined || place.xs.length > 0) return;
  if (atEnd === 'left') place.xs.push(mm(place.widthMm / 2));
  else if (wall?.widthMm !== undefined) place.xs.push(difference(wall.widthMm, mm(place.widthMm / 2)));
}

function doorStands(place: Place, kind: AccessoryKind): void {
  if (kind !== 'door' || place.ys.length > 0) return;
  place.heightMm ??= DOOR_HEIGHT;
  place.ys.push(mm(place.heightMm / 2));
  place.inferred = true;
}

/** A pipe from floor to ceiling has no height of its own: it is taken where it leaves the floor. */
function runsUp(place: Place, { kind, words }: Room): void {
  if (
    (kind !== 'pipe' && kind !== 'cable' && kind !== 'gas') ||
    place.ys.length > 0 ||
    !FULL_HEIGHT.test(words)
  )
    return;
  place.ys.push(LEAST_UP);
  place.inferred = true;
}

/** A figure told twice counts once; more places than fittings, or one outside the wall, is a muddle. */
function settled(place: Place, count: number, { wall, mirrored }: Room): Place {
  const once = (values: readonly Millimetres[]): Millimetres[] =>
    values.filter((value, at) => !values.slice(0, at).some((each) => Math.abs(each - value) <= SAME * each));
  const [xs, ys] = [count > 1 ? place.xs : once(place.xs), count > 1 ? place.ys : once(place.ys)];
  const width = wall?.widthMm ?? MOST_ACROSS;
  const height = wall?.heightMm ?? MOST_UP;
  const off =
    xs.some((x) => x < LEAST_ACROSS || x > difference(width, LEAST_ACROSS)) ||
    ys.some((y) => y < LEAST_UP || y > height);
  const many = xs.length > count || ys.length > count;
  if (place.muddled || off || many) return { ...place, xs: [], ys: [], inferred: false, muddled: true };
  if (!mirrored) return { ...place, xs, ys };
  const turned = wall?.widthMm === undefined ? [] : xs.map((x) => difference(width, x));
  return { ...place, xs: turned, ys };
}
