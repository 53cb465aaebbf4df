// @ts-check
/**
 * The conversation as this phone has it, so that a reload, a dead battery or a lost signal loses nothing
 * that was typed. The ledger stays the truth: a message is sent again with the id it was written under.
 */

/** @typedef {{ text: string } | { choice: string, question: string }} Words */
/** @typedef {import('../../../flows/reply.ts').Reply} Reply */
/** @typedef {{ replies: Reply[], awaiting: string | null, plan: string | null }} Answer */
/**
 * @typedef {object} Turn
 * @property {string} id
 * @property {string} shown What the person sees of it: the text, or the label of the button.
 * @property {Words} words
 * @property {'waiting' | 'answered' | 'refused'} state
 * @property {Answer} [answer]
 * @property {import('./card.js').LoggedPlan} [plan]
 * @property {string} [refused]
 */
/** @typedef {{ conversation: string, author: string, turns: Turn[] }} Transcript */

export const KEY = 'wallhand.conversation';

/** A phone keeps some megabytes; what scrolled away long ago is in the ledger. */
const TURNS_KEPT = 60;

/** @returns {Transcript} */
export function restored() {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    if (typeof kept?.conversation === 'string' && Array.isArray(kept.turns)) return kept;
  } catch {
    // Storage switched off, or not ours: begin afresh.
  }
  return begun(newId());
}

/**
 * @param {string} author The same over all conversations of this browser.
 * @returns {Transcript}
 */
export function begun(author) {
  return { conversation: `page-${newId()}`, author, turns: [] };
}

/** @param {Transcript} transcript */
export function keep(transcript) {
  const turns = transcript.turns.filter(
    (turn, at) => turn.state === 'waiting' || at >= transcript.turns.length - TURNS_KEPT,
  );
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...transcript, turns }));
  } catch {
    // No room, or storage switched off: the page goes on without.
  }
}

/** Random, and made so that it works on a page that did not come over TLS. */
export function newId() {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
}
