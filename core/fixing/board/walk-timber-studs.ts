import { splitBattenPoint } from '../batten/batten-actions.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { acrossStuds } from './across-studs.ts';
import { BOARD_ANCHORS } from './board-anchors.ts';
import { boardCandidate } from './board-candidate.ts';
import type { BoardPlace } from './board-place.ts';
import { pinHook } from './pin-hook.ts';
import { studCandidate } from './stud-candidate.ts';

/** Into the stud first; then the board alone while it is light; then a board across studs. Lines of the trade's walk 1.8. */
const INTO_STUDS: readonly (readonly [Gauge, number])[] = [
  [10, 38],
  [10, 50],
  [12, 50],
  [14, 50],
];
const ACROSS: readonly Gauge[] = [10, 12, 14];

/** Plasterboard on timber studs, every fastening in order. */
export function timberStudWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
  const points = place.batten
    ? splitBattenPoint(place.job, place.setOut, place.load)
    : place.load.actions.perMark;
  const across = ACROSS.map((gauge) => acrossStuds(gauge, place));
  const anchors = BOARD_ANCHORS.map((anchor) => boardCandidate(anchor, place, points, 'usual'));
  // Between what is usual and the cap a toggle comes last: timber first.
  const toTheCap = BOARD_ANCHORS.filter((anchor) => anchor.toggle).map((anchor) =>
    boardCandidate(anchor, place, points, 'to-the-cap'),
  );
  const inTimber = INTO_STUDS.map(([gauge, into]) => studCandidate(gauge, into, place));
  return place.batten
    ? [...across, ...anchors, ...toTheCap]
    : [...inTimber, ...anchors, ...across, ...toTheCap, pinHook(1, place), pinHook(2, place)];
}
