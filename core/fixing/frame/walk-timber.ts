import { mm } from '../../quantity.ts';
import { acrossStuds } from '../board/across-studs.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { studCandidate } from '../board/stud-candidate.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { TIMBER, woodMm } from './timber-rules.ts';
import { timberScrew } from './timber-screw.ts';

const INTO_STUDS: readonly (readonly [Gauge, number])[] = [
  [10, 38],
  [10, 50],
  [12, 50],
  [14, 50],
];
const IN_WOOD: readonly Gauge[] = [8, 10, 12, 14];

/** Timber walls: into solid wood anywhere; lining boards at a stud, else right through while it is light, else a board across studs. */
export function timberWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
  const { solidFromMm, panelFromMm } = TIMBER.value;
  const thick = woodMm(place.job.wall) ?? place.boardMm;
  if (thick >= solidFromMm) return IN_WOOD.map((gauge) => timberScrew(gauge, mm(thick), place, 'solid'));
  const across = ([10, 12, 14] as const).map((gauge) => acrossStuds(gauge, place));
  const inStuds = INTO_STUDS.map(([gauge, into]) => studCandidate(gauge, into, place));
  if (thick < panelFromMm) return place.batten ? across : [...inStuds, ...across];
  const through = timberScrew(8, mm(thick), place, 'right-through');
  return place.batten ? [...across, through] : [...inStuds, through, ...across];
}
