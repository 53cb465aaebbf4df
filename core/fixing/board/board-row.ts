import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { knownStuds, landing, studsBetween } from '../../wall/studs.ts';
import { type Gauge, nominalOf } from '../steel/screw-sizes.ts';
import type { BoardPlace } from './board-place.ts';
import { isOffRoutes } from './off-routes.ts';

/** The studs a board or batten stands on, and the worst share of the weight that one of them takes. */
export type BoardRow = { readonly studs: number; readonly worstShare: number; readonly found: boolean };

/** The closest usual spacing of studs by shelf, mm; closer studs share worse than wider ones. */
const USUAL_SPACING = sourced(
  { AU: mm(450), UK: mm(400), US: mm(406.4) },
  'common-practice',
  'AU 450 or 600, UK 400 or 600, US 16 or 24 in centres',
  'from-memory',
);

/**
 * Studs behind the frame for a board across them, or why there is none. Where the studs are not known,
 * two at the closest usual spacing are reckoned with, placed as badly behind the frame as they can lie.
 */
export function boardRow(
  { job, setOut, shelf }: BoardPlace,
  { endMm, most }: { endMm: number; most: number },
): BoardRow | string {
  const studs = knownStuds(job.wall);
  const { leftMm, rightMm } = setOut.frame;
  const hidden = mm(rightMm - leftMm - 2 * endMm);
  if (studs) {
    const behind = studsBetween(mm(leftMm + endMm), mm(rightMm - endMm), studs, Number.POSITIVE_INFINITY);
    if (behind.length < 2) return 'fewer than two studs lie behind the frame';
    const under = behind.filter((xMm) => isOffRoutes(xMm, job)).slice(0, most);
    if (under.length < 2) return 'a stud behind the frame is in line with a socket, switch or pipe';
    return { studs: under.length, worstShare: worstShare(under, job, setOut), found: true };
  }
  const spacing = USUAL_SPACING.value[shelf];
  if (hidden < spacing) return 'where the studs are is not known, and the frame may hide only one';
  const middle = (job.piece.comFromLeftMm ?? job.piece.widthMm / 2) - endMm;
  const spread = spacing * Math.min(most - 1, Math.floor(hidden / spacing));
  const worst = Math.max(middle, hidden - middle) / spread;
  return { studs: 2, worstShare: Math.min(1, worst), found: false };
}

/** Of two or more studs the outer two carry, by where the centre of mass lies; the worst share. */
function worstShare(
  at: readonly Millimetres[],
  job: BoardPlace['job'],
  { frame }: BoardPlace['setOut'],
): number {
  const first = at[0];
  const last = at.at(-1);
  if (first === undefined || last === undefined || last <= first) return 1;
  const com = frame.leftMm + (job.piece.comFromLeftMm ?? job.piece.widthMm / 2);
  const left = (last - com) / (last - first);
  return Math.min(1, Math.max(left, 1 - left));
}

/** A batten's marks are its screws: each must be in a stud. */
export function battenRow({ job, setOut }: BoardPlace, gauge: Gauge): BoardRow | string {
  const studs = knownStuds(job.wall);
  if (!studs) return 'where the studs are is not known; find two that the batten crosses';
  const { nominalMm } = nominalOf(gauge);
  if (
    setOut.marks.length < 2 ||
    !setOut.marks.every((mark) => landing(mark.fromLeftMm, studs, nominalMm).on)
  ) {
    return 'the batten does not cross two studs';
  }
  return {
    studs: setOut.marks.length,
    worstShare: worstShare(
      setOut.marks.map((mark) => mark.fromLeftMm),
      job,
      setOut,
    ),
    found: true,
  };
}
