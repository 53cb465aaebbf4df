import type { Mark } from '../plan-shape.ts';
import { degrees, type Millimetres, mm } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Wall } from '../wall/wall.ts';
import { ceilingRise } from './ceiling.ts';
import { type Datum, datumName, datumRise } from './datum.ts';
import { ceilingAt, type Fit } from './fit.ts';
import { lengthText } from './length-text.ts';
import { tiltOf, wedgeOver } from './level.ts';
import { TAPE_READING } from './tolerance.ts';

/** A gap smaller than this beside a sloping edge shows the slope (C-LV-3). */
const WEDGE_GAP = sourced(mm(300), 'our-choice', 'layout 8: top gap under 300', 'our-choice');
/** An edge steeper than this is a slope and no fault of the building: nobody hangs along it. */
const MEANT_SLOPE = sourced(degrees(2), 'our-choice', 'attics, stairs: hung level', 'our-choice');

export const LEVEL_BASIS = [basisOf(WEDGE_GAP), basisOf(MEANT_SLOPE)];

/** One measurement up, the rest with a level; and by how much two measurements would differ where the datum runs out. */
export function levelAdvice(
  marks: readonly Mark[],
  datum: Datum,
  wall: Pick<Wall, 'widthMm' | 'datum'>,
): string[] {
  const [first] = marks;
  const last = marks.at(-1);
  if (!first || !last) return [];
  if (first === last) return fromTheNosing(datum, wall);
  const once =
    datum.kind === 'ceiling'
      ? `Measure down at ${first.id} only and carry the height across with a level; do not measure down twice.`
      : `Measure up at ${first.id} only and carry the height across with a level; do not measure up twice.`;
  const rise = datumRise(datum, wall.widthMm, first.fromLeftMm, last.fromLeftMm);
  if (rise === 0) return [once, ...fromTheNosing(datum, wall)];
  const way = rise > 0 ? 'higher' : 'lower';
  return [
    once,
    `Measured from ${datumName(datum.kind)} at ${first.id} and again at ${last.id} the two would differ by ${lengthText(mm(Math.abs(rise)))}, since it is that much ${way} at ${last.id}.`,
    ...fromTheNosing(datum, wall),
  ];
}

/** On stairs heights stand on the line along the nosings; where its slope is not known, what would tell it. */
function fromTheNosing(datum: Datum, { datum: said }: Pick<Wall, 'datum'>): string[] {
  if (datum.kind !== 'nosing') return [];
  const line =
    'Lay a straight edge along the nosings: the height is measured plumb up from it, and the frame hangs level.';
  if (datum.stairs || said?.fallMm !== undefined) return [line];
  return [
    `${line} With the rise and going of a stair, and which way they climb, I say what the tape reads at each mark.`,
  ];
}

/** "Level or parallel": where an edge beside the frame is close and runs out by more than a tape can read. */
export function levelOrParallel(fit: Fit, marks: readonly Mark[]): string[] {
  const { frame, wall, datum } = fit;
  const below = datum.kind === 'ceiling' || datum.kind === 'nosing' ? null : datum.fallMm;
  const above = datum.kind === 'ceiling' ? datum.fallMm : ceilingRise(wall, mm(0), wall.widthMm);
  const corners = [frame.leftMm, frame.rightMm].map((x) => (ceilingAt(fit, x) ?? Infinity) - frame.topMm);
  return [
    ...(below === null ? [] : alongside(datumName(datum.kind), below, frame.bottomMm, fit, marks)),
    ...alongside('the ceiling', above, mm(Math.min(...corners)), fit, marks),
  ];
}

function alongside(
  edge: string,
  fallMm: Millimetres,
  gapMm: Millimetres,
  { frame, wall }: Fit,
  marks: readonly Mark[],
): string[] {
  const wedge = mm(Math.abs(wedgeOver(mm(frame.rightMm - frame.leftMm), fallMm, wall.widthMm)));
  const steep = Math.abs(tiltOf(fallMm, wall.widthMm)) > MEANT_SLOPE.value;
  if (gapMm >= WEDGE_GAP.value || wedge <= TAPE_READING.value || steep) return [];
  return [
    `Level or parallel? ${edge[0]?.toUpperCase()}${edge.slice(1)} runs out by ${lengthText(wedge)} over the width of the frame, and the gap is small enough to show it. These marks are level${toFollow(fallMm, wall, marks)}; ask the client before drilling.`,
  ];
}

/** How far the last mark goes off the level line so that the frame follows the edge. */
function toFollow(fallMm: Millimetres, wall: Wall, marks: readonly Mark[]): string {
  const [first] = marks;
  const last = marks.at(-1);
  if (!first || !last || first === last) return '';
  const rise = mm((fallMm * (last.fromLeftMm - first.fromLeftMm)) / wall.widthMm);
  return `, and to follow it ${last.id} goes ${lengthText(mm(Math.abs(rise)))} ${rise > 0 ? 'higher' : 'lower'}`;
}
