import { disagreement } from '../disagreement.ts';
import type { Entry } from '../entry.ts';
import { fold } from '../fold.ts';
import { listeningTo } from '../listening.ts';
import { type Offered, type Open, situationIn } from '../open.ts';
import type { Parts } from '../parts.ts';
import { contradictionOf } from './facts.ts';
import { anotherPiece } from './offered.ts';
import type { Turn } from './turn.ts';

/** What is asked back after a turn: the turn's own, or what was open before and has not been answered by it. */
export function offeredStill(
  turn: Turn,
  before: Open,
  after: Open,
  entries: readonly Entry[],
  parts: Parts,
): Offered | null {
  if (turn.offered !== undefined) return turn.offered;
  if (turn.added.length === 0) return before.offered;
  return situationIn(after).askedBack === null ? null : offeredIn(entries, after, parts);
}

/** What was asked back when a conversation was left, worked out again from the words that led to it. */
export function offeredIn(entries: readonly Entry[], open: Open, parts: Parts): Offered | null {
  const last = open.folded.live.at(-1);
  if (last?.act !== 'asked-back' || last.question === null) return null;
  if (last.value !== null) {
    const before = disagreement(open.folded.said, last.value);
    const fact = { question: last.question, value: last.value, said: last.said };
    return before === null
      ? null
      : contradictionOf({ fact, before }, open.folded.said, last.said, open.folded.unit);
  }
  const askedAt = entries.findLastIndex(
    ({ act, question }) => act === 'asked-back' && question === last.question,
  );
  const then: Open = { ...open, folded: fold(entries.slice(0, askedAt)) };
  // What was open then is not kept: the question that was asked back, or another one.
  const asks = [last.question, null].flatMap(
    (awaiting) => parts.understand(last.said, { ...listeningTo(then), awaiting }).asks,
  );
  const ask = asks.find((each) => each.question === last.question);
  if (ask) return { kind: 'readings', ask, said: last.said };
  return open.standing === null ? null : anotherPiece(last.said);
}
