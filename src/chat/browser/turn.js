// @ts-check
import { planCard } from './card.js';
import { element, hidden } from './elements.js';
import { repliesOf } from './replies.js';

/** @typedef {import('./transcript.js').Turn} Turn */

/**
 * What the person said and what came back. What was said stays as it stands on the page; the rest is made anew,
 * so that a live region reads out only what has come.
 * @param {Turn} turn
 * @param {HTMLElement | undefined} before The same turn as it was.
 */
export function turnNode(turn, before) {
  const node = before ?? element('div', { class: 'turn' });
  if (!before) node.append(element('p', { class: 'mine' }, hidden('You: '), turn.shown));
  while (node.children.length > 1) node.lastElementChild?.remove();
  if (turn.refused) node.append(refused(turn.refused));
  if (turn.answer) node.append(...repliesOf(turn.answer, cardOf(turn.answer, turn.plan)));
  node.classList.toggle('waiting', turn.state === 'waiting');
  return node;
}

function refused(/** @type {string} */ why) {
  return element('p', { class: 'theirs refused' }, hidden('wallhand: '), `Not taken. ${why}`);
}

/**
 * A card is too long to be read out as it comes; its words were, and it can be walked through.
 * @param {import('./transcript.js').Answer} answer
 * @param {Turn['plan']} plan
 */
function cardOf(answer, plan) {
  if (!plan) return null;
  const card = planCard(plan, answer);
  card.setAttribute('aria-live', 'off');
  return { card, clear: plan.clear };
}
