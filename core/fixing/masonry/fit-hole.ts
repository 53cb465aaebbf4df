import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { BATTEN } from '../stand-off.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { type HeadWanted, stockedScrew } from '../stocked-lengths.ts';
import type { Place } from './fixing-place.ts';
import { holeDepth, leastScrew } from './hole.ts';
import { shankMm, type WalkRow } from './walk-row.ts';

/** Hole, plug and screw that go together, mm. `armMm` is from the base material out to the load. */
export type FittedHole = {
  readonly depthMm: Millimetres;
  readonly plugMm: Millimetres;
  readonly screwMm: Millimetres;
  readonly outsideMm: Millimetres;
  readonly stocked: boolean;
  /** True where only a countersunk or batten screw is long enough, so a washer goes under its head. */
  readonly longHead: boolean;
  readonly armMm: Millimetres;
};

/** What must stand behind the bottom of a hole so that the far face stays whole. */
const LEFT_BEHIND = sourced(mm(10), 'our-choice', 'masonry left behind a hole', 'our-choice');
/** A stud is cut to length: through the hanger, washer and nut. */
const STUD_OUTSIDE = sourced(
  mm(12),
  'common-practice',
  'washer, nut and two threads of M8',
  'common-practice',
);
export const SLEEVE_BEYOND = sourced(
  mm(5),
  'common-practice',
  'clay brick, perforated: line 3, f + sleeve + 5',
  'common-practice',
);

/** Finds the screw and the depth for a row; or says why it can't be, in a few words. */
export function fitHole(row: WalkRow, place: Place, onBatten: boolean): FittedHole | string {
  const { standOffMm, job } = place;
  const outsideMm = onBatten ? mm(BATTEN.value.thicknessMm) : standOffMm;
  const fitted = fittedBy(row, place, outsideMm, onBatten);
  if (typeof fitted === 'string') return fitted;
  const thickness = job.wall.thicknessMm;
  // Measured at an opening, a wall's thickness has its coats in it; where it has not, this errs on the shallow side.
  if (thickness !== undefined && fitted.depthMm > thickness - LEFT_BEHIND.value) {
    return `its hole of ${fitted.depthMm} mm goes too near the far face of a wall ${thickness} mm thick`;
  }
  return fitted;
}

function fittedBy(
  row: WalkRow,
  place: Place,
  outsideMm: Millimetres,
  onBatten: boolean,
): FittedHole | string {
  const finishMm = place.finish.thicknessMm;
  if (row.plugMm === undefined) return unplugged(row, finishMm, outsideMm);
  if (row.spans) return spanning(row.embedMm, finishMm, outsideMm);
  return plugged(row, row.plugMm, finishMm, outsideMm, place.shelf, headWanted(place, onBatten));
}

/** Lengths of long plugs with their own screw. */
const LONG_PLUGS = sourced(
  [80, 100, 120, 140, 160],
  'common-practice',
  'pairings: long 8 and 10 plugs, stocked lengths',
  'common-practice',
);

/** A long plug from the face of the wall through to at least `embedMm` of the base material, its own screw in it. */
function spanning(embedMm: number, finishMm: Millimetres, outsideMm: Millimetres): FittedHole | string {
  const long = LONG_PLUGS.value.find((each) => each >= finishMm + embedMm);
  if (long === undefined)
    return `no long plug reaches ${embedMm} mm into the masonry behind ${Math.round(finishMm)} mm of board and gap`;
  const plugMm = mm(long);
  const screwMm = mm(long + outsideMm);
  const depthMm = holeDepth({ finishMm: mm(0), plugMm, screwMm, outsideMm });
  return { depthMm, plugMm, screwMm, outsideMm, stocked: false, longHead: false, armMm: mm(0) };
}

/** What a hanger, or a batten, lets a screw's head be. */
function headWanted({ job }: Place, onBatten: boolean): HeadWanted {
  if (onBatten) return 'countersunk';
  return job.piece.hanging.by === 'keyholes' ? 'pan-only' : 'pan-first';
}

function plugged(
  row: WalkRow,
  plug: number,
  finishMm: Millimetres,
  outsideMm: Millimetres,
  shelf: Place['shelf'],
  head: HeadWanted,
): FittedHole | string {
  const plugMm = mm(plug);
  const gauge = row.shank as Gauge | 'coach-8';
  const least = leastScrew(outsideMm, finishMm, plugMm);
  const stocked = stockedScrew(shelf, head, gauge, least, shankMm(row.shank));
  if (stocked === null) {
    const kind = head === 'pan-only' ? 'pan or round head' : 'screw';
    return `no ${kind} of that gauge is stocked ${Math.ceil(least)} mm long`;
  }
  const { screwMm, washer } = stocked;
  const depthMm = holeDepth({ finishMm, plugMm, screwMm, outsideMm });
  return {
    depthMm,
    plugMm,
    screwMm,
    outsideMm,
    stocked: true,
    longHead: washer,
    armMm: mm(0),
  };
}

function unplugged(row: WalkRow, finishMm: Millimetres, outsideMm: Millimetres): FittedHole {
  const embedMm = mm(row.embedMm);
  const extra = row.fastener === 'resin-stud' ? STUD_OUTSIDE.value : mm(0);
  const screwMm = mm(Math.ceil(leastScrew(mm(outsideMm + extra), finishMm, embedMm)));
  const resin = mm(Math.ceil(finishMm + embedMm + (row.sleeve ? SLEEVE_BEYOND.value : 0)));
  const depthMm =
    row.fastener === 'resin-stud' ? resin : holeDepth({ finishMm, plugMm: embedMm, screwMm, outsideMm });
  return { depthMm, plugMm: embedMm, screwMm, outsideMm, stocked: false, longHead: false, armMm: mm(0) };
}
