// @ts-check
import { line, text } from './shapes.js';

/** @typedef {import('./shapes.js').Shape} Shape */
/** @typedef {{ x: (mm: number) => number, y: (mm: number) => number, tape: import('./tape.js').Tape }} Scale */
/** @typedef {{ xMm: number, yMm: number }} At */

/** In the drawing's units: about what a figure takes of its letters, so that one too wide for its ticks moves up. */
const LETTER = 7;

/** How far over the chain a figure stands: the next row up where it would touch its neighbour. */
const ROWS = [6, 18, 30];

/**
 * One chain over the wall: from the left end, mark to mark, to the right end.
 * @param {readonly At[]} marks
 * @param {number} wallWidth
 * @param {number} row
 * @param {Scale} scale
 * @returns {Shape[]}
 */
export function across(marks, wallWidth, row, { x, y, tape }) {
  const stops = [...new Set([0, ...marks.map(({ xMm }) => xMm), wallWidth])].sort(
    (one, other) => one - other,
  );
  /** How far each row of figures is filled, the lowest first. */
  const filledTo = ROWS.map(() => Number.NEGATIVE_INFINITY);
  const chain = stops.slice(1).flatMap((to, index) => {
    const from = stops[index] ?? 0;
    const said = tape(to - from);
    const [middle, half] = [(x(from) + x(to)) / 2, (LETTER * said.length) / 2];
    const narrow = x(to) - x(from) < 2 * half;
    const free = filledTo.findIndex((end, level) => (level > 0 || !narrow) && end < middle - half);
    const level = free === -1 ? ROWS.length - 1 : free;
    filledTo[level] = middle + half;
    return [
      line('dimension', x(from), row, x(to), row),
      line('tick', x(from), row - 4, x(from), row + 4),
      text('figure', middle, row - (ROWS[level] ?? 0), said),
    ];
  });
  const helpers = marks.map(({ xMm, yMm }) => line('helper', x(xMm), row, x(xMm), y(yMm)));
  return [...helpers, ...chain, line('tick', x(wallWidth), row - 4, x(wallWidth), row + 4)];
}

/**
 * From the datum (or the ceiling) to the first mark at the left, and to the last at the right where it differs.
 * @param {readonly At[]} marks
 * @param {{ from: number, to: number }} drawn
 * @param {number} level
 * @param {Scale} scale
 * @returns {Shape[]}
 */
export function upright(marks, { from, to }, level, scale) {
  const [first, last] = [marks[0], marks.at(-1)];
  if (!first || !last) return [];
  const left = one(first, level, scale.x(from) - 8, -5, 'figure end', scale);
  if (first.yMm === last.yMm) return left;
  return [...left, ...one(last, level, scale.x(to) + 8, 5, 'figure start', scale)];
}

/**
 * What the figures beside the wall take, left and right of it.
 * @param {readonly At[]} marks
 * @param {number} level
 * @param {Scale['tape']} tape
 */
export function uprightRooms(marks, level, tape) {
  const [left = 0, right = 0] = [marks[0], marks.at(-1)].map((mark) =>
    mark ? tape(Math.abs(mark.yMm - level)).length * LETTER : 0,
  );
  return { left, right: marks[0]?.yMm === marks.at(-1)?.yMm ? 0 : right };
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
