import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { type Sourced, sourced } from '../sources.ts';

/** Between the stud's face and a cable that has no steel plate over it. */
export const CABLE_SETBACK = sourced(
  mm(1.25 * MM_PER_INCH),
  'NEC:300.4',
  '300.4(A)(1), (D)',
  'read-secondary',
);

/** Steel plate over a cable or pipe, the thinnest allowed. */
export const PLATE_STEEL = sourced(mm(MM_PER_INCH / 16), 'NEC:300.4', '300.4(D)', 'read-secondary');

const PIPE_PLATE: Record<'irc-2006' | 'upc', Sourced<Millimetres>> = {
  'irc-2006': sourced(mm(1.5 * MM_PER_INCH), 'IRC:2006', 'G2415.5, M1308.2', 'read-secondary'),
  upc: sourced(mm(MM_PER_INCH), 'UPC:312.9', '312.9', 'read-secondary'),
};

/** How deep from the finished face before a cable kept to the rule can be reached: board + setback, millimetres. */
export function reachBeforeCable(boardMm: Millimetres): Millimetres {
  return mm(boardMm + CABLE_SETBACK.value);
}

/** How far a screw is in the stud, and past the setback (negative: short of it): screw - outside - board. Millimetres. */
export function intoStud(
  screwMm: Millimetres,
  boardMm: Millimetres,
  outsideMm: Millimetres,
): { inStudMm: Millimetres; pastSetbackMm: Millimetres } {
  const inStud = screwMm - outsideMm - boardMm;
  return { inStudMm: mm(inStud), pastSetbackMm: mm(inStud - CABLE_SETBACK.value) };
}

/** Whether a code puts a steel plate over a pipe whose edge is this near the stud's face, and below which distance. */
export function pipePlate(
  edgeToFaceMm: Millimetres,
  code: 'irc-2006' | 'upc',
): { belowMm: Millimetres; expected: boolean } {
  const belowMm = PIPE_PLATE[code].value;
  return { belowMm, expected: edgeToFaceMm < belowMm };
}
