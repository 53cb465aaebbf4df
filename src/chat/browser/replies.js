// @ts-check
import { element } from './elements.js';

/** @typedef {import('./transcript.js').Answer} Answer */
/** @typedef {import('./transcript.js').Reply} Reply */

/** What a card shows too, and better: where there is a card it stands in the place of the first of these. */
const ON_THE_CARD = ['marks', 'fixing', 'caution', 'table', 'plan'];

/**
 * The replies of one answer, in their order. Without a card the text of each, complete in itself, is enough;
 * with one, what stands on it is not said again.
 * @param {Answer} answer
 * @param {{ card: Node, clear: readonly string[] } | null} shown
 * @returns {Node[]}
 */
export function repliesOf(answer, shown) {
  if (!shown) return answer.replies.map(replyNode);
  const { card, clear } = shown;
  const first = answer.replies.findIndex(({ kind }) => ON_THE_CARD.includes(kind));
  return answer.replies.flatMap((reply, at) => {
    if (at === first) return [card];
    return ON_THE_CARD.includes(reply.kind) || isSaidBy(clear, reply) ? [] : [replyNode(reply)];
  });
}

/** @param {readonly string[]} clear @param {Reply} reply */
function isSaidBy(clear, { kind, text }) {
  return kind === 'text' && clear.length > 0 && clear.every((each) => text.includes(each));
}

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
      return element('p', { class: 'theirs question' }, ...asked(reply.text));
    case 'table':
      return element('div', { class: 'theirs' }, table(reply));
    default:
      return element('p', { class: 'theirs' }, reply.text);
  }
}

/** What is asked stands out; what is read back before it, line by line, does not. */
function asked(/** @type {string} */ text) {
  const at = text.lastIndexOf('\n') + 1;
  return [text.slice(0, at), element('strong', {}, text.slice(at))];
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
