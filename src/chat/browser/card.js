// @ts-check
import { drawingOf } from './drawing.js';
import { element, svgElement } from './elements.js';
import { figure, fixingLines } from './figures.js';

/**
 * @typedef {import('../../plan-json.ts').PlanJson & { id: string, job: import('../../../core/job.ts').JobSoFar }} LoggedPlan
 */

const VERDICTS = { go: 'Go', care: 'Go, with care', stop: 'Stop: don’t drill' };

/**
 * A plan as a card: the verdict, the marks to scale, what goes in, what to watch for, then the rest folded.
 * @param {LoggedPlan} plan
 */
export function planCard(plan) {
  const stops = plan.verdict === 'stop';
  const warned = plan.cautions.filter(({ severity }) => severity !== 'note');
  const notes = plan.cautions.filter(({ severity }) => severity === 'note');
  return element(
    'article',
    { class: `card ${plan.verdict}`, 'aria-label': `Plan: ${VERDICTS[plan.verdict]}` },
    element('h2', {}, VERDICTS[plan.verdict]),
    stops && section('Why', cautionList(warned)),
    plan.clear.length > 0 && section('What would clear it', bullets(plan.clear)),
    drawing(plan),
    plan.marks.length > 0 && marksTable(plan.marks),
    folded(
      'Checks with the tape',
      plan.crossChecks.length > 0 && bullets(plan.crossChecks.map(crossCheckWords)),
    ),
    plan.fixing && section('What goes in', pairs(fixingLines(plan.fixing))),
    !stops && warned.length > 0 && section('Watch for', cautionList(warned)),
    plan.advice.length > 0 && section('Worth knowing', bullets(plan.advice)),
    folded('Step by step', plan.steps.length > 0 && numbered(plan.steps)),
    folded('Tools and shopping', toolsOf(plan)),
    folded('Taken as so', plan.assumptions.length > 0 && bullets(plan.assumptions.map(assumptionWords))),
    folded('Notes', notes.length > 0 && cautionList(notes)),
    folded(
      'Looked at and left',
      plan.rejected.length > 0 &&
        bullets(plan.rejected.map(({ fastener, because }) => `${fastener.replaceAll('-', ' ')}: ${because}`)),
    ),
    folded(
      'What this rests on',
      plan.basis.length > 0 &&
        bullets(
          plan.basis.map(({ title, at, standing }) => `${title}, ${at} (${standing.replaceAll('-', ' ')})`),
        ),
    ),
  );
}

/** @param {LoggedPlan} plan */
function drawing(plan) {
  const drawn = drawingOf(plan);
  if (!drawn) return null;
  const box = `0 0 ${drawn.width} ${Math.ceil(drawn.height)}`;
  const label = `The wall to scale: ${plan.marks.map(markWords).join('; ')}.`;
  const shapes = drawn.shapes.map((shape) => {
    const at = Object.entries(shape.at).map(([name, value]) => [name, value.toFixed(2)]);
    return svgElement(shape.tag, { class: shape.class, ...Object.fromEntries(at) }, shape.text);
  });
  return element(
    'figure',
    {},
    svgElement('svg', { viewBox: box, role: 'img', 'aria-label': label }, ...shapes),
    element('figcaption', {}, 'The wall to scale.'),
  );
}

/** @param {LoggedPlan['marks'][number]} mark */
function markWords({ id, fromLeftMm, fromRightMm, upMm, downMm }) {
  const height = downMm === undefined ? `${figure(upMm ?? 0)} up` : `${figure(downMm)} down`;
  return `mark ${id} is ${figure(fromLeftMm)} from the left, ${figure(fromRightMm)} from the right, ${height}`;
}

/** @param {LoggedPlan['marks']} marks */
function marksTable(marks) {
  const down = marks.some(({ downMm }) => downMm !== undefined);
  const here = marks.some(({ upHereMm }) => upHereMm !== undefined);
  const on = marks.some((mark) => mark.on !== undefined);
  const heads = ['Mark', 'From left', 'From right', down ? 'Down' : 'Up', here && 'Tape here', on && 'On'];
  const rows = marks.map((mark) => [
    figure(mark.fromLeftMm),
    figure(mark.fromRightMm),
    figure((down ? mark.downMm : mark.upMm) ?? 0),
    here && figure(mark.upHereMm ?? mark.upMm ?? 0),
    on && (mark.on ?? ''),
  ]);
  return element(
    'table',
    {},
    element('caption', {}, 'Marks, in millimetres'),
    element(
      'thead',
      {},
      element('tr', {}, ...heads.map((head) => head && element('th', { scope: 'col' }, head))),
    ),
    element(
      'tbody',
      {},
      ...rows.map((row, at) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, marks[at]?.id ?? ''),
          ...row.map((cell) => cell !== false && element('td', {}, cell)),
        ),
      ),
    ),
  );
}

/** @param {LoggedPlan['crossChecks'][number]} check */
function crossCheckWords({ text, expectMm, toleranceMm }) {
  return `${text}: ${figure(expectMm)} mm, within ${figure(toleranceMm)}`;
}

/** @param {LoggedPlan['assumptions'][number]} assumption */
function assumptionWords({ field, value, because }) {
  const said = typeof value === 'object' ? JSON.stringify(value) : String(value);
  return `${field}: ${said}. ${because}`;
}

/** @param {LoggedPlan['cautions']} cautions */
function cautionList(cautions) {
  return element(
    'ul',
    { class: 'cautions' },
    ...cautions.map(({ severity, text }) => element('li', { class: severity }, text)),
  );
}

/** @param {LoggedPlan} plan */
function toolsOf({ tools, shopping }) {
  const bought = shopping.map(({ item, count }) => `${count} × ${item}`);
  return tools.length + bought.length > 0 && bullets([...tools, ...bought]);
}

/** @param {string} title @param {Node} content */
function section(title, content) {
  return element('section', {}, element('h3', {}, title), content);
}

/** @param {string} title @param {Node | false} content */
function folded(title, content) {
  return content && element('details', {}, element('summary', {}, title), content);
}

/** @param {readonly string[]} lines */
function bullets(lines) {
  return element('ul', {}, ...lines.map((each) => element('li', {}, each)));
}

/** @param {readonly string[]} lines */
function numbered(lines) {
  return element('ol', {}, ...lines.map((each) => element('li', {}, each)));
}

/** @param {readonly [string, string][]} lines */
function pairs(lines) {
  const filled = lines.flatMap(([name, value]) => [element('dt', {}, name), element('dd', {}, value)]);
  return element('dl', {}, ...filled);
}
