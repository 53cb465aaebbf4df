import type { Listening } from '../reading.ts';
import { readHanging } from './hangers/hanging.ts';
import { readLengthFor } from './lengths/length-answer.ts';
import { LENGTH_QUESTIONS, type LengthQuestion } from './lengths/length-value.ts';
import { readMass } from './piece/mass-answer.ts';
import { readSize } from './piece/size.ts';
import { type Found, nothing } from './words/found.ts';
import type { Heard } from './words/heard.ts';
import { type Outline, outlineOf } from './words/outline.ts';
import type { Token } from './words/token.ts';

/** A reader of tokens, made a reader of outlines. */
const lifted =
  (read: (said: readonly Token[], listening: Listening) => Heard) =>
  (outline: Outline, listening: Listening): Found => {
    const heard = read(outline.tokens, listening);
    if (heard === null) return nothing(outline);
    const found = nothing(outlineOf(heard.rest, outline));
    if (heard.kind === 'facts') return { ...found, facts: heard.facts };
    return heard.kind === 'ask' ? { ...found, asks: [heard.ask] } : { ...found, refused: [heard.refusal] };
  };

export const mass = lifted(readMass);
export const hanging = lifted(readHanging);
export const size = lifted(readSize);

/** The open question's own length, when it asks for one. */
export function askedLength(outline: Outline, listening: Listening): Found {
  const question = LENGTH_QUESTIONS.find((each): each is LengthQuestion => each === listening.awaiting);
  if (question === undefined) return nothing(outline);
  return lifted((said, hearing) => readLengthFor(question, said, hearing))(outline, listening);
}
