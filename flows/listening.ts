import { awaitingIn, type Open, situationIn } from './open.ts';
import type { QuestionName } from './question.ts';
import type { Listening } from './reading.ts';

/** What is needed to read the next message. */
export function listeningTo(open: Open): Listening {
  return {
    awaiting: awaitingIn(open),
    // As said: a figure worked out from the width must not come back as if it had been measured.
    known: open.folded.said,
    unit: open.folded.unit,
    lastAnswered: lastAnsweredIn(open),
    hasPlan: isWorkedOut(open),
    ...(open.offered?.kind === 'readings' && { offered: open.offered.ask }),
  };
}

/** A whole job has been worked out, whether it may be drilled or not: another piece is then another job. */
export function isWorkedOut(open: Open): boolean {
  return open.standing !== null && situationIn(open).plan !== null;
}

/** The question answered last: "make it 28" and "back" are about that one. A crew's defaults were not answered. */
function lastAnsweredIn(open: Open): QuestionName | null {
  const last = open.folded.live.findLast((entry) => entry.act !== 'default' && entry.act !== 'asked-back');
  return last?.question ?? null;
}
