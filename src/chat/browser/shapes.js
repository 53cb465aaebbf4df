// @ts-check
/** @typedef {{ tag: 'rect' | 'line' | 'circle' | 'text', class: string, at: Record<string, number>, text?: string }} Shape */

/**
 * @param {string} name
 * @param {number} x
 * @param {number} y
 * @param {number} width
 * @param {number} height
 * @returns {Shape}
 */
export function rect(name, x, y, width, height) {
  return { tag: 'rect', class: name, at: { x, y, width, height } };
}

/**
 * @param {string} name
 * @param {number} x1
 * @param {number} y1
 * @param {number} x2
 * @param {number} y2
 * @returns {Shape}
 */
export function line(name, x1, y1, x2, y2) {
  return { tag: 'line', class: name, at: { x1, y1, x2, y2 } };
}

/**
 * @param {string} name
 * @param {number} x
 * @param {number} y
 * @param {string} said
 * @returns {Shape}
 */
export function text(name, x, y, said) {
  return { tag: 'text', class: name, at: { x, y }, text: said };
}

/**
 * Where to drill: a cross, a ring round it, and its letter at its left (-1) or its right (1).
 * @param {string} id
 * @param {number} x
 * @param {number} y
 * @param {-1 | 1} side
 * @returns {Shape[]}
 */
export function cross(id, x, y, side) {
  return [
    { tag: 'circle', class: 'mark', at: { cx: x, cy: y, r: 5 } },
    line('mark', x - 9, y, x + 9, y),
    line('mark', x, y - 9, x, y + 9),
    text('mark-name', x + 13 * side, y + 17, id),
  ];
}
