import type { Job } from '../job.ts';
import type { Frame, Mark } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { basisOf, uniqueBases } from '../sources.ts';
import type { Wall } from '../wall/wall.ts';
import { leftEdgeOf } from './across.ts';
import { ceilingOver, ceilingToHangBy } from './ceiling.ts';
import { onCourses } from './course-advice.ts';
import { crossChecksOf, type PlacedMark, tapeHere } from './cross-checks.ts';
import { type Datum, datumOf, datumRise } from './datum.ts';
import { type Fit, misfit } from './fit.ts';
import { type BottomEdge, bottomEdgeOf } from './heights.ts';
import { hungOf } from './hung.ts';
import { battenWhys, cordWhys } from './hung-why.ts';
import { leanWhys } from './lean-advice.ts';
import { markName } from './mark-names.ts';
import { markOffWall } from './mark-off-wall.ts';
import { frameWhys, markWhys, slopeWhys } from './mark-why.ts';
import { tiltWhys } from './marking-error.ts';
import { highestDrop, saidWithMarks } from './said-with-marks.ts';
import type { Among, LayoutResult } from './set-out.ts';
import { unsoundLength } from './sound-lengths.ts';
import { onStuds } from './stud-advice.ts';
import { GEOMETRY, TAPE_READING } from './tolerance.ts';

/**
 * Turns a job into marks, or into the reason why it does not fit. Millimetres, unrounded.
 * Mark up = frame bottom + piece height - loaded drop + seat to screw; across = frame left + hanger.
 * `among` others its marks bear its number, and what moves or levels the whole group is left to the group.
 */
export function setOut(job: Job, among?: Among): LayoutResult {
  const unsound = unsoundLength(job);
  if (unsound) return unsound;
  const { piece, wall, place } = job;
  const across = leftEdgeOf(place.across, wall.widthMm, piece.widthMm);
  if (!across.ok) return across;
  const named = datumOf(wall);
  const rightMm = mm(across.leftMm + piece.widthMm);
  const ceiling = ceilingToHangBy(wall, across.leftMm, rightMm);
  const under = bottomEdgeOf(place.up, named, piece.heightMm, ceiling);
  if (!under.ok) return under;
  const frame: Frame = {
    leftMm: across.leftMm,
    rightMm,
    bottomMm: under.bottomMm,
    topMm: mm(under.bottomMm + piece.heightMm),
  };
  const hung = hungOf(job, frame);
  const firstHookMm = (hung.ok && hung.bearings[0]?.acrossMm) || mm(0);
  const firstMarkMm = among?.level?.fromLeftMm ?? mm(frame.leftMm + firstHookMm);
  const { datum, bottom } = measuredFrom(named, under, wall, firstMarkMm);
  const fit: Fit = { frame, wall, datum, bottom, firstMarkMm };
  const bad = misfit(fit);
  if (bad) return bad;
  if (!hung.ok) return hung;

  const seat = piece.hanging.seatToScrewMm ?? mm(0);
  const placed = hung.bearings.map((bearing, nth) => ({
    id: `${among?.nth ?? ''}${markName(nth)}`,
    xMm: mm(frame.leftMm + bearing.acrossMm),
    yMm: mm(frame.topMm - bearing.dropMm + seat),
  }));
  const off = markOffWall(placed, fit);
  if (off) return off;

  const studs = onStuds(placed, wall, {
    leftMm: frame.leftMm,
    rightMm: mm(wall.widthMm - frame.rightMm),
  });
  const courses = onCourses(placed, wall, bottom.levelAboveFloorMm, job.building?.country);
  const marks = placed.map((each) => markOf(each, fit, studs?.on.get(each.id) ?? courses?.on.get(each.id)));
  const later = among?.level ? marks : marks.slice(1);
  const said = saidWithMarks(job, { fit, hung, placed, marks, studs, courses }, among);
  const why = [
    ...(among ? [] : frameWhys(across, bottom)),
    ...placed.flatMap((each, nth) => {
      const bearing = hung.bearings[nth];
      return bearing ? markWhys(each, bearing, across, bottom, piece.heightMm, seat) : [];
    }),
    ...slopeWhys(later, datum.fallMm, wall.widthMm, among?.level ?? marks[0]),
    ...(hung.batten ? [] : tiltWhys(placed)),
    ...leanWhys(piece, highestDrop(hung)),
    ...(hung.cord && piece.hanging.by === 'cord' ? cordWhys(hung.cord, piece.hanging) : []),
    ...(hung.batten && piece.hanging.by === 'batten'
      ? battenWhys(hung.batten.line, frame, piece.hanging.fromTopMm)
      : []),
  ];
  return {
    ok: true,
    frame,
    marks,
    crossChecks: [
      ...crossChecksOf(placed, frame, wall.widthMm, hung.ringToRingMm, among && `piece ${among.nth}`),
      ...tapeHere(later, datum),
    ],
    ...(hung.batten && { batten: hung.batten.line }),
    ...(hung.cord && { cord: hung.cord }),
    datumAboveFloorMm: bottom.levelAboveFloorMm,
    advice: said.advice,
    assumptions: [...bottom.assumptions, ...hung.assumptions, ...(studs?.assumptions ?? [])],
    why,
    basis: uniqueBases([
      basisOf(GEOMETRY),
      basisOf(TAPE_READING),
      ...(studs?.basis ?? []),
      ...(courses?.basis ?? []),
      ...said.basis,
      ...why.flatMap(({ basis }) => basis),
    ]),
  };
}

/** The ceiling stands in for a datum whose height is not known when that is what heights were said from: down from it at the first mark. */
export function measuredFrom(
  said: Datum,
  bottom: BottomEdge,
  wall: Wall,
  firstMarkMm: Millimetres,
): { datum: Datum; bottom: BottomEdge } {
  if (bottom.downFromMm === null || said.kind === 'ceiling') return { datum: said, bottom };
  const atFirst = ceilingOver(wall, firstMarkMm) ?? bottom.downFromMm;
  const fallMm = wall.ceilingFallMm ?? mm(0);
  return {
    datum: { kind: 'ceiling', aboveFloorMm: atFirst, fallMm, stairs: false },
    bottom: { ...bottom, downFromMm: atFirst },
  };
}

function markOf({ id, xMm, yMm }: PlacedMark, { wall, datum, bottom, firstMarkMm }: Fit, on?: string): Mark {
  const rise = datumRise(datum, wall.widthMm, firstMarkMm, xMm);
  return {
    id,
    fromLeftMm: xMm,
    fromRightMm: mm(wall.widthMm - xMm),
    ...(bottom.upKnown && { upMm: yMm }),
    ...(datum.kind !== 'ceiling' && datum.fallMm !== 0 && { upHereMm: mm(yMm - rise) }),
    ...(bottom.downFromMm !== null && { downMm: mm(bottom.downFromMm - yMm) }),
    ...(on !== undefined && { on }),
  };
}
