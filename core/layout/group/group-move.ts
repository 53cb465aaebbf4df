import type { Frame } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { NOISE } from '../tolerance.ts';

/** How far a group may go each way before it meets an end of the wall, the ceiling or the datum. Millimetres. */
export type GroupRoom = { left: number; right: number; down: number; up: number };

export type GroupMove = { way: 'left' | 'right' | 'down' | 'up'; byMm: Millimetres };

/** Whether two rectangles cover a common part, and not only touch. */
export function overlap(one: Frame, other: Frame): boolean {
  return (
    one.rightMm - other.leftMm > NOISE &&
    other.rightMm - one.leftMm > NOISE &&
    one.topMm - other.bottomMm > NOISE &&
    other.topMm - one.bottomMm > NOISE
  );
}

/** The least move of all frames together that takes each off every opening, within the room there is; null when none does. */
export function groupMove(
  frames: readonly Frame[],
  openings: readonly Frame[],
  room: GroupRoom,
): GroupMove | null {
  const moves = frames.flatMap((frame) =>
    openings.flatMap((opening) => [
      { way: 'left' as const, by: frame.rightMm - opening.leftMm },
      { way: 'right' as const, by: opening.rightMm - frame.leftMm },
      { way: 'down' as const, by: frame.topMm - opening.bottomMm },
      { way: 'up' as const, by: opening.topMm - frame.bottomMm },
    ]),
  );
  const clears = ({ way, by }: { way: GroupMove['way']; by: number }): boolean =>
    frames.every((frame) => !openings.some((opening) => overlap(moved(frame, way, by), opening)));
  const best = moves
    .filter(({ way, by }) => by > NOISE && by <= room[way] + NOISE)
    .sort((one, other) => one.by - other.by)
    .find(clears);
  return best ? { way: best.way, byMm: mm(best.by) } : null;
}

function moved(frame: Frame, way: GroupMove['way'], by: number): Frame {
  const across = way === 'left' ? 0 - by : way === 'right' ? by : 0;
  const up = way === 'down' ? 0 - by : way === 'up' ? by : 0;
  return {
    leftMm: mm(frame.leftMm + across),
    rightMm: mm(frame.rightMm + across),
    bottomMm: mm(frame.bottomMm + up),
    topMm: mm(frame.topMm + up),
  };
}
