import { entryWithout, type Speaker } from '../accept.ts';
import { fold } from '../fold.ts';
import { listeningTo } from '../listening.ts';
import { type Open, stateOf } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { QuestionName } from '../question.ts';
import { factsSaid } from './facts.ts';
import type { Turn } from './turn.ts';

const ANOTHER = /\b(?:another|(?:a|the|on a) different|the other|the opposite|the next|a new) wall\b/i;
const NO_ANSWER = /\?\s*$|\b(?:side|no|not|neither|cannot|can[’']?t)\b/i;

/** A stopped job that moves to another wall: what was said of the first one is off, piece, building and crew stay. */
export function onAnotherWall(open: Open, said: string, speaker: Speaker, parts: Parts): Turn | null {
  if (stateOf(open) !== 'stopped' || !ANOTHER.test(said) || NO_ANSWER.test(said)) return null;
  const old = new Set(
    open.folded.live.flatMap(({ question }) => (question && isOfTheWall(question) ? [question] : [])),
  );
  const off = [...old].map((question) => entryWithout('take-back', question, speaker));
  const folded = fold(off, open.folded);
  const then: Open = { ...open, offered: null, folded };
  const rest = said.replace(ANOTHER, ' wall ');
  const reading = parts.understand(rest, {
    ...listeningTo(then),
    awaiting: 'wall.baseMaterial',
    hasPlan: false,
  });
  const turn = factsSaid(then, { ...reading, correction: true, refused: [] }, speaker);
  return {
    ...turn,
    added: [...off, ...turn.added],
    say: ['Another wall, then: what was said of the first is off.', ...turn.say],
  };
}

function isOfTheWall(question: QuestionName): boolean {
  return /^(?:wall|place|proof)\./.test(question) || question === 'hazards';
}
