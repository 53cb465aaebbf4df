// @ts-check
import { element } from './elements.js';

/** @typedef {Extract<import('./transcript.js').Reply, { kind: 'question' }>} Question */

/**
 * Puts a button for each choice of the open question in `place`; none hides it. `byKey` is true for a press
 * that came from the keyboard, which should not be left on a button that is gone.
 * @param {HTMLElement} place
 * @param {Question | null} question
 * @param {(label: string, said: { choice: string, question: string }, byKey: boolean) => void} picked
 */
export function offer(place, question, picked) {
  const buttons = (question?.choices ?? []).map(({ value, label }) => {
    const button = element('button', { type: 'button' }, label);
    button.addEventListener('click', (event) =>
      picked(label, { choice: value, question: question?.question ?? '' }, event.detail === 0),
    );
    return button;
  });
  place.replaceChildren(...buttons);
  place.hidden = buttons.length === 0;
}
