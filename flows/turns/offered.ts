import { entryWithout, type Speaker } from '../accept.ts';
import { fold } from '../fold.ts';
import { listeningTo } from '../listening.ts';
import type { Offered, Open } from '../open.ts';
import type { Parts } from '../parts.ts';
import { describe } from '../wording/describe.ts';
import { factsSaid, recorded } from './facts.ts';
import type { Turn } from './turn.ts';

/** The reading that was picked is recorded; "what I said before" only takes the asking back. */
export function tookReading(
  open: Open,
  offered: Offered,
  index: number,
  speaker: Speaker,
  parts: Parts,
): Turn {
  if (offered.kind === 'another-piece') return tookPiece(open, offered, index, speaker, parts);
  const fact = offered.ask.readings[index]?.fact;
  if (fact === undefined) {
    const label = offered.ask.readings[index]?.label ?? '';
    return { added: [entryWithout('take-back', offered.ask.question, speaker)], say: [`${label} it is.`] };
  }
  const turn = recorded([fact], [describe(fact.value, open.folded.unit).join(', ')], speaker);
  if (fact.question === offered.ask.question) return turn;
  return { ...turn, added: [entryWithout('take-back', offered.ask.question, speaker), ...turn.added] };
}

const NEW_PIECE = 0;

export function anotherPiece(said: string): Offered {
  return {
    kind: 'another-piece',
    ask: {
      question: 'piece.kind',
      text: 'A new piece, or change this one?',
      readings: [{ label: 'A new one' }, { label: 'Change this one' }],
    },
    said,
  };
}

/** The words that named the other piece are read again, as the new piece's or as corrections of this one. */
function tookPiece(open: Open, offered: Offered, index: number, speaker: Speaker, parts: Parts): Turn {
  const isNew = index === NEW_PIECE;
  const opens = entryWithout(isNew ? 'new-piece' : 'take-back', 'piece.kind', speaker);
  const then: Open = { ...open, offered: null, folded: fold([opens], open.folded) };
  const reading = parts.understand(offered.said, { ...listeningTo(then), hasPlan: false, awaiting: null });
  const turn = factsSaid(
    then,
    { ...reading, correction: true, asks: [] },
    { ...speaker, said: offered.said },
  );
  return {
    ...turn,
    added: [opens, ...turn.added],
    say: [isNew ? 'A new piece on the same wall, the same crew.' : 'This one, then.', ...turn.say],
  };
}
