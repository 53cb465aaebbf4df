import { stripVTControlCharacters } from 'node:util';
import type { Answer } from './chat-say.ts';

type Reply = Answer['replies'][number];
export type Question = {
  question: string;
  expects: string;
  text: string;
  choices: { value: string; label: string }[];
};

/** Answers that may themselves be a number: there the choices are lettered, so that 2 stays 2. */
const FIGURES: readonly string[] = ['length', 'mass', 'size', 'points', 'number', 'year', 'place'];

/** The words of an answer for a terminal: every reply's text, the choices of the question under it. */
export function printed(answer: Answer): string {
  return answer.replies
    .map((reply) => plain(reply.kind === 'question' ? withChoices(reply) : reply.text))
    .join('\n\n');
}

/** The question now open, when this answer asks it. */
export function openQuestion(answer: Answer): Question | null {
  return answer.replies.flatMap((reply) => asked(reply) ?? [])[0] ?? null;
}

/** The choice that a typed number or letter stands for; null when the words are an answer of their own. */
export function choiceTyped(question: Question | null, typed: string): string | null {
  if (!question) return null;
  const at = question.choices.findIndex(
    (_, index) => labelAt(question, index) === typed.trim().toLowerCase(),
  );
  return question.choices[at]?.value ?? null;
}

function asked({ question, expects = 'text', text, choices = [] }: Reply): Question | null {
  return question === undefined ? null : { question, expects, text, choices };
}

function withChoices(reply: Reply): string {
  const question = asked(reply);
  if (!question) return reply.text;
  const lines = question.choices.map(({ label }, index) => `  ${labelAt(question, index)}) ${label}`);
  return [question.text, ...lines].join('\n');
}

function labelAt(question: Question, index: number): string {
  return FIGURES.includes(question.expects) ? String.fromCharCode(97 + index) : String(index + 1);
}

/** Someone else's words must not steer this terminal. */
function plain(text: string): string {
  return stripVTControlCharacters(text);
}
