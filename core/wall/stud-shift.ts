import { type Millimetres, mm } from '../quantity.ts';
import { type KnownStuds, landing, landingRoom, studAt } from './studs.ts';

/** A sideways move of the whole piece, right positive: the least that lands every mark, and the one that centres them best. */
export type StudShift = { leastMm: Millimetres; centredMm: Millimetres };

/** How far a piece can go each way before it meets the ends of the wall. */
export type Room = { leftMm: Millimetres; rightMm: Millimetres };

/**
 * The nearest move of the whole piece that lands all its marks in studs, or null when none does within the room.
 * The first mark is brought to the middle of its stud or of the one to either side; the others' offsets then say
 * how much play there is round that place.
 */
export function shiftOntoStuds(
  marks: readonly Millimetres[],
  studs: KnownStuds,
  screwDiameterMm: Millimetres,
  room: Room,
): StudShift | null {
  const [first] = marks;
  const play = landingRoom(studs, screwDiameterMm);
  if (first === undefined || play < 0) return null;
  const home = studAt(first, studs) - first;
  let best: StudShift | null = null;
  for (const stud of [-1, 0, 1]) {
    const found = playAround(home + stud * studs.spacingMm, marks, studs, play, room);
    const lands =
      found && marks.every((mark) => landing(mm(mark + found.centredMm), studs, screwDiameterMm).on);
    if (lands && (best === null || Math.abs(found.leastMm) < Math.abs(best.leastMm))) best = found;
  }
  return best;
}

function playAround(
  shift: number,
  marks: readonly Millimetres[],
  studs: KnownStuds,
  play: number,
  room: Room,
): StudShift | null {
  let low = Math.max(0 - play, 0 - room.leftMm - shift);
  let high = Math.min(play, room.rightMm - shift);
  for (const mark of marks) {
    const moved = mm(mark + shift);
    const off = moved - studAt(moved, studs);
    low = Math.max(low, 0 - play - off);
    high = Math.min(high, play - off);
  }
  if (low > high) return null;
  const least = Math.min(Math.max(0, shift + low), shift + high);
  return { leastMm: mm(least), centredMm: mm(shift + (low + high) / 2) };
}
