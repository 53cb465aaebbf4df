import type { JobSoFar } from '../../../core/job.ts';
import type { Millimetres } from '../../../core/quantity.ts';
import type { DatumKind } from '../../../core/wall/wall.ts';
import type { QuestionName } from '../../question.ts';
import type { Listening } from '../../reading.ts';
import { isWord, type Token } from '../words/token.ts';

/** The questions that one length answers. */
export const LENGTH_QUESTIONS = [
  'piece.depthMm',
  'wall.widthMm',
  'wall.heightMm',
  'wall.thicknessMm',
  'wall.boardMm',
  'wall.voidMm',
  'wall.datum',
] as const satisfies readonly QuestionName[];

export type LengthQuestion = (typeof LENGTH_QUESTIONS)[number];

/** The part of a job that a length sets for a question. */
export function jobPart(
  question: LengthQuestion,
  value: Millimetres,
  all: readonly Token[],
  listening: Listening,
): JobSoFar {
  switch (question) {
    case 'piece.depthMm':
      return { piece: { depthMm: value } };
    case 'wall.widthMm':
      return { wall: { widthMm: value } };
    case 'wall.heightMm':
      return { wall: { heightMm: value } };
    case 'wall.thicknessMm':
      return { wall: { thicknessMm: value } };
    case 'wall.boardMm':
      return { wall: { boardMm: value } };
    case 'wall.voidMm':
      return { wall: { voidMm: value } };
    case 'wall.datum':
      return { wall: { datum: { kind: datumKind(all, listening), aboveFloorMm: value } } };
  }
}

function datumKind(all: readonly Token[], listening: Listening): DatumKind {
  if (all.some((each) => isWord(each, 'mantel', 'mantle', 'mantelpiece', 'mantlepiece', 'mantelshelf')))
    return 'mantel';
  return listening.known.wall?.datum?.kind ?? 'furniture';
}
