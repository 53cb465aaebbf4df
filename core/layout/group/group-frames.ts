import type { GroupJob } from '../../group-job.ts';
import type { Job, Up } from '../../job.ts';
import type { Frame } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { ceilingToHangBy } from '../ceiling.ts';
import { hungOf } from '../hung.ts';
import type { DoesNotFit } from '../set-out.ts';
import { unsoundLength } from '../sound-lengths.ts';
import { type Cell, type Cells, cellsOf, columnWidths, reachOf, rowReach } from './cells.ts';
import { type PlacedAcross, placedAcross } from './placed-across.ts';
import { type PlacedUp, placedUp } from './placed-up.ts';

/** Where each piece of a group comes on the wall, in the order given, and how that was reckoned. Millimetres. */
export type GroupFrames = {
  ok: true;
  frames: Frame[];
  /** Round all of them. */
  box: Frame;
  cells: Cells;
  /** Of the columns from the left, and of the rows from the top. */
  widthsMm: Millimetres[];
  heightsMm: Millimetres[];
  across: PlacedAcross;
  up: PlacedUp;
};

/** The job of one piece of a group, before its own place is known. */
export function jobOfPiece({ pieces: _, arrange: __, ...rest }: GroupJob, piece: Job['piece']): Job {
  return { ...rest, piece };
}

/**
 * Frames of a group: columns as wide and rows as high as what is in them, gaps by edges, each piece in the middle of
 * its column and on the line of its row; or why they can't be. Millimetres, unrounded.
 */
export function groupFrames(job: GroupJob): GroupFrames | DoesNotFit {
  const measured: Cell[] = [];
  for (const [at, piece] of job.pieces.entries()) {
    const cell = cellOf(jobOfPiece(job, piece));
    if ('ok' in cell) return { ...cell, text: `Piece ${at + 1}: ${cell.text}` };
    measured.push(cell);
  }
  const { arrange, place, wall } = job;
  const align = arrange.align ?? 'centre';
  const cells = cellsOf(arrange, measured.length);
  const widths = columnWidths(cells, measured);
  const column = arrange.as === 'column';
  const across = placedAcross(place.across, wall.widthMm, widths, column ? { gapMm: mm(0) } : arrange);
  if (!across.ok) return across;
  const reaches = cells.rows.map((row) => rowReach(row, measured, align));
  const heights = reaches.map((each) => mm(each.aboveMm + each.belowMm));
  const gapUp = arrange.rowGapMm ?? arrange.gapMm ?? across.gapMm;
  const rightMm = mm((across.leftsMm.at(-1) ?? 0) + (widths.at(-1) ?? 0));
  const ceiling = ceilingToHangBy(wall, across.leftsMm[0] ?? mm(0), rightMm);
  const under = ceiling === undefined ? wall : { ...wall, heightMm: ceiling };
  const up = placedUp(place.up, under, heights, gapUp, column ? arrange.spread : undefined);
  if (!up.ok) return up;

  const frames = cells.rows.flatMap((row, at) =>
    row.map((nth, columnAt) => {
      const cell = measured[nth] as Cell;
      const lineMm = (up.bottomsMm[at] ?? 0) + (reaches[at]?.belowMm ?? 0);
      const free = (widths[columnAt] ?? 0) - cell.widthMm;
      return frameOf(
        mm((across.leftsMm[columnAt] ?? 0) + free / 2),
        mm(lineMm - reachOf(cell, align).belowMm),
        cell,
      );
    }),
  );
  return { ok: true, frames, box: boxOf(frames), cells, widthsMm: widths, heightsMm: heights, across, up };
}

function cellOf(job: Job): Cell | DoesNotFit {
  const unsound = unsoundLength(job);
  if (unsound) return unsound;
  const { widthMm, heightMm, hanging } = job.piece;
  const hung = hungOf(job, frameOf(mm(0), mm(0), { widthMm, heightMm }));
  if (!hung.ok) return hung;
  const drop = (hung.bearings[0]?.dropMm ?? 0) - (hanging.seatToScrewMm ?? 0);
  return { widthMm, heightMm, markDropMm: mm(drop) };
}

function frameOf(
  leftMm: Millimetres,
  bottomMm: Millimetres,
  { widthMm, heightMm }: Pick<Cell, 'widthMm' | 'heightMm'>,
): Frame {
  return { leftMm, rightMm: mm(leftMm + widthMm), bottomMm, topMm: mm(bottomMm + heightMm) };
}

/** The rectangle round some frames. Millimetres. */
export function boxOf(frames: readonly Frame[]): Frame {
  return {
    leftMm: mm(Math.min(...frames.map((each) => each.leftMm))),
    rightMm: mm(Math.max(...frames.map((each) => each.rightMm))),
    bottomMm: mm(Math.min(...frames.map((each) => each.bottomMm))),
    topMm: mm(Math.max(...frames.map((each) => each.topMm))),
  };
}

/** How high a frame is, said the way the group's height was: down from the ceiling, or up to its bottom edge. */
export function upOf(frame: Frame, { place, wall }: GroupJob, { group, groupHeightMm }: PlacedUp): Up {
  if (place.up.by !== 'below-ceiling') return { by: 'bottom-above', mm: frame.bottomMm };
  const ceiling = ceilingToHangBy(wall, frame.leftMm, frame.rightMm);
  if (wall.datum?.kind !== 'ceiling' && ceiling !== undefined) {
    return { by: 'below-ceiling', mm: mm(ceiling - (group.levelAboveFloorMm ?? 0) - frame.topMm) };
  }
  const below = group.inputs['below the ceiling'] ?? place.up.mm;
  return { by: 'below-ceiling', mm: mm(below + group.bottomMm + groupHeightMm - frame.topMm) };
}
