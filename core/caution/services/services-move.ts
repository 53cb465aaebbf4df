import { ceilingApart, lowestCeiling } from '../../layout/ceiling.ts';
import { overOpening } from '../../layout/openings.ts';
import type { Frame } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { type Room, smallestMove } from '../../wall/clear-move.ts';
import type { Facts, GroupFacts } from '../facts.ts';
import { radiusOf } from '../holes.ts';
import { once, onceOf } from '../once.ts';
import { pointsOf, zonesFor } from './services-where.ts';

/** Room sideways, from the frame to the ends of the wall. */
function sideRoom({ job, onWall: { leftMm, rightMm } }: Facts): Room {
  const width = job.wall?.widthMm ?? mm(0);
  return { leftMm: mm(-(leftMm ?? 0)), rightMm: mm(width - (rightMm ?? width)) };
}

/** Room down to what the piece stands over, and up to the ceiling; none where that is not known. */
function uprightRoom({ job, setOut, onWall: { bottomMm, topMm, leftMm, rightMm } }: Facts): Room {
  const datum = job.wall?.datum?.kind;
  const overTop = datum === 'mantel' || datum === 'furniture';
  const below = overTop ? setOut?.frame.bottomMm : bottomMm;
  const ceiling = lowestCeiling(ceilingApart(job.wall ?? {}), leftMm ?? mm(0), rightMm ?? mm(0));
  return {
    leftMm: mm(-Math.max(0, below ?? 0)),
    rightMm: mm(ceiling === null || topMm === null ? 0 : ceiling - topMm),
  };
}

/** Whether a frame, so far over and up, covers no window or door. */
function staysOffOpenings({ job, setOut }: Facts, frame: Frame, acrossMm: number, upMm: number): boolean {
  if (!setOut || !job.wall) return true;
  const { leftMm, rightMm, bottomMm, topMm } = frame;
  const moved: Frame = {
    leftMm: mm(leftMm + acrossMm),
    rightMm: mm(rightMm + acrossMm),
    bottomMm: mm(bottomMm + upMm),
    topMm: mm(topMm + upMm),
  };
  return (
    overOpening(moved, { ...job.wall, widthMm: job.wall.widthMm ?? mm(0) }, setOut.datumAboveFloorMm) === null
  );
}

const clears = (margin: boolean): string => (margin ? 'clears it with room to spare' : 'just clears it');

/** Which way and how far the whole piece has to go, or that no move serves; a hole that wandered goes back. */
export const moveText = once((facts): string => {
  if (facts.asFound) return 'The plan keeps clear of it: put the hole where the plan has it.';
  if (facts.group) return moveOfGroup(facts.group);
  return moveOf(facts, facts.setOut ? [facts.setOut.frame] : [], 'piece');
});

/** Pieces that are spaced by each other move together, each frame clear of every opening. */
const moveOfGroup = onceOf(({ facts, frames }: GroupFacts): string => moveOf(facts, frames, 'group'));

function moveOf(facts: Facts, frames: readonly Frame[], what: 'piece' | 'group'): string {
  const zones = zonesFor(facts).filter((zone) => zone.firm);
  const holes = pointsOf(facts);
  const radius: Millimetres = radiusOf(facts);
  const sideways = smallestMove(holes, zones, sideRoom(facts), radius, 'across', (by) =>
    frames.every((frame) => staysOffOpenings(facts, frame, by, 0)),
  );
  if (sideways) {
    const way = sideways.byMm < 0 ? 'left' : 'right';
    return `Move the whole ${what} at least ${Math.abs(sideways.byMm)} mm to the ${way}: that ${clears(sideways.margin)}.`;
  }
  const upright = smallestMove(holes, zones, uprightRoom(facts), radius, 'up', (by) =>
    frames.every((frame) => staysOffOpenings(facts, frame, 0, by)),
  );
  if (upright) {
    return `No move sideways clears it. ${upright.byMm < 0 ? 'Lower' : 'Raise'} the whole ${what} at least ${Math.abs(upright.byMm)} mm: that ${clears(upright.margin)}.`;
  }
  return 'No move along this wall clears it: choose another wall, or a picture rail that needs no hole.';
}
