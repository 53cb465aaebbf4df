import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { mm } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { BaseMaterial } from '../../wall/wall.ts';
import type { Load } from '../acting/actions.ts';
import { BOARD_ONLY } from '../board/board-anchors.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { steelStudWalk } from '../board/walk-steel-studs.ts';
import { timberStudWalk } from '../board/walk-timber-studs.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { boardOf, coatOnBoard } from '../finish.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { BATTEN, standOffOf } from '../stand-off.ts';
import { shelfOf } from '../stocked-lengths.ts';
import type { Walked } from '../walked.ts';

type Walk = (place: BoardPlace) => readonly (Candidate | Unusable)[];

/** The walk of each wall that is a sheet on a frame. */
const WALKS: Partial<Record<BaseMaterial, Walk>> = {
  'plasterboard-on-timber-studs': timberStudWalk,
  'plasterboard-on-steel-studs': steelStudWalk,
};

/** Every fastening of a framed wall's walk, reckoned through in order; null for a wall that is none. */
export function framedWalk(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Walked | null {
  const walk = WALKS[job.wall.baseMaterial];
  if (!walk) return null;
  const { standOffMm, assumptions } = standOffOf(job.piece.hanging);
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
    shelf: shelfOf(job.building?.country),
    proven,
    batten: byBatten,
    tiled: finish.kind === 'tile',
    frame: job.wall.baseMaterial === 'plasterboard-on-steel-studs' ? 'steel' : 'timber',
  };
  return {
    walk: walk(place),
    assumptions: [...boardTaken, ...finish.assumptions, ...assumptions],
    basis: [basisOf(BOARD_ONLY)],
  };
}
