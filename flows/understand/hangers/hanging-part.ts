import type { HangingSoFar } from '../../../core/piece/piece.ts';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { isNumber, type Token } from '../words/token.ts';
import type { Placed } from './hanging-roles.ts';

/** "a third of the way down": so far below the top, once the height is known; else null. */
export function shareDown(all: readonly Token[], listening: Listening): Millimetres | 'unknown' | null {
  for (const [at, token] of all.entries()) {
    const halfway = token.text === 'halfway';
    const share =
      isNumber(token) && token.fraction && token.value.lt(1) ? token.value.valueOf() : halfway ? HALF : null;
    if (share === null) continue;
    const after = all.slice(at + 1, at + 6).map((each) => each.text);
    const way =
      halfway ||
      after.includes('way') ||
      after[0] === 'down' ||
      (after[0] === 'of' && after.includes('height'));
    if (!way || !(after.includes('down') || after.includes('top'))) continue;
    const height = listening.known.piece?.heightMm;
    return height === undefined ? 'unknown' : mm(height * share);
  }
  return null;
}

const HALF = 1 / 2;

/** The figures that are not points: rise, length, hooks apart, seat, stand-off, and a batten's drop. */
export function otherFigures(
  placed: readonly Placed[],
  by: HangingSoFar['by'],
  hooks: number | null,
): HangingSoFar {
  const value = (role: Placed['role']) => placed.find((each) => each.role === role)?.valueMm;
  const ringDown = value('down');
  const peak = value('peak');
  const rise =
    value('rise') ??
    (peak !== undefined && ringDown !== undefined && ringDown > peak ? mm(ringDown - peak) : undefined);
  const apart = value('apart') ?? (hooks === 1 ? mm(0) : undefined);
  const out: HangingSoFar = {};
  const seat = value('seat');
  const standOff = value('stand-off');
  const length = value('length');
  if (seat !== undefined) out.seatToScrewMm = seat;
  if (standOff !== undefined) out.standOffMm = standOff;
  if (by === 'cord') {
    if (rise !== undefined) out.riseMm = rise;
    if (length !== undefined) out.lengthMm = length;
    if (apart !== undefined) out.hooksApartMm = apart;
  }
  if (by === 'batten') {
    if (ringDown !== undefined) out.fromTopMm = ringDown;
    if (length !== undefined) out.lengthMm = length;
  }
  return out;
}

/** Only the drop was said ("no, 230 down"): the known points at the new drop. */
export function lowered(known: HangingSoFar | undefined, placed: readonly Placed[]): HangingSoFar['points'] {
  const downs = placed.filter((each) => each.role === 'down');
  const [first] = downs;
  if (first === undefined || known?.points === undefined || known.by === 'batten') return undefined;
  return known.points.map((each, at) => ({ ...each, fromTopMm: (downs[at] ?? first).valueMm }));
}

/** "rings 640 apart" on a frame of known width: as far in on both sides. */
export function fromSpan(placed: readonly Placed[], widthMm: Millimetres | undefined): Placed[] {
  const span = placed.find((each) => each.role === 'span');
  const across = placed.some(
    (each) => each.role === 'in' || each.role === 'from-left' || each.role === 'from-right',
  );
  if (span === undefined || across || widthMm === undefined || span.valueMm >= widthMm) return [...placed];
  const inward: Placed = { ...span, role: 'in', valueMm: mm((widthMm - span.valueMm) / 2), inferred: true };
  return [inward, ...placed.filter((each) => each !== span)];
}

/** What is still to be asked before a way of hanging is complete: the path of the first missing field, or null. */
export function missing(hanging: HangingSoFar): string | null {
  if (hanging.by === undefined) return 'piece.hanging.by';
  if (hanging.by === 'batten') {
    if (hanging.fromTopMm === undefined) return 'piece.hanging.fromTopMm';
    return hanging.lengthMm === undefined ? 'piece.hanging.lengthMm' : null;
  }
  const points = hanging.points ?? [];
  if (points.length === 0 || points.some((each) => each.fromTopMm === undefined))
    return 'piece.hanging.points';
  if (points.length === 1 && (hanging.by !== 'rings' || points[0]?.fromCentreMm === undefined)) {
    return hanging.by === 'keyholes' && points[0]?.fromCentreMm !== undefined ? null : 'piece.hanging.points';
  }
  if (hanging.by !== 'cord') return null;
  if (hanging.riseMm === undefined && hanging.lengthMm === undefined) return 'piece.hanging.riseMm';
  return hanging.hooksApartMm === undefined ? 'piece.hanging.hooksApartMm' : null;
}

/** What was known of the hanging, with what was said now: a cord stays a cord when its rings are placed. */
export function merged(known: HangingSoFar | undefined, said: HangingSoFar): HangingSoFar {
  if (known === undefined || known.by === undefined) return said;
  const sameWay =
    said.by === undefined || said.by === known.by || (known.by === 'cord' && said.by === 'rings');
  if (!sameWay) return said;
  const points = joinedPoints(known.points, said.points);
  return { ...known, ...said, by: known.by, ...(points === undefined ? {} : { points }) };
}

function joinedPoints(known: HangingSoFar['points'], said: HangingSoFar['points']): HangingSoFar['points'] {
  if (known !== undefined && said !== undefined && known.length === said.length && known.length > 1) {
    return said.map((each, at) => {
      const down = each.fromTopMm ?? known[at]?.fromTopMm;
      return down === undefined ? each : { ...each, fromTopMm: down };
    });
  }
  const [old, now] = [known?.[0], said?.[0]];
  if (known?.length === 2 && said?.length === 1 && now !== undefined) {
    return known.map((each) => (sameSide(each, now) ? { ...each, ...now } : each));
  }
  if (known?.length !== 1 || said?.length !== 1 || old === undefined || now === undefined)
    return said ?? known;
  if (old.fromLeftMm !== undefined && now.fromRightMm !== undefined) return [old, now];
  return old.fromRightMm !== undefined && now.fromLeftMm !== undefined ? [now, old] : said;
}

type Point = NonNullable<HangingSoFar['points']>[number];

function sameSide(one: Point, other: Point): boolean {
  return (one.fromLeftMm === undefined) === (other.fromLeftMm === undefined);
}
