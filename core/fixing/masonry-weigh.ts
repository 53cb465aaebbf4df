import type { Job } from '../job.ts';
import { type Kilograms, type Millimetres, mm, type Newtons, newtons } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import { aboveBottom, type Load } from './actions.ts';
import { coneCharacteristic, GAMMA_MC, LEAST_DEPTH, UNKNOWN_CONCRETE } from './concrete-cone.ts';
import { type FittedHole, fitHole } from './fit-hole.ts';
import type { Place } from './fixing-place.ts';
import { type HoldingCap, practiceCap } from './holding-cap.ts';
import { isOffRoutes } from './off-routes.ts';
import { outwardPull } from './outward-pull.ts';
import { pryingPull, worstOfRow } from './prying.ts';
import { bendingResistance, shankStrength, steelBasis } from './shank-strength.ts';
import { BATTEN } from './stand-off.ts';
import { GAMMA_G } from './steel.ts';
import type { WalkRow } from './walk-row.ts';
import { envelope, linear, type PointLoad, type WorstCheck, worse } from './worst-check.ts';

export type Weighed = {
  readonly ok: true;
  readonly row: WalkRow;
  readonly count: number;
  readonly point: PointLoad;
  readonly worst: WorstCheck;
  readonly cap: HoldingCap;
  readonly hole: FittedHole;
};
export type Unfit = { readonly ok: false; readonly row: WalkRow; readonly because: string };

const BATTEN_ROW = sourced(
  { least: 4, most: 6, spacing: mm(250), ends: mm(50) },
  'common-practice',
  'clay brick, solid: line 5, four or more, 250 to 400 apart',
  'common-practice',
);

/** Reckons one row of a walk for a piece: whether it fits, and how near its limit it is. */
export function weigh(row: WalkRow, place: Place): Weighed | Unfit {
  const { job, finish } = place;
  const by = job.piece.hanging.by;
  const unfit = (because: string): Unfit => ({ ok: false, row, because });
  if (row.voidMm !== undefined && !((job.wall.voidMm ?? 0) >= row.voidMm)) {
    return unfit(`it needs ${row.voidMm} mm clear behind the face, and that was not measured`);
  }
  if (by === 'keyholes' && (row.shank === 'coach-8' || row.shank === 'stud-M8')) {
    return unfit('it has no head that goes into a keyhole');
  }
  const onBatten = by === 'batten' || row.onBattenWholeKg !== undefined;
  if (by === 'batten' && row.onBattenWholeKg !== undefined)
    return unfit('the piece hangs on a batten already');
  const points =
    row.onBattenWholeKg === undefined ? setPoints(place) : addedBatten(place, row.onBattenWholeKg);
  if (typeof points === 'string') return unfit(points);

  const hole = fitHole(row, place, onBatten);
  if (typeof hole === 'string') return unfit(hole);
  const arm = mm(
    finish.thicknessMm +
      (onBatten
        ? BATTEN.value.thicknessMm / 2 + place.standOffMm * (by === 'batten' ? 1 : 0)
        : place.standOffMm),
  );
  const cap = place.proven ?? practiceCap(row.cap, row.plugMm === undefined ? 'anchor-cap' : 'plug-cap');
  const point = envelope(points);
  let worst: WorstCheck | null = null;
  for (const each of points) worst = worse(worst, worstOf(row, each, arm, cap, job));
  if (worst === null) return unfit('there is no mark for it');
  const count = row.onBattenWholeKg === undefined ? place.setOut.marks.length : points.length;
  return { ok: true, row, count, point, worst, cap, hole: { ...hole, armMm: arm } };
}

function worstOf(row: WalkRow, point: PointLoad, arm: Millimetres, cap: HoldingCap, job: Job): WorstCheck {
  const steel = shankStrength(row.shank);
  const bending = bendingResistance(row.shank, arm, point.tensionN);
  let worst: WorstCheck = {
    mode: cap.mode,
    resistanceN: cap.forceN,
    utilisation: linear(point, cap.forceN, cap.forceN),
    basis: cap.basis,
    noSource: cap.noSource,
  };
  const check = (
    mode: 'screw-bending' | 'screw-shear' | 'screw-tension',
    resistanceN: Newtons,
    utilisation: number,
  ) => {
    if (utilisation > worst.utilisation) {
      worst = { mode, resistanceN, utilisation, basis: steelBasis(mode, row.shank), noSource: false };
    }
  };
  check('screw-bending', bending, point.shearN === 0 ? 0 : point.shearN / bending);
  check('screw-shear', steel.shearN, linear(point, steel.shearN, steel.tensionN));
  check('screw-tension', steel.tensionN, point.tensionN / steel.tensionN);
  if (job.wall.baseMaterial === 'concrete' && row.embedMm >= LEAST_DEPTH.value) {
    const cone = coneForGood(mm(row.embedMm));
    const utilisation = linear(point, cone, cone);
    if (utilisation > worst.utilisation)
      worst = { mode: 'concrete-cone', resistanceN: cone, utilisation, basis: CONE_BASIS, noSource: false };
  }
  return worst;
}

const CONE_BASIS = [basisOf(GAMMA_MC), basisOf(UNKNOWN_CONCRETE)];

function coneForGood(depthMm: Millimetres): Newtons {
  const { concrete, installation } = GAMMA_MC.value;
  const whole = coneCharacteristic('post-installed', 'cracked', UNKNOWN_CONCRETE.value.cylinderMpa, depthMm);
  return newtons(whole / (concrete * installation * GAMMA_G.value));
}

/** Loads at the marks as set out; for a split batten each of its screws, the worst of the row for all of them. */
function setPoints({ job, setOut, load }: Place): readonly PointLoad[] {
  if (job.piece.hanging.by !== 'batten') return load.actions.perMark;
  const { marks } = setOut;
  const first = marks[0];
  const last = marks.at(-1);
  if (!first || !last) return [];
  const spacing = mm((last.fromLeftMm - first.fromLeftMm) / Math.max(1, marks.length - 1));
  const middle = (first.fromLeftMm + last.fromLeftMm) / 2;
  const off = mm(load.comFromLeftEndMm - middle);
  return [
    battenPoint(load, marks.length, spacing, off, BATTEN.value.thicknessMm, aboveBottom(job, setOut, first)),
  ];
}

/** Loads when the hangers go onto a batten that is added for them; or why it can't be. */
function addedBatten(
  { job, setOut, load, standOffMm }: Place,
  wholeKg: number,
): readonly PointLoad[] | string {
  if (load.massKg > (wholeKg as Kilograms)) return `a batten here is for ${wholeKg} kg at most`;
  const { least, most, spacing, ends } = BATTEN_ROW.value;
  const run = job.piece.widthMm - 2 * ends;
  if (run < (least - 1) * spacing) return 'the piece is too narrow to hide a batten on four plugs 250 apart';
  const screws = Math.min(most, Math.floor(run / spacing) + 1);
  const apart = mm(run / (screws - 1));
  if (!addedScrews({ job, setOut }, screws).every((xMm) => isOffRoutes(xMm, job)))
    return 'a plug of the batten would be in line with a socket, switch or pipe';
  const off = mm(BATTEN.value.thicknessMm + standOffMm);
  const above = aboveBottom(job, setOut, setOut.marks[0]);
  const one = battenPoint(load, screws, apart, load.comOffCentreMm, off, above);
  return Array.from({ length: screws }, () => one);
}

/** Where the plugs of an added batten go: evenly, the outer ones just inside the frame. Millimetres from the wall's left end. */
export function addedScrews({ job, setOut }: Pick<Place, 'job' | 'setOut'>, screws: number): Millimetres[] {
  const { ends } = BATTEN_ROW.value;
  const run = job.piece.widthMm - 2 * ends;
  return Array.from({ length: screws }, (_, at) =>
    mm(setOut.frame.leftMm + ends + (run * at) / (screws - 1)),
  );
}

function battenPoint(
  load: Load,
  screws: number,
  spacing: Millimetres,
  off: Millimetres,
  offWallMm: Millimetres,
  aboveBottomMm: Millimetres,
): PointLoad {
  const { weightN } = load.actions;
  const shearN = worstOfRow(weightN, screws, spacing, off);
  const pull = outwardPull(weightN, load.comFromWallMm, aboveBottomMm) / screws;
  const prying = pryingPull(weightN, offWallMm, BATTEN.value.screwToLowerEdgeMm, screws);
  return { shearN, tensionN: newtons(pull + prying) };
}
