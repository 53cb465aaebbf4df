import type { Open } from './open.ts';
import type { QuestionName } from './question.ts';
import { QUESTIONS } from './questions/all.ts';
import type { Choice } from './reply.ts';

/** The buttons of a question as it is asked now. */
export function choicesNow(question: QuestionName, { folded }: Open): readonly Choice[] {
  const { choices, choicesFor } = QUESTIONS[question];
  return choicesFor?.(folded.job, folded.unit) ?? choices;
}
