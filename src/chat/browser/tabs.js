// @ts-check
import { KEY } from './transcript.js';

/** @typedef {import('./transcript.js').Transcript} Transcript */
/** @typedef {import('./transcript.js').Turn} Turn */

/**
 * Two tabs of one browser hold one conversation: what one of them keeps, the other is told, or the last to
 * write would take the other's words off the page.
 * @param {(theirs: Transcript) => void} heard
 */
export function fromOtherTabs(heard) {
  addEventListener('storage', ({ key, newValue }) => {
    if (key === KEY && newValue) heard(JSON.parse(newValue));
  });
}

/**
 * Takes in what another tab has and this one has not; gives the turns that changed.
 * @param {Transcript} ours
 * @param {Transcript} theirs
 * @returns {Turn[]}
 */
export function takeIn(ours, theirs) {
  return theirs.turns.flatMap((turn) => {
    const own = ours.turns.find(({ id }) => id === turn.id);
    if (!own) {
      ours.turns.push(turn);
      return [turn];
    }
    const isNews = (own.state === 'waiting' && turn.state !== 'waiting') || (turn.plan && !own.plan);
    return isNews ? [Object.assign(own, turn)] : [];
  });
}
