import type { Arrange } from '../../group-job.ts';
import type { Up } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import type { Wall } from '../../wall/wall.ts';
import { datumOf } from '../datum.ts';
import { equalGaps, groupLength } from '../gaps.ts';
import { type BottomEdge, bottomEdgeOf } from '../heights.ts';
import type { DoesNotFit } from '../set-out.ts';
import { lengthOf, noRoomForGaps, stretchUp } from './line.ts';
import { gapTold } from './placed-across.ts';

/** Where rows stand: the bottom edge of each from the top one down, and of the whole group. Millimetres. */
export type PlacedUp = {
  ok: true;
  bottomsMm: Millimetres[];
  gapMm: Millimetres;
  group: BottomEdge;
  groupHeightMm: Millimetres;
  gap?: { formula: string; inputs: Record<string, number> };
};

/** Bottom edges of rows with one gap, or a column spread over its stretch; `place.up` places the group as it would a piece. */
export function placedUp(
  up: Up,
  wall: Wall,
  heightsMm: readonly Millimetres[],
  gapMm: Millimetres,
  spread: Arrange['spread'],
): PlacedUp | DoesNotFit {
  const datum = datumOf(wall);
  if (spread === undefined) return withGap(up, wall, heightsMm, gapMm);
  const ceiling =
    wall.heightMm === undefined || datum.aboveFloorMm === null
      ? null
      : mm(wall.heightMm - (datum.kind === 'ceiling' ? 0 : datum.aboveFloorMm));
  const stretch = stretchUp(up, ceiling);
  if ('ok' in stretch) return stretch;
  const over = lengthOf(stretch);
  const spaced = equalGaps(over, heightsMm, spread);
  if (!spaced.ok) return noRoomForGaps(spaced.overByMm, over);
  const atEnds = spread === 'ends' || heightsMm.length === 1;
  const end = atEnds ? spaced.gapMm : mm(0);
  const moved = withGap(inside(up, end), wall, heightsMm, heightsMm.length === 1 ? mm(0) : spaced.gapMm);
  return moved.ok ? { ...moved, gapMm: spaced.gapMm, gap: gapTold(over, heightsMm, atEnds) } : moved;
}

/** A height said of the end of the stretch, taken to the end of the group in it. */
function inside(up: Up, endMm: Millimetres): Up {
  if (up.by === 'centre-at') return up;
  return { by: up.by, mm: mm(up.by === 'top-at' ? up.mm - endMm : up.mm + endMm) };
}

function withGap(
  up: Up,
  wall: Wall,
  heightsMm: readonly Millimetres[],
  gapMm: Millimetres,
): PlacedUp | DoesNotFit {
  const groupHeightMm = groupLength(heightsMm, gapMm);
  const group = bottomEdgeOf(up, datumOf(wall), groupHeightMm, wall.heightMm);
  if (!group.ok) return group;
  let at = group.bottomMm + groupHeightMm;
  const bottomsMm = heightsMm.map((height) => {
    const bottom = mm(at - height);
    at = bottom - gapMm;
    return bottom;
  });
  return { ok: true, bottomsMm, gapMm, group, groupHeightMm };
}
