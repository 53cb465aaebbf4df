// @ts-check
import { text } from './shapes.js';

/** @typedef {import('./shapes.js').Shape} Shape */
/** @typedef {{ left: number, right: number, top: number, bottom: number }} Box */

/** In the drawing's units: about what a figure takes of its letters, and over and under its line. */
const LETTER = 7;
const RISE = 11;
const FALL = 4;

/** What a mark takes with its letter, about its middle: whoever reads the letter must not read a figure into it. */
const ABOUT_A_MARK = { across: 22, above: 10, below: 21 };

/**
 * How large the frame is, where it lies on nothing else: inside its lower edge, else in its middle, in one line
 * or two, else under it or over it.
 * @param {string} width
 * @param {string} height
 * @param {Box} frame
 * @param {readonly { x: number, y: number }[]} marks
 * @param {number} level Where the datum is drawn, its name beside it.
 * @returns {Shape[]}
 */
export function sizeLabel(width, height, frame, marks, level) {
  const middle = (frame.left + frame.right) / 2;
  const half = (frame.top + frame.bottom) / 2;
  const oneLine = [`${width} × ${height}`];
  const twoLines = [`${width} ×`, height];
  /** @type {[string[], number][]} */
  const places = [
    [oneLine, frame.bottom - 8],
    [oneLine, half],
    [twoLines, half],
    [oneLine, frame.bottom + 16],
    [oneLine, frame.top - 8],
  ];
  const boxes = places.map(([lines, y], at) => {
    const reach = (Math.max(...lines.map((each) => each.length)) * LETTER) / 2;
    const box = { left: middle - reach, right: middle + reach, top: y - RISE, bottom: y + FALL };
    const tall = { ...box, bottom: box.bottom + (lines.length - 1) * (RISE + FALL) };
    const fits = at > 2 || (tall.left > frame.left + 2 && tall.right < frame.right - 2);
    return { lines, y, free: fits && !onMark(tall, marks) && !onDatum(tall, level) };
  });
  const chosen = boxes.find(({ free }) => free) ?? boxes[1];
  return (chosen?.lines ?? []).map((each, at) =>
    text('size', middle, (chosen?.y ?? 0) + at * (RISE + FALL), each),
  );
}

/**
 * @param {Box} box
 * @param {readonly { x: number, y: number }[]} marks
 */
function onMark({ left, right, top, bottom }, marks) {
  const { across, above, below } = ABOUT_A_MARK;
  return marks.some(
    ({ x, y }) => x + across > left && x - across < right && y + below > top && y - above < bottom,
  );
}

/** @param {Box} box @param {number} level */
function onDatum({ top, bottom }, level) {
  return bottom > level - 3 && top < level + 20;
}
