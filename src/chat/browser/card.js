// @ts-check
import { element } from './elements.js';
import { fixingLines } from './figures.js';
import { drawing, marksTable, tapeChecks } from './marks.js';

/**
 * @typedef {import('../../schema/plan-json.ts').PlanJson & { id: string, job: import('../../../core/job.ts').JobSoFar }} LoggedPlan
 */

const VERDICTS = { go: 'Go', care: 'Go, with care', stop: 'Stop: don’t drill' };

/**
 * A plan as a card: the verdict, the marks to scale, what goes in, what to watch for, then the rest folded.
 * In the unit and the words of the answer that brought it. The steps are not on it: they wait for the
 * warnings to be acknowledged, and come as an answer of their own.
 * @param {LoggedPlan} plan
 * @param {import('./transcript.js').Answer} answer
 */
export function planCard(plan, answer) {
  const unit = answer.replies.find((reply) => reply.kind === 'marks')?.unit ?? 'mm';
  const checks = tapeChecks(plan, unit);
  const stops = plan.verdict === 'stop';
  const warned = inWordsOf(
    answer,
    plan.cautions.filter(({ severity }) => severity !== 'note'),
  );
  const notes = plan.cautions.filter(({ severity }) => severity === 'note');
  return element(
    'article',
    { class: `card ${plan.verdict}`, 'aria-label': `Plan: ${VERDICTS[plan.verdict]}` },
    element('h2', {}, VERDICTS[plan.verdict]),
    stops && section('Why', cautionList(warned)),
    plan.clear.length > 0 && section('What would clear it', bullets(plan.clear)),
    drawing(plan, unit),
    plan.marks.length > 0 && marksTable(plan.marks, unit),
    folded('Checks with the tape', checks.length > 0 && bullets(checks)),
    plan.fixing && section('What goes in', pairs(fixingLines(plan.fixing))),
    !stops && warned.length > 0 && section('Watch for', cautionList(warned)),
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

/** @param {LoggedPlan['assumptions'][number]} assumption */
function assumptionWords({ field, value, because }) {
  const said = typeof value === 'object' ? JSON.stringify(value) : String(value);
  return `${fieldWords(field)}: ${said}. ${because}`;
}

/** A job's field as words: `wall.finish.thicknessMm` is "wall finish thickness, mm". */
function fieldWords(/** @type {string} */ field) {
  const [, name = field, unit = ''] = /^(.*?)(Mm|Kg)?$/.exec(field) ?? [];
  const spelled = name.replaceAll('.', ' ').replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
  return unit === '' ? spelled : `${spelled}, ${unit.toLowerCase()}`;
}

/**
 * A caution that was spoken keeps the words it was spoken in, which are in the person's unit.
 * @param {import('./transcript.js').Answer} answer
 * @param {LoggedPlan['cautions']} cautions
 */
function inWordsOf({ replies }, cautions) {
  const spoken = new Map(
    replies.flatMap((reply) => (reply.kind === 'caution' ? [[reply.id, reply.text]] : [])),
  );
  return cautions.map((caution) => ({ ...caution, text: spoken.get(caution.id) ?? caution.text }));
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

/** Longer than this it is read and not looked up. */
const SENTENCE = 60;

/** @param {readonly [string, string][]} lines */
function pairs(lines) {
  const filled = lines.flatMap(([name, value]) => [
    element('dt', {}, name),
    element('dd', { class: value.length > SENTENCE ? 'sentence' : 'figure' }, value),
  ]);
  return element('dl', {}, ...filled);
}
