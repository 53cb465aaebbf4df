// @ts-check
import { line, text } from './shapes.js';

/** @typedef {import('./shapes.js').Shape} Shape */
/** @typedef {{ x: (mm: number) => number, y: (mm: number) => number, tape: import('./tape.js').Tape }} Scale */
/** @typedef {{ xMm: number, yMm: number }} At */

/** In the drawing's units: about what a figure takes of its letters, so that one too wide for its ticks moves up a row. */
const LETTER = 7;

/**
 * One chain over the wall: from the left end, mark to mark, to the right end.
 * @param {readonly At[]} marks
 * @param {number} wallWidth
 * @param {number} row
 * @param {Scale} scale
 * @returns {Shape[]}
 */
export function across(marks, wallWidth, row, { x, y, tape }) {
  const stops = [0, ...marks.map(({ xMm }) => xMm), wallWidth].sort((one, other) => one - other);
  const chain = stops.slice(1).flatMap((to, index) => {
    const from = stops[index] ?? 0;
    const said = tape(to - from);
    const above = x(to) - x(from) < LETTER * said.length ? 18 : 6;
    return [
      line('dimension', x(from), row, x(to), row),
      line('tick', x(from), row - 4, x(from), row + 4),
      text('figure', x((from + to) / 2), row - above, said),
    ];
  });
  const helpers = marks.map(({ xMm, yMm }) => line('helper', x(xMm), row, x(xMm), y(yMm)));
  return [...helpers, ...chain, line('tick', x(wallWidth), row - 4, x(wallWidth), row + 4)];
}

/**
 * From the datum (or the ceiling) to the first mark at the left, and to the last at the right where it differs.
 * @param {readonly At[]} marks
 * @param {number} wallWidth
 * @param {number} level
 * @param {Scale} scale
 * @returns {Shape[]}
 */
export function upright(marks, wallWidth, level, scale) {
  const [first, last] = [marks[0], marks.at(-1)];
  if (!first || !last) return [];
  const left = one(first, level, scale.x(0) - 8, -5, 'figure end', scale);
  if (first.yMm === last.yMm) return left;
  return [...left, ...one(last, level, scale.x(wallWidth) + 8, 5, 'figure start', scale)];
}

/**
 * @param {At} mark
 * @param {number} level
 * @param {number} at
 * @param {number} aside
 * @param {string} name
 * @param {Scale} scale
 * @returns {Shape[]}
 */
function one({ xMm, yMm }, level, at, aside, name, { x, y, tape }) {
  const [from, to] = [y(level), y(yMm)];
  return [
    line('helper', at, to, x(xMm), to),
    line('dimension', at, from, at, to),
    line('tick', at - 4, from, at + 4, from),
    line('tick', at - 4, to, at + 4, to),
    text(name, at + aside, (from + to) / 2 + 4, tape(Math.abs(yMm - level))),
  ];
}
