import type { Job } from '../../job.ts';
import { type Millimetres, mm, type Newtons, newtons } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { envelope, linear, type PointLoad, type WorstCheck, worse } from '../acting/worst-check.ts';
import { addedBatten } from '../batten/added-batten.ts';
import { splitBattenPoint } from '../batten/batten-actions.ts';
import { type HoldingCap, practiceCap } from '../proof/holding-cap.ts';
import { BATTEN } from '../stand-off.ts';
import { bendingResistance, shankStrength, steelBasis } from '../steel/shank-strength.ts';
import { GAMMA_G } from '../steel/steel.ts';
import { coneCharacteristic, GAMMA_MC, LEAST_DEPTH, UNKNOWN_CONCRETE } from './concrete-cone.ts';
import { type FittedHole, fitHole } from './fit-hole.ts';
import type { Place } from './fixing-place.ts';
import { isHexHeaded, type WalkRow } from './walk-row.ts';

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

/** Reckons one row of a walk for a piece: whether it fits, and how near its limit it is. */
export function weigh(row: WalkRow, place: Place): Weighed | Unfit {
  const { job, finish } = place;
  const by = job.piece.hanging.by;
  const unfit = (because: string): Unfit => ({ ok: false, row, because });
  if (row.voidMm !== undefined && !((job.wall.voidMm ?? 0) >= row.voidMm)) {
    return unfit(`it needs ${row.voidMm} mm clear behind the face, and that was not measured`);
  }
  if (by === 'keyholes' && isHexHeaded(row.shank)) {
    return unfit('it has no head that goes into a keyhole');
  }
  const onBatten = by === 'batten' || row.onBattenWholeKg !== undefined;
  if (by === 'batten' && row.onBattenWholeKg !== undefined)
    return unfit('the piece hangs on a batten already');
  const points =
    row.onBattenWholeKg === undefined
      ? by === 'batten'
        ? splitBattenPoint(job, place.setOut, place.load)
        : place.load.actions.perMark
      : addedBatten(place, row.onBattenWholeKg);
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
    acting: point,
    allowed: { shearN: cap.forceN, tensionN: cap.forceN },
  };
  const check = (
    mode: 'screw-bending' | 'screw-shear' | 'screw-tension',
    resistanceN: Newtons,
    utilisation: number,
  ) => {
    if (utilisation > worst.utilisation) {
      const allowed = { shearN: mode === 'screw-bending' ? bending : steel.shearN, tensionN: steel.tensionN };
      const basis = steelBasis(mode, row.shank);
      worst = { mode, resistanceN, utilisation, basis, noSource: false, acting: point, allowed };
    }
  };
  check('screw-bending', bending, point.shearN === 0 ? 0 : point.shearN / bending);
  check('screw-shear', steel.shearN, linear(point, steel.shearN, steel.tensionN));
  check('screw-tension', steel.tensionN, point.tensionN / steel.tensionN);
  if (job.wall.baseMaterial === 'concrete' && row.embedMm >= LEAST_DEPTH.value) {
    const cone = coneForGood(mm(row.embedMm));
    const utilisation = linear(point, cone, cone);
    if (utilisation > worst.utilisation)
      worst = {
        ...{ mode: 'concrete-cone', resistanceN: cone, utilisation, basis: CONE_BASIS, noSource: false },
        ...{ acting: point, allowed: { shearN: cone, tensionN: cone } },
      };
  }
  return worst;
}

const CONE_BASIS = [basisOf(GAMMA_MC), basisOf(UNKNOWN_CONCRETE)];

function coneForGood(depthMm: Millimetres): Newtons {
  const { concrete, installation } = GAMMA_MC.value;
  const whole = coneCharacteristic('post-installed', 'cracked', UNKNOWN_CONCRETE.value.cylinderMpa, depthMm);
  return newtons(whole / (concrete * installation * GAMMA_G.value));
}
