import type { CrossCheck, Frame, Mark } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Datum, datumName } from './datum.ts';
import { NOISE, TAPE_READING } from './tolerance.ts';

/** A mark with its height, which is known in the frame's own heights even where the floor is not. */
export type PlacedMark = { id: string; xMm: Millimetres; yMm: Millimetres };

const check = (text: string, expectMm: Millimetres): CrossCheck => ({
  text,
  expectMm,
  toleranceMm: TAPE_READING.value,
});

/**
 * Lengths that must come out when marks are measured from elsewhere: mark to mark with the tape, both ends of the
 * wall, the frame's edges, hanger to hanger on the piece. Millimetres, each within 2.
 */
export function crossChecksOf(
  placed: readonly PlacedMark[],
  frame: Frame,
  wallWidthMm: Millimetres,
  ringToRingMm: Millimetres | null,
  what = 'the piece',
): CrossCheck[] {
  const [first] = placed;
  const last = placed.at(-1);
  if (!first || !last) return [];
  return [
    ...placed.slice(1).map((mark, at) => markToMark(placed[at] ?? first, mark)),
    ...(placed.length > 2 ? [markToMark(first, last)] : []),
    ...(ringToRingMm === null ? [] : [check(`hanger to hanger on ${what}`, ringToRingMm)]),
    ...placed.map(({ id }) => check(`${id} from the left plus ${id} from the right`, wallWidthMm)),
    ...placed
      .filter((mark) => mark === first || Math.abs(mark.yMm - first.yMm) > NOISE)
      .flatMap((mark) => toTheEdges(mark, frame)),
  ];
}

/** A tape between two marks lies along the slope, where they are uneven. */
function markToMark(one: PlacedMark, other: PlacedMark): CrossCheck {
  return check(`${one.id} to ${other.id}`, mm(Math.hypot(other.xMm - one.xMm, other.yMm - one.yMm)));
}

function toTheEdges({ id, yMm }: PlacedMark, frame: Frame): CrossCheck[] {
  const above = frame.topMm - yMm;
  const top = above >= 0 ? `${id} up to the top of the frame` : `${id} down to the top of the frame`;
  return [
    check(top, mm(Math.abs(above))),
    check(`${id} down to the bottom of the frame`, mm(yMm - frame.bottomMm)),
  ];
}

/** With a datum out of level: what a tape straight below each later mark reads, so that it is not taken for an error. */
export function tapeHere(later: readonly Mark[], datum: Datum): CrossCheck[] {
  return later.flatMap(({ id, upHereMm }) =>
    upHereMm === undefined
      ? []
      : [check(`${id} up from ${datumName(datum.kind)} straight below it`, upHereMm)],
  );
}

/** Whether a span measured on the piece agrees with the one its hangers' places give: within 2 mm is tape reading. */
export function spanAgrees(
  measuredMm: Millimetres,
  derivedMm: Millimetres,
): { agrees: boolean; offByMm: Millimetres } {
  const offByMm = mm(measuredMm - derivedMm);
  return { agrees: Math.abs(offByMm) <= TAPE_READING.value + NOISE, offByMm };
}
