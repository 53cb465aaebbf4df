import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { type Kilograms, type Millimetres, mm, type Newtons, weightOf } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { BaseMaterial } from '../../wall/wall.ts';
import type { Load } from '../acting/actions.ts';
import { BOARD_ONLY } from '../board/board-anchors.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { steelStudWalk } from '../board/walk-steel-studs.ts';
import { timberStudWalk } from '../board/walk-timber-studs.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { BATTEN, standOffOf } from '../stand-off.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { shelfOf } from '../stocked-lengths.ts';
import { studCap } from '../timber/stud-strength.ts';
import type { Walked } from '../walked.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { FIBRE_CEMENT_STUD_CAPS, fibreCementWalk } from './walk-fibre-cement.ts';
import { LATH_BOARD_KG, LATH_STUD_CAPS, lathWalk } from './walk-lath.ts';
import { timberWalk } from './walk-timber.ts';

type Walk = (place: BoardPlace) => readonly (Candidate | Unusable)[];

type Framed = {
  readonly walk: Walk;
  readonly frame: BoardPlace['frame'];
  readonly studCapOf: (gauge: Gauge, boardMm: Millimetres) => Newtons | null;
  /** Diameter of the masonry bit that opens it before the wood bit. */
  readonly opensMm?: number;
  readonly acrossKg?: number;
};

const fromTable = (caps: Record<Gauge, Kilograms>) => (gauge: Gauge) => weightOf(caps[gauge]);

/** The walk of each wall that is a sheet on a frame, or wood. */
const WALLS: Partial<Record<BaseMaterial, Framed>> = {
  'plasterboard-on-timber-studs': { walk: timberStudWalk, frame: 'timber', studCapOf: studCap },
  'plasterboard-on-steel-studs': { walk: steelStudWalk, frame: 'steel', studCapOf: () => null },
  'lath-and-plaster': {
    walk: lathWalk,
    frame: 'timber',
    studCapOf: fromTable(LATH_STUD_CAPS.value),
    opensMm: 5,
    acrossKg: LATH_BOARD_KG,
  },
  'fibre-cement-on-studs': {
    walk: fibreCementWalk,
    frame: 'timber',
    studCapOf: fromTable(FIBRE_CEMENT_STUD_CAPS.value),
    opensMm: 6,
  },
  timber: { walk: timberWalk, frame: 'timber', studCapOf: studCap },
};

/** Every fastening of a framed wall's walk, reckoned through in order; null for a wall that is none. */
export function framedWalk(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Walked | null {
  const framed = WALLS[job.wall.baseMaterial];
  if (!framed) return null;
  const { standOffMm, assumptions } = standOffOf(job.piece.hanging);
  const sheet = sheetOf(job);
  const byBatten = job.piece.hanging.by === 'batten';
  const place: BoardPlace = {
    job,
    setOut,
    load,
    boardMm: sheet.boardMm,
    layers: sheet.layers,
    beyondMm: sheet.beyondMm,
    standOffMm,
    outsideMm: byBatten ? BATTEN.value.thicknessMm : standOffMm,
    armMm: byBatten ? mm(BATTEN.value.thicknessMm / 2 + standOffMm) : standOffMm,
    shelf: shelfOf(job.building?.country),
    proven,
    batten: byBatten,
    tiled: sheet.tiled,
    frame: framed.frame,
    studCapOf: (gauge) => framed.studCapOf(gauge, sheet.boardMm),
    ...throughSheet(framed, sheet),
    ...(framed.acrossKg !== undefined && { acrossKg: framed.acrossKg }),
  };
  return {
    walk: framed.walk(place),
    assumptions: [...sheet.assumptions, ...assumptions],
    basis: [basisOf(BOARD_ONLY)],
  };
}

/** An oversize hole in the tile keeps the screw off it. */
const TILE_HOLE = sourced(
  mm(8),
  'common-practice',
  'tile over board: a stud screw through an oversize tile hole, a sleeve or washer between head and tile',
  'common-practice',
);

function throughSheet(
  { opensMm }: Framed,
  { tiled, boardMm, beyondMm }: Sheet,
): Pick<BoardPlace, 'throughSheet'> {
  // Behind the tile a hard sheet is opened with the same bit; plasterboard and wood are not.
  if (tiled)
    return {
      throughSheet: {
        kind: 'tile',
        diameterMm: TILE_HOLE.value,
        depthMm: mm(Math.ceil(opensMm === undefined ? beyondMm - boardMm : beyondMm)),
      },
    };
  if (opensMm === undefined) return {};
  return { throughSheet: { kind: 'masonry', diameterMm: mm(opensMm), depthMm: mm(Math.ceil(beyondMm)) } };
}
