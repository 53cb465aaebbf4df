// @ts-check
import { across, upright, uprightRooms } from './dimensions.js';
import { extentOf, heightOf, stretchOf } from './extent.js';
import { cross, line, rect, text } from './shapes.js';
import { sizeLabel } from './size-label.js';

/** @typedef {import('./card.js').LoggedPlan} LoggedPlan */
/** @typedef {import('./shapes.js').Shape} Shape */
/** @typedef {{ width: number, height: number, perMm: number, isCut: boolean, shapes: Shape[] }} Drawing */
/** @typedef {import('./extent.js').Extent & import('./extent.js').Stretch} Shown */

/** In the drawing's own units, of which the narrowest phone shows about one a pixel. */
const WIDTH = 304;
const SIDE = 18;
const ABOVE = 46;
const BELOW = 26;
const TALLEST = 340;

/** About what a letter takes. */
const LETTER = 7;

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
  const rooms = uprightRooms(marks, level, tape);
  const width = WIDTH - 2 * SIDE - rooms.left - rooms.right;
  const stretch = stretchOf(extent, frame, marks, { width, height: TALLEST });
  const { from, to, perMm } = stretch;
  const left = SIDE + rooms.left + (width - (to - from) * perMm) / 2;
  const x = (/** @type {number} */ mm) => left + (Math.min(Math.max(mm, from), to) - from) * perMm;
  const y = (/** @type {number} */ mm) => ABOVE + (top - mm) * perMm;
  const [frameWidth, frameHeight] = [frame.rightMm - frame.leftMm, frame.topMm - frame.bottomMm];
  const middle = x(frame.leftMm + frameWidth / 2);
  const box = {
    ...{ left: x(frame.leftMm), right: x(frame.rightMm) },
    ...{ top: y(frame.topMm), bottom: y(frame.bottomMm) },
  };
  const crosses = marks.map(({ xMm, yMm }) => ({ x: x(xMm), y: y(yMm) }));
  const roomy = marks.every(({ xMm }) => marks.length === 1 || Math.abs(x(xMm) - middle) > 3 * LETTER);
  const down = first.downMm !== undefined;
  const shapes = [
    rect('wall', x(from), y(top), (to - from) * perMm, (top - bottom) * perMm),
    ...cutEnds(stretch, wallWidth).map((end) => line('cut', x(end), y(top), x(end), y(bottom))),
    ...(down
      ? []
      : plates(job, { ...extent, ...stretch }).map(({ xMm, yMm, widthMm, heightMm }) =>
          rect('plate', x(xMm - widthMm / 2), y(yMm + heightMm / 2), widthMm * perMm, heightMm * perMm),
        )),
    rect('frame', box.left, box.top, frameWidth * perMm, frameHeight * perMm),
    line('datum', x(from) - 8, y(level), x(to) + 8, y(level)),
    down
      ? text('datum-name', x(from) + 4 * LETTER, y(level) + 15, 'ceiling')
      : text('datum-name', x((from + to) / 2), y(level) + 17, nameOf(job.wall?.datum?.kind)),
    ...(batten
      ? [line('batten', x(batten.fromLeftMm), y(batten.upMm), x(batten.toLeftMm), y(batten.upMm))]
      : []),
    ...across(marks, wallWidth, y(top) - 14, { x, y, tape }),
    ...upright(marks, { from, to }, level, { x, y, tape }),
    ...sizeLabel(tape(frameWidth), tape(frameHeight), box, crosses, y(level)),
    ...marks.flatMap(({ id, xMm, yMm }) => cross(id, x(xMm), y(yMm), x(xMm) > middle === roomy ? -1 : 1)),
  ];
  const isCut = to - from < wallWidth;
  return { width: WIDTH, height: ABOVE + (top - bottom) * perMm + BELOW, perMm, isCut, shapes };
}

/**
 * Where the wall goes on past what is drawn.
 * @param {import('./extent.js').Stretch} stretch
 * @param {number} wallWidth
 */
function cutEnds({ from, to }, wallWidth) {
  return [...(from > 0 ? [from] : []), ...(to < wallWidth ? [to] : [])];
}

/**
 * Plates on this face that the drawing shows, so that a person sees which wall it is.
 * @param {LoggedPlan['job']} job
 * @param {Shown} shown
 */
function plates({ wall }, { top, bottom, from, to }) {
  const above = wall?.datum === undefined || wall.datum.kind === 'floor' ? 0 : wall.datum.aboveFloorMm;
  if (!Array.isArray(wall?.accessories) || above === undefined) return [];
  return wall.accessories
    .filter(({ face }) => face === 'this')
    .map(({ xMm, yMm, ...size }) => ({ ...PLATE, ...size, xMm, yMm: yMm - above }))
    .filter(({ xMm, yMm }) => yMm >= bottom && yMm <= top && xMm >= from && xMm <= to);
}

function nameOf(/** @type {string | undefined} */ kind) {
  if (kind === 'mantel' || kind === 'furniture') return `${kind} top`;
  return kind === 'nosing' ? 'stair nosing' : (kind ?? 'floor');
}
