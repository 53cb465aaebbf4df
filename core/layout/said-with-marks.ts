import type { Job } from '../job.ts';
import type { Mark } from '../plan-shape.ts';
import { mm } from '../quantity.ts';
import type { Basis } from '../sources.ts';
import { battenAdvice } from './batten.ts';
import type { OnCourses } from './course-advice.ts';
import type { PlacedMark } from './cross-checks.ts';
import { ceilingAt, type Fit } from './fit.ts';
import type { Hung } from './hung.ts';
import { deepAdvice, LEAN_BASIS, leanAdvice } from './lean-advice.ts';
import { LEVEL_BASIS, levelAdvice, levelOrParallel } from './level-advice.ts';
import { shortSpanAdvice } from './marking-error.ts';
import { OFF_CENTRE_BASIS, offCentreAdvice } from './off-centre.ts';
import { openingAdvice } from './openings.ts';
import type { Among } from './set-out.ts';
import { findStuds, type OnStuds } from './stud-advice.ts';
import { HEIGHT_BASIS, usualHeightAdvice } from './usual-height.ts';

/** A piece set out, with what its marks fall on where that is known. */
export type SetOutSoFar = {
  fit: Fit;
  hung: Hung;
  placed: readonly PlacedMark[];
  marks: readonly Mark[];
  studs: OnStuds | null;
  courses: OnCourses | null;
};

/** Lines, and what the figures in them rest on where that is more than plane geometry. */
type Told = readonly [lines: readonly string[], basis?: readonly Basis[] | undefined];

/** What is said with the marks, in the order in which it is wanted at the wall, and what it rests on; `among` others what moves or levels all of them is the group's to say. */
export function saidWithMarks(
  job: Job,
  { fit, hung, placed, marks, studs, courses }: SetOutSoFar,
  among?: Among,
): { advice: string[]; basis: Basis[] } {
  const { piece, wall } = job;
  const { frame, datum, bottom } = fit;
  const told: Told[] = [
    [among ? [] : levelAdvice(marks, datum, wall)],
    [hung.batten ? [] : shortSpanAdvice(placed)],
    [among ? [] : levelOrParallel(fit, marks), LEVEL_BASIS],
    [among ? [] : usualHeightAdvice(job, frame, bottom.levelAboveFloorMm), HEIGHT_BASIS],
    [hung.advice],
    [offCentreAdvice(piece, hung.bearings), OFF_CENTRE_BASIS],
    [leanAdvice(piece, highestDrop(hung)), LEAN_BASIS],
    [deepAdvice(piece, highestDrop(hung)), LEAN_BASIS],
    [openingAdvice(frame, wall, bottom.levelAboveFloorMm)],
    [findStuds(wall)],
    [hung.batten ? battenSaid(hung.batten, placed, fit, studs !== null) : []],
    [hung.batten || among ? [] : (studs?.advice ?? []), studs?.basis],
    [among ? [] : (courses?.advice ?? []), courses?.basis],
  ];
  const said = told.filter(([lines]) => lines.length > 0);
  return { advice: said.flatMap(([lines]) => lines), basis: said.flatMap(([, basis = []]) => basis) };
}

/** Drop of the hanger that bears highest. */
export const highestDrop = ({ bearings }: Hung) => mm(Math.min(...bearings.map(({ dropMm }) => dropMm)));

function battenSaid(
  { line, onStuds: inStuds }: NonNullable<Hung['batten']>,
  placed: readonly PlacedMark[],
  fit: Fit,
  studsKnown: boolean,
): string[] {
  const ceilings = [fit.frame.leftMm, fit.frame.rightMm].map((x) => ceilingAt(fit, x));
  const ceiling = ceilings.includes(null) ? null : Math.min(...ceilings.map((each) => each ?? 0));
  const above = ceiling === null ? null : mm(ceiling - fit.frame.topMm);
  const screws = placed.map((each) => each.xMm);
  return battenAdvice(screws, line, inStuds ? 'in-studs' : studsKnown ? 'missing-studs' : 'even', above);
}
