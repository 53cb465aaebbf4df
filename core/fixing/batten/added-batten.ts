import { type Kilograms, type Millimetres, mm, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { aboveBottom, type Load } from '../acting/actions.ts';
import { outwardPull } from '../acting/outward-pull.ts';
import type { PointLoad } from '../acting/worst-check.ts';
import { isOffRoutes } from '../board/off-routes.ts';
import type { Place } from '../masonry/fixing-place.ts';
import { BATTEN } from '../stand-off.ts';
import { pryingPull, worstOfRow } from './prying.ts';

const BATTEN_ROW = sourced(
  { least: 4, most: 6, spacing: mm(250), ends: mm(50) },
  'common-practice',
  'clay brick, solid: line 5, four or more, 250 to 400 apart',
  'common-practice',
);

/** Loads when the hangers go onto a batten that is added for them; or why it can't be. */
export function addedBatten(
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

/** The worst of a batten's screws: its share with the weight off the middle, the piece's pull and the prying, N. */
export function battenPoint(
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
