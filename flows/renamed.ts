import type { Entry } from './entry.ts';
import type { QuestionName } from './question.ts';
import { isQuestionName } from './questions/all.ts';

/** Questions that once had another name. The ledger keeps the old one for ever; a resumed conversation reads the new. */
const RENAMED: Readonly<Record<string, QuestionName>> = {};

/** Today's name of a question, or null for one this flow does not know. */
export function todaysName(name: string, renamed = RENAMED): QuestionName | null {
  const now = Object.hasOwn(renamed, name) ? renamed[name] : name;
  return now !== undefined && isQuestionName(now) ? now : null;
}

/** Entries with today's names. One whose question is gone keeps its value, which is a part of a job all the same. */
export function withTodaysNames(entries: readonly Entry[], renamed = RENAMED): readonly Entry[] {
  return entries.map((entry) => {
    if (entry.question === null) return entry;
    const name = todaysName(entry.question, renamed);
    return name === entry.question ? entry : { ...entry, question: name };
  });
}
