// @ts-check
/** @typedef {import('./transcript.js').Turn} Turn */
/** @typedef {import('./post.js').Outcome} Outcome */

/** Seconds between attempts; the last is kept up for as long as the page is open. */
const AGAIN_AFTER_S = [1, 2, 4, 8, 15];

/**
 * Sends messages one after the other in the order they were written, each until it is taken or refused.
 * @param {object} given
 * @param {(turn: Turn) => Promise<Outcome>} given.post
 * @param {(turn: Turn, outcome: Outcome) => void} given.settled
 * @param {(turn: Turn | null) => void} given.waits The message that could not be sent yet; null when none.
 */
export function outbox({ post, settled, waits }) {
  /** @type {Turn[]} */
  const waiting = [];
  let attempt = 0;
  let busy = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  async function send() {
    const turn = waiting[0];
    if (busy || !turn) return;
    busy = true;
    clearTimeout(timer);
    const outcome = await post(turn);
    busy = false;
    if (outcome.kind === 'again') {
      waits(turn);
      const seconds = AGAIN_AFTER_S[Math.min(attempt, AGAIN_AFTER_S.length - 1)] ?? 1;
      attempt += 1;
      timer = setTimeout(send, seconds * 1000);
      return;
    }
    attempt = 0;
    waiting.shift();
    waits(null);
    settled(turn, outcome);
    await send();
  }

  return {
    /** @param {Turn} turn */
    add(turn) {
      waiting.push(turn);
      void send();
    },
    /** The signal may be back: don't wait for the next attempt. */
    now() {
      attempt = 0;
      void send();
    },
  };
}
