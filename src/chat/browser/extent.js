// @ts-check
/** @typedef {import('./card.js').LoggedPlan} LoggedPlan */
/** @typedef {NonNullable<LoggedPlan['frame']>} Frame */
/** @typedef {{ xMm: number, yMm: number }} At */
/** What of the wall is drawn, in the plan's own figures; heights are measured from `level`. */
/** @typedef {{ top: number, bottom: number, level: number, wallWidth: number }} Extent */
/** @typedef {{ from: number, to: number, perMm: number }} Stretch */

/** Shown past the frame where nobody said how high the wall is. */
const ROOM_MM = 300;

/** In the drawing's units: less than this between two marks, or across a frame, and nobody can tell them apart. */
const LEAST_GAP = 24;
const LEAST_FRAME = 48;

/** @typedef {{ upMm?: number, downMm?: number }} Height */

/** Under a ceiling of unknown height a plan's heights are negative, down from it. */
export function heightOf(/** @type {Height} */ mark) {
  return mark.upMm ?? -(mark.downMm ?? 0);
}

/**
 * From the datum, or the floor, to the ceiling.
 * @param {LoggedPlan} plan
 * @param {Frame} frame
 * @param {LoggedPlan['marks'][number]} first
 * @returns {Extent}
 */
export function extentOf({ job }, frame, first) {
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
 * The whole width where the marks can be told apart at that scale; of a longer wall only the stretch about the
 * frame, as large as the height allows.
 * @param {Extent} extent
 * @param {Frame} frame
 * @param {readonly At[]} marks
 * @param {{ width: number, height: number }} paper
 * @returns {Stretch}
 */
export function stretchOf({ wallWidth, top, bottom }, frame, marks, paper) {
  const tallest = paper.height / (top - bottom);
  const across = [...new Set(marks.map(({ xMm }) => xMm))].sort((one, other) => one - other);
  const gaps = across.slice(1).map((xMm, index) => xMm - (across[index] ?? 0));
  const legible = Math.max(LEAST_FRAME / (frame.rightMm - frame.leftMm), LEAST_GAP / Math.min(...gaps));
  const perMm = Math.min(tallest, Math.max(paper.width / wallWidth, legible));
  const shown = Math.min(wallWidth, paper.width / perMm);
  const from = Math.min(Math.max(0, (frame.leftMm + frame.rightMm - shown) / 2), wallWidth - shown);
  return { from, to: from + shown, perMm };
}
