import { tiltOf } from './layout/level.ts';
import { TAPE_READING } from './layout/tolerance.ts';
import type { Mark } from './plan-shape.ts';
import { type Degrees, difference, type Millimetres, mm, toTenth } from './quantity.ts';

/** A mark as measured on the wall: from the left end, and up from the datum. Millimetres. */
export type MeasuredMark = { id: string; fromLeftMm: Millimetres; upMm: Millimetres };
/** A planned mark with what was measured for it. */
export type Pair = { planned: Mark; found: MeasuredMark };

/** Whether what was measured is meant for a mark, however its letter was typed. */
export const isFor = (mark: Mark, found: MeasuredMark): boolean => mark.id === found.id.trim().toUpperCase();

/** The planned marks that were measured, from the left. */
export function paired(planned: readonly Mark[], found: readonly MeasuredMark[]): Pair[] {
  return planned.flatMap((mark) => {
    const match = found.find((each) => isFor(mark, each));
    return match ? [{ planned: mark, found: match }] : [];
  });
}

/**
 * How far off a mark is, right and up positive, millimetres.
 * Under a ceiling of unknown height a planned mark has no height up, so heights are held against the first one's.
 */
export function offBy(
  { planned, found }: Pair,
  first: Pair | undefined,
): { across: Millimetres; up: Millimetres } {
  const across = difference(found.fromLeftMm, planned.fromLeftMm);
  if (planned.upMm !== undefined) return { across, up: difference(found.upMm, planned.upMm) };
  if (planned.downMm === undefined || first?.planned.downMm === undefined) return { across, up: mm(0) };
  const foundAbove = difference(found.upMm, first.found.upMm);
  return { across, up: difference(foundAbove, difference(first.planned.downMm, planned.downMm)) };
}

/** Further off than two readings of one length may differ. */
export const isOff = (off: { across: Millimetres; up: Millimetres }): boolean =>
  toTenth(mm(Math.abs(off.across))) > TAPE_READING.value ||
  toTenth(mm(Math.abs(off.up))) > TAPE_READING.value;

/** How crooked it will hang: what the right mark is high by against the left, over the span as found. */
export function tiltBetween(pairs: readonly Pair[]): Degrees | null {
  const first = pairs[0];
  const last = pairs.at(-1);
  if (!first || !last || first === last) return null;
  const rise = difference(offBy(last, first).up, offBy(first, first).up);
  const span = difference(last.found.fromLeftMm, first.found.fromLeftMm);
  return span > 0 ? tiltOf(rise, span) : null;
}
