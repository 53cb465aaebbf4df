// @ts-check
/** @typedef {import('./transcript.js').Turn} Turn */
/** @typedef {{ kind: 'answered', answer: import('./transcript.js').Answer }} Answered */
/** @typedef {Answered | { kind: 'refused', why: string } | { kind: 'again' } | { kind: 'key' }} Outcome */

/** A server that has not answered by now will not: the signal is gone, or it is. */
const ANSWERED_WITHIN_MS = 20_000;

/**
 * Posts one message. A lost signal, a server that is down and a page of some hotel's network in place of an
 * answer all come to the same: again, with the same id.
 * @param {{ conversation: string, author: string }} as
 * @param {Turn} turn
 * @returns {Promise<Outcome>}
 */
export async function postMessage(as, turn) {
  const body = {
    id: turn.id,
    conversation: as.conversation,
    author: { id: as.author, role: 'apprentice' },
    ...turn.words,
  };
  try {
    const response = await fetch('/v1/messages', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(ANSWERED_WITHIN_MS),
    });
    if (response.status === 401) return { kind: 'key' };
    if (response.status >= 500 || response.status === 429) return { kind: 'again' };
    const read = await response.json();
    if (response.ok && Array.isArray(read.replies)) return { kind: 'answered', answer: read };
    return response.ok
      ? { kind: 'again' }
      : { kind: 'refused', why: String(read.detail ?? 'It was refused.') };
  } catch {
    return { kind: 'again' };
  }
}

/**
 * The whole of a plan that a reply named; null when it can't be had now.
 * @param {string} id
 * @returns {Promise<import('./card.js').LoggedPlan | null>}
 */
export async function fetchPlan(id) {
  try {
    const signal = AbortSignal.timeout(ANSWERED_WITHIN_MS);
    const response = await fetch(`/v1/plans/${encodeURIComponent(id)}`, { signal });
    return response.ok ? await response.json() : null;
  } catch {
    return null;
  }
}
