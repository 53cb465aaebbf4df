import type { Job } from '../job.ts';
import type { SetOut } from '../layout/set-out.ts';
import type { Assumption } from '../plan-shape.ts';
import { mm } from '../quantity.ts';
import { type Basis, basisOf } from '../sources.ts';
import type { Load } from './acting/actions.ts';
import { splitBattenPoint } from './batten/batten-actions.ts';
import { acrossStuds } from './board/across-studs.ts';
import { BOARD_ANCHORS, BOARD_ONLY } from './board/board-anchors.ts';
import { boardCandidate } from './board/board-candidate.ts';
import type { BoardPlace } from './board/board-place.ts';
import { studCandidate } from './board/stud-candidate.ts';
import type { Candidate, Unusable } from './candidate.ts';
import { beforeMasonry, boardOf, coatOnBoard } from './finish.ts';
import { masonryCandidate } from './masonry/masonry-candidate.ts';
import { walkOf } from './masonry/walks.ts';
import type { HoldingCap } from './proof/holding-cap.ts';
import { BATTEN, standOffOf } from './stand-off.ts';
import type { Gauge } from './steel/screw-sizes.ts';
import { shelfOf } from './stocked-lengths.ts';

export type Walked = {
  readonly walk: readonly (Candidate | Unusable)[];
  readonly assumptions: readonly Assumption[];
  readonly basis: readonly Basis[];
};

/** Every fastening of a wall's walk, reckoned through in order; null for a wall that is not computed yet. */
export function walkedOf(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Walked | null {
  const walk = walkOf(job.wall);
  const shelf = shelfOf(job.building?.country);
  const { standOffMm, assumptions } = standOffOf(job.piece.hanging);
  if (walk) {
    const finish = beforeMasonry(job);
    const place = { job, setOut, load, finish, standOffMm, shelf, proven };
    return {
      walk: walk.value
        .filter(({ only }) => !only || only === job.piece.hanging.by)
        .map((row) => masonryCandidate(row, place)),
      assumptions: [...finish.assumptions, ...assumptions, ...unitAssumed(job)],
      basis: [basisOf(walk)],
    };
  }
  if (job.wall.baseMaterial !== 'plasterboard-on-timber-studs') return null;
  const finish = coatOnBoard(job.wall);
  const { boardMm, layers, assumptions: boardTaken } = boardOf(job);
  const byBatten = job.piece.hanging.by === 'batten';
  const place: BoardPlace = {
    job,
    setOut,
    load,
    boardMm,
    layers,
    beyondMm: mm(boardMm + finish.thicknessMm),
    standOffMm,
    outsideMm: byBatten ? BATTEN.value.thicknessMm : standOffMm,
    armMm: byBatten ? mm(BATTEN.value.thicknessMm / 2 + standOffMm) : standOffMm,
    shelf,
    proven,
    batten: byBatten,
    tiled: finish.kind === 'tile',
  };
  return {
    walk: boardWalk(place),
    assumptions: [...boardTaken, ...finish.assumptions, ...assumptions],
    basis: [basisOf(BOARD_ONLY)],
  };
}

/** Into the stud first; then the board alone while it is light; then a board across studs. Lines of the trade's walk 1.8. */
const INTO_STUDS: readonly (readonly [Gauge, number])[] = [
  [10, 38],
  [10, 50],
  [12, 50],
  [14, 50],
];
const ACROSS: readonly Gauge[] = [10, 12, 14];

function boardWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
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
    : [...inTimber, ...anchors, ...across, ...toTheCap];
}

function unitAssumed({ wall }: Job): Assumption[] {
  const { baseMaterial, cores } = wall;
  if (baseMaterial === 'natural-stone')
    return [
      {
        field: 'wall.stone',
        value: 'soft',
        because: 'hard or soft stone was not said, so the caps are those of soft stone',
      },
    ];
  if (baseMaterial !== 'clay-brick' && baseMaterial !== 'concrete-block') return [];
  const taken: Assumption[] = [];
  if (cores === undefined || cores === 'unknown') {
    taken.push({
      field: 'wall.cores',
      value: 'unknown',
      because:
        'whether it has holes was not said, so it is reckoned as if it had, until every hole proves it solid',
    });
  }
  if (baseMaterial === 'concrete-block' && cores === 'solid') {
    taken.push({
      field: 'wall.aggregate',
      value: 'light',
      because: 'dense or light block was not said, so the caps are those of light block',
    });
  }
  return taken;
}
