// @ts-check
import { drawingOf } from './drawing.js';
import { element, hidden, svgElement } from './elements.js';
import { tapeIn, UNIT_NAMES } from './tape.js';

/** @typedef {import('./card.js').LoggedPlan} LoggedPlan */
/** @typedef {import('./tape.js').Unit} Unit */

/**
 * The wall to scale, for who can see it and in words for who can't.
 * @param {LoggedPlan} plan
 * @param {Unit} unit
 */
export function drawing(plan, unit) {
  const tape = tapeIn(unit);
  const drawn = drawingOf(plan, tape);
  if (!drawn) return null;
  const box = `0 0 ${drawn.width} ${Math.ceil(drawn.height)}`;
  const words = plan.marks.map(({ id, fromLeftMm, fromRightMm, upMm = 0, downMm }) => {
    const height = downMm === undefined ? `${tape(upMm)} up` : `${tape(downMm)} down`;
    return `mark ${id} is ${tape(fromLeftMm)} from the left, ${tape(fromRightMm)} from the right, ${height}`;
  });
  const shapes = drawn.shapes.map((shape) => {
    const at = Object.entries(shape.at).map(([name, value]) => [name, value.toFixed(2)]);
    return svgElement(shape.tag, { class: shape.class, ...Object.fromEntries(at) }, shape.text);
  });
  const label = `The wall to scale, in ${UNIT_NAMES[unit]}: ${words.join('; ')}.`;
  return element(
    'figure',
    {},
    svgElement('svg', { viewBox: box, role: 'img', 'aria-label': label }, ...shapes),
    drawn.isCut && element('figcaption', {}, 'The wall goes on past a dashed edge.'),
  );
}

/**
 * Every mark from both ends and from the datum, each a check on the others.
 * @param {LoggedPlan['marks']} marks
 * @param {Unit} unit
 */
export function marksTable(marks, unit) {
  const tape = tapeIn(unit);
  const down = marks.some(({ downMm }) => downMm !== undefined);
  const here = marks.some(({ upHereMm }) => upHereMm !== undefined);
  const heads = ['Mark', 'From left', 'From right', down ? 'Down' : 'Up', here && 'Tape here'];
  const rows = marks.flatMap((mark) => [
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, mark.id),
      element('td', {}, tape(mark.fromLeftMm)),
      element('td', {}, tape(mark.fromRightMm)),
      element('td', {}, tape((down ? mark.downMm : mark.upMm) ?? 0)),
      here && element('td', {}, tape(mark.upHereMm ?? mark.upMm ?? 0)),
    ),
    mark.on !== undefined && whatItIsOn(mark.id, inUnit(mark.on, unit), here ? 4 : 3),
  ]);
  const head = heads.map((each) => each && element('th', { scope: 'col' }, each));
  return element(
    'table',
    {},
    element('caption', {}, `Marks, in ${UNIT_NAMES[unit]}`),
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...rows),
  );
}

/**
 * A row of its own under the mark's figures: it is words, and a phone is narrow.
 * @param {string} id
 * @param {string} on
 * @param {number} columns
 */
function whatItIsOn(id, on, columns) {
  return element(
    'tr',
    { class: 'on' },
    element('td', {}),
    element('td', { colspan: String(columns) }, hidden(`Mark ${id}: `), on),
  );
}

/** Lengths in words, which a plan has in millimetres, as the person's tape reads them. */
function inUnit(/** @type {string} */ text, /** @type {Unit} */ unit) {
  const tape = tapeIn(unit);
  return text.replace(/(\d+(?:\.\d+)?) mm\b/g, (_, value) => `${tape(Number(value))} ${unit}`);
}

/**
 * @param {LoggedPlan} plan
 * @param {Unit} unit
 * @returns {string[]}
 */
export function tapeChecks({ crossChecks, batten }, unit) {
  const tape = tapeIn(unit);
  const line = batten && [
    `Batten from ${tape(batten.fromLeftMm)} to ${tape(batten.toLeftMm)} from the left, ${tape(batten.upMm)} up`,
  ];
  const checks = crossChecks.map(
    ({ text, expectMm, toleranceMm }) =>
      `${text}: ${tape(expectMm)} ${unit}, within ${tape(toleranceMm)} ${unit}`,
  );
  return [...(line ?? []), ...checks];
}
