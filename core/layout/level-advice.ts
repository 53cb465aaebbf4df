import type { Frame, Mark } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import { type Datum, datumName, datumRise } from './datum.ts';
import { lengthText } from './length-text.ts';
import { wedgeOver } from './level.ts';
import { TAPE_READING } from './tolerance.ts';

/** A gap smaller than this beside a sloping edge shows the slope (C-LV-3). */
const WEDGE_GAP = sourced(mm(300), 'our-choice', 'layout 8: top gap under 300', 'our-choice');

/** One measurement up, the rest with a level; and by how much two measurements would differ where the datum runs out. */
export function levelAdvice(marks: readonly Mark[], datum: Datum, wallWidthMm: Millimetres): string[] {
  const [first] = marks;
  const last = marks.at(-1);
  if (!first || !last || first === last) return [];
  const once =
    datum.kind === 'ceiling'
      ? `Measure down at ${first.id} only and carry the height across with a level; do not measure down twice.`
      : `Measure up at ${first.id} only and carry the height across with a level; do not measure up twice.`;
  const rise = datumRise(datum, wallWidthMm, first.fromLeftMm, last.fromLeftMm);
  if (rise === 0) return [once];
  const way = rise > 0 ? 'higher' : 'lower';
  return [
    once,
    `Measured from ${datumName(datum.kind)} at ${first.id} and again at ${last.id} the two would differ by ${lengthText(mm(Math.abs(rise)))}, since it is that much ${way} at ${last.id}.`,
  ];
}

/** "Level or parallel": where the edge beside the frame is close and runs out by more than a tape can read. */
export function levelOrParallel(
  frame: Frame,
  datum: Datum,
  wallWidthMm: Millimetres,
  ceilingMm: number | null,
): string[] {
  const gap = datum.kind === 'ceiling' ? (ceilingMm ?? Infinity) - frame.topMm : frame.bottomMm;
  const wedge = mm(Math.abs(wedgeOver(mm(frame.rightMm - frame.leftMm), datum.fallMm, wallWidthMm)));
  if (gap >= WEDGE_GAP.value || wedge <= TAPE_READING.value) return [];
  const edge = datumName(datum.kind);
  return [
    `Level or parallel? ${edge[0]?.toUpperCase()}${edge.slice(1)} runs out by ${lengthText(wedge)} over the width of the frame, and the gap is small enough to show it. These marks are level; ask the client before drilling.`,
  ];
}
