import type { GroupJob } from '../../group-job.ts';
import type { Assumption, Frame } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import type { Accessory } from '../../wall/wall.ts';
import { lengthText } from '../length-text.ts';
import { edgesOf, openingsOf, overOpening } from '../openings.ts';
import type { DoesNotFit } from '../set-out.ts';
import { boxOf, type GroupFrames } from './group-frames.ts';
import { groupMove, overlap } from './group-move.ts';
import { stretchAcross } from './line.ts';
import { beside, type Part, partedRun } from './parted.ts';

/** A group clear of windows and doors: as it was, or a row spread on each side of what is in its way. */
export type Around = { ok: true; placed: GroupFrames; parts: Part[]; assumptions: Assumption[] };

/**
 * A row with equal gaps parts where a window or a door stands in it; a group with one gap, a column or a grid keeps
 * its gaps, and is a reason why not that names the piece in the way and the move of all that frees it.
 */
export function aroundOpenings(job: GroupJob, placed: GroupFrames): Around | DoesNotFit {
  const asPlaced: Around = { ok: true, placed, parts: [], assumptions: [] };
  const level = placed.up.group.levelAboveFloorMm;
  if (level === null) return asPlaced;
  const clash = firstClash(job, placed.frames, level);
  if (clash === null) return asPlaced;
  const inTheWay = openingsOf(job.wall).filter((each) => reaches(placed.box, edgesOf(each, level)));
  const { arrange, place, wall } = job;
  if (arrange.as !== 'row' || arrange.spread === undefined)
    return { ...clash, clears: moveOf(job, placed, level) };

  const whole = stretchAcross(place.across, wall.widthMm);
  const blocked = inTheWay.map((each) => {
    const { leftMm, rightMm } = edgesOf(each, level);
    return { fromMm: leftMm, toMm: rightMm };
  });
  const widths = job.pieces.map((piece) => piece.widthMm);
  const parts = partedRun(whole, beside(whole, blocked), widths, arrange.spread);
  if (parts === null) {
    const clears = 'Leave a piece out, use smaller ones, or choose another wall.';
    return { ...clash, text: `${clash.text} Beside it there is not room for all of them.`, clears };
  }
  const lefts = parts.flatMap((part) => part.leftsMm);
  const frames = placed.frames.map((frame, at) => movedTo(frame, lefts[at] ?? frame.leftMm));
  return {
    ok: true,
    placed: { ...placed, frames, box: boxOf(frames) },
    parts: parts.filter((part) => part.leftsMm.length > 0),
    assumptions: [spreadBeside(arrange.spread, inTheWay, parts)],
  };
}

/** The first piece that covers part of a window or a door, named. */
function firstClash({ wall }: GroupJob, frames: readonly Frame[], level: Millimetres): DoesNotFit | null {
  for (const [at, frame] of frames.entries()) {
    const clash = overOpening(frame, wall, level, `Piece ${at + 1}`);
    if (clash) return clash;
  }
  return null;
}

/** Whether an opening is as high as the row, wherever across it is. */
const reaches = (box: Frame, opening: Frame): boolean =>
  overlap(box, { ...opening, leftMm: box.leftMm, rightMm: box.rightMm });

const movedTo = (frame: Frame, leftMm: Millimetres): Frame => ({
  ...frame,
  leftMm,
  rightMm: mm(leftMm + frame.rightMm - frame.leftMm),
});

function moveOf({ arrange, wall }: GroupJob, { frames, box }: GroupFrames, level: Millimetres): string {
  const openings = openingsOf(wall).map((each) => edgesOf(each, level));
  const move = groupMove(frames, openings, {
    left: box.leftMm,
    right: wall.widthMm - box.rightMm,
    down: box.bottomMm,
    up: (wall.heightMm ?? 0) - level - box.topMm,
  });
  const spread = arrange.as === 'row' ? ', or spread them evenly, which parts the row beside it' : '';
  return move
    ? `Move the whole group at least ${lengthText(move.byMm)} ${move.way}${spread}.`
    : `No move of the whole group along this wall clears it: leave a piece out, choose another wall${spread}.`;
}

function spreadBeside(
  spread: 'ends' | 'flush',
  inTheWay: readonly Accessory[],
  parts: readonly Part[],
): Assumption {
  const what = inTheWay.map((each) => `the ${each.kind}`).join(' and ');
  const shares = parts
    .filter((part) => part.leftsMm.length > 0)
    .map(
      ({ leftsMm, stretch, gapMm }) =>
        `${leftsMm.length} between ${lengthText(stretch.fromMm)} and ${lengthText(stretch.toMm)} with gaps of ${lengthText(gapMm)}`,
    );
  return {
    field: 'arrange.spread',
    value: spread,
    because: `one even run would cover part of ${what}, so the pieces are spread on each side of it: ${shares.join(', ')}`,
  };
}
