import { difference, type Millimetres, mm, sum } from '../../../core/quantity.ts';
import type { AccessoryKind } from '../../../core/wall/wall.ts';
import type { Atom } from './atoms.ts';
import { type Place, type Room, settled } from './settled.ts';
import { HAS_A_WIDTH } from './words.ts';

const AS_HIGH: ReadonlySet<AccessoryKind> = new Set(['window', 'door', 'radiator']);
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
