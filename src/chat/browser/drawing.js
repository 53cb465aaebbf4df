// @ts-check
import { across, upright } from './dimensions.js';
import { cross, line, rect, text } from './shapes.js';

/** @typedef {import('./card.js').LoggedPlan} LoggedPlan */
/** @typedef {import('./shapes.js').Shape} Shape */
/** @typedef {{ width: number, height: number, perMm: number, shapes: Shape[] }} Drawing */
/** @typedef {{ top: number, bottom: number, level: number, wallWidth: number }} Extent */

/** In the drawing's own units, of which a phone shows about one a pixel. */
const WIDTH = 360;
const SIDE = 58;
const ABOVE = 46;
const BELOW = 26;
const TALLEST = 380;

/** About what a letter takes. */
const LETTER = 7;

/** Shown past the frame where nobody said how high the wall is. */
const ROOM_MM = 300;

/** The larger common plate, as core takes it where its size was not said. */
const PLATE = { widthMm: 146, heightMm: 86 };

/**
 * The wall, the frame and the marks to scale, with what a tape reads: from the ends, between the marks, and
 * up from the datum. Null when there is nothing to draw.
 * @param {LoggedPlan} plan
 * @param {import('./tape.js').Tape} tape
 * @returns {Drawing | null}
 */
export function drawingOf(plan, tape) {
  const { frame, job, batten } = plan;
  const [first] = plan.marks;
  if (!frame || !first) return null;
  const marks = plan.marks.map((mark) => ({ id: mark.id, xMm: mark.fromLeftMm, yMm: heightOf(mark) }));
  const extent = extentOf(plan, frame, first);
  const { top, bottom, level, wallWidth } = extent;
  const perMm = Math.min((WIDTH - 2 * SIDE) / wallWidth, TALLEST / (top - bottom));
  const left = (WIDTH - wallWidth * perMm) / 2;
  const x = (/** @type {number} */ mm) => left + mm * perMm;
  const y = (/** @type {number} */ mm) => ABOVE + (top - mm) * perMm;
  const [frameWidth, frameHeight] = [frame.rightMm - frame.leftMm, frame.topMm - frame.bottomMm];
  const middle = x(frame.leftMm + frameWidth / 2);
  const size = `${tape(frameWidth)} × ${tape(frameHeight)}`;
  const roomy = marks.every(({ xMm }) => marks.length === 1 || Math.abs(x(xMm) - middle) > 3 * LETTER);
  const down = first.downMm !== undefined;
  const shapes = [
    rect('wall', x(0), y(top), wallWidth * perMm, (top - bottom) * perMm),
    ...(down
      ? []
      : plates(job, extent).map(({ xMm, yMm, widthMm, heightMm }) =>
          rect('plate', x(xMm - widthMm / 2), y(yMm + heightMm / 2), widthMm * perMm, heightMm * perMm),
        )),
    rect('frame', x(frame.leftMm), y(frame.topMm), frameWidth * perMm, frameHeight * perMm),
    text('size', middle, y(frame.bottomMm) + (size.length * LETTER < frameWidth * perMm ? -8 : 14), size),
    line('datum', x(0) - 8, y(level), x(wallWidth) + 8, y(level)),
    down
      ? text('datum-name', x(0) + 4 * LETTER, y(level) + 15, 'ceiling')
      : text('datum-name', x(wallWidth / 2), y(level) + 17, nameOf(job.wall?.datum?.kind)),
    ...(batten
      ? [line('batten', x(batten.fromLeftMm), y(batten.upMm), x(batten.toLeftMm), y(batten.upMm))]
      : []),
    ...across(marks, wallWidth, y(top) - 14, { x, y, tape }),
    ...upright(marks, wallWidth, level, { x, y, tape }),
    ...marks.flatMap(({ id, xMm, yMm }) => cross(id, x(xMm), y(yMm), x(xMm) > middle === roomy ? -1 : 1)),
  ];
  return { width: WIDTH, height: ABOVE + (top - bottom) * perMm + BELOW, perMm, shapes };
}

/** @typedef {{ upMm?: number, downMm?: number }} Height */

/** Under a ceiling of unknown height a plan's heights are negative, down from it. */
function heightOf(/** @type {Height} */ mark) {
  return mark.upMm ?? -(mark.downMm ?? 0);
}

/**
 * What of the wall is shown, in the plan's own heights; `level` is what heights are measured from.
 * @param {LoggedPlan} plan
 * @param {NonNullable<LoggedPlan['frame']>} frame
 * @param {LoggedPlan['marks'][number]} first
 * @returns {Extent}
 */
function extentOf({ job }, frame, first) {
  const wallWidth = first.fromLeftMm + first.fromRightMm;
  if (first.downMm !== undefined) {
    const level = heightOf(first) + first.downMm;
    return { wallWidth, level, top: level, bottom: first.upMm === undefined ? frame.bottomMm - ROOM_MM : 0 };
  }
  const { heightMm, datum } = job.wall ?? {};
  const above = datum === undefined || datum.kind === 'floor' ? 0 : datum.aboveFloorMm;
  const ceiling = heightMm === undefined || above === undefined ? frame.topMm + ROOM_MM : heightMm - above;
  return { wallWidth, level: 0, top: Math.max(ceiling, frame.topMm), bottom: Math.min(0, frame.bottomMm) };
}

/**
 * Plates on this face that the drawing shows, so that a person sees which wall it is.
 * @param {LoggedPlan['job']} job
 * @param {Extent} extent
 */
function plates({ wall }, { top, bottom, wallWidth }) {
  const above = wall?.datum === undefined || wall.datum.kind === 'floor' ? 0 : wall.datum.aboveFloorMm;
  if (!Array.isArray(wall?.accessories) || above === undefined) return [];
  return wall.accessories
    .filter(({ face }) => face === 'this')
    .map(({ xMm, yMm, ...size }) => ({ ...PLATE, ...size, xMm, yMm: yMm - above }))
    .filter(({ xMm, yMm }) => yMm >= bottom && yMm <= top && xMm >= 0 && xMm <= wallWidth);
}

function nameOf(/** @type {string | undefined} */ kind) {
  if (kind === 'mantel' || kind === 'furniture') return `${kind} top`;
  return kind === 'nosing' ? 'stair nosing' : (kind ?? 'floor');
}
