// @ts-check
import { element } from './elements.js';

/** @typedef {import('./transcript.js').Answer} Answer */
/** @typedef {import('./transcript.js').Reply} Reply */

/**
 * The replies of one answer. Marks, fixing and plan are left to the card where there is one; without it
 * their text, complete in itself, stands in.
 * @param {Answer} answer
 * @param {boolean} hasCard
 */
export function repliesOf(answer, hasCard) {
  return answer.replies.filter((reply) => !hasCard || !ON_THE_CARD.includes(reply.kind)).map(replyNode);
}

/** @type {Reply['kind'][]} */
const ON_THE_CARD = ['marks', 'fixing', 'plan'];

/** The question an answer leaves open, with its choices. */
export function openQuestion(/** @type {Answer | undefined} */ answer) {
  return answer?.replies.find((reply) => reply.kind === 'question') ?? null;
}

/** @param {Reply} reply */
function replyNode(reply) {
  switch (reply.kind) {
    case 'caution':
      return element('p', { class: `theirs caution ${reply.severity}` }, reply.text);
    case 'question':
      return element('p', { class: 'theirs question' }, reply.text);
    case 'table':
      return element('div', { class: 'theirs' }, table(reply));
    default:
      return element('p', { class: 'theirs' }, reply.text);
  }
}

/** @param {Extract<Reply, { kind: 'table' }>} reply */
function table({ columns, rows }) {
  const head = columns.map((column) => element('th', { scope: 'col' }, column));
  const body = rows.map((row) => element('tr', {}, ...row.map((cell) => element('td', {}, cell))));
  return element(
    'table',
    {},
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  );
}
