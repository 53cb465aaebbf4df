import { splitBattenPoint } from '../batten/batten-actions.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { acrossSteel } from './across-steel.ts';
import { BOARD_ANCHORS } from './board-anchors.ts';
import { boardCandidate } from './board-candidate.ts';
import type { BoardPlace } from './board-place.ts';
import { flangeToggle } from './flange-toggle.ts';
import { pinHook } from './pin-hook.ts';
import { thinSteelScrew } from './thin-steel-screw.ts';

/** Plasterboard on steel studs, every fastening in order: the flange, the board while it is light, a board across studs. Lines of the trade's walk 1.9. */
export function steelStudWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
  const points = place.batten
    ? splitBattenPoint(place.job, place.setOut, place.load)
    : place.load.actions.perMark;
  const across = [acrossSteel('strap-toggle', place), acrossSteel('steel-stud-screw', place)];
  const anchors = BOARD_ANCHORS.map((anchor) => boardCandidate(anchor, place, points, 'usual'));
  const toTheCap = BOARD_ANCHORS.filter((anchor) => anchor.toggle).map((anchor) =>
    boardCandidate(anchor, place, points, 'to-the-cap'),
  );
  if (place.batten) return [...across, ...anchors, ...toTheCap];
  return [
    flangeToggle(place, 'usual'),
    thinSteelScrew(place, 'usual'),
    ...anchors,
    ...across,
    flangeToggle(place, 'to-the-cap'),
    thinSteelScrew(place, 'to-the-cap'),
    ...toTheCap,
    pinHook(1, place),
    pinHook(2, place),
  ];
}
