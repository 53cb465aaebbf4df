import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { PerMark } from '../../plan-shape.ts';
import { mm, newtons } from '../../quantity.ts';
import { aboveBottom, type Load } from '../acting/actions.ts';
import { outwardPull } from '../acting/outward-pull.ts';
import type { PointLoad } from '../acting/worst-check.ts';
import type { Candidate } from '../candidate.ts';
import { BATTEN } from '../stand-off.ts';
import { battenPoint } from './added-batten.ts';
import { pryingPull, shareInRow } from './prying.ts';

/**
 * What each screw place of a split batten carries, N: on masonry a stiff row, W/n + W e x / sum(x^2); across
 * studs the outer two by the lever rule. The batten stands off the wall, so the pull is more than the piece's own.
 */
export function battenActions(
  job: Job,
  setOut: SetOut,
  load: Load,
  { fastener, point }: Candidate,
): PerMark[] {
  const { marks } = setOut;
  const places = marks.map((mark) => mark.fromLeftMm);
  const acrossStuds = fastener === 'batten-screws';
  const shares = shareInRow(load.actions.weightN, places, load.comFromLeftEndMm, acrossStuds);
  const above = aboveBottom(job, setOut, marks[0]);
  return marks.map(({ id }, at) => {
    const shearN = shares[at] ?? newtons(0);
    if (!acrossStuds) return { id, shearN, tensionN: point.tensionN };
    const { thicknessMm, screwToLowerEdgeMm } = BATTEN.value;
    const prying = pryingPull(shearN, thicknessMm, screwToLowerEdgeMm, 1);
    return { id, shearN, tensionN: newtons(prying + outwardPull(shearN, load.comFromWallMm, above)) };
  });
}

/** What each screw of a split batten is reckoned with: the worst of the row for all of them. */
export function splitBattenPoint(job: Job, setOut: SetOut, load: Load): readonly PointLoad[] {
  const { marks } = setOut;
  const first = marks[0];
  const last = marks.at(-1);
  if (!first || !last) return [];
  const spacing = mm((last.fromLeftMm - first.fromLeftMm) / Math.max(1, marks.length - 1));
  const off = mm(load.comFromLeftEndMm - (first.fromLeftMm + last.fromLeftMm) / 2);
  const above = aboveBottom(job, setOut, first);
  return [battenPoint(load, marks.length, spacing, off, BATTEN.value.thicknessMm, above)];
}
