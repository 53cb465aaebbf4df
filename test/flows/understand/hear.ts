import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../../flows/question.ts';
import type { DisplayUnit, Listening } from '../../../flows/reading.ts';
import { readHanging } from '../../../flows/understand/hangers/hanging.ts';
import { readLengthFor } from '../../../flows/understand/lengths/length-answer.ts';
import { LENGTH_QUESTIONS } from '../../../flows/understand/lengths/length-value.ts';
import { readMass } from '../../../flows/understand/piece/mass-answer.ts';
import { readSize } from '../../../flows/understand/piece/size.ts';
import type { Heard } from '../../../flows/understand/words/heard.ts';
import { type Token, tokens } from '../../../flows/understand/words/token.ts';

export type Said = { unit?: DisplayUnit; known?: JobSoFar; lastAnswered?: QuestionName };

function listening(awaiting: QuestionName | null, said: Said = {}): Listening {
  return {
    awaiting,
    known: said.known ?? {},
    unit: said.unit ?? 'mm',
    lastAnswered: said.lastAnswered ?? null,
    hasPlan: false,
  };
}

const READERS: Partial<Record<QuestionName, (said: readonly Token[], hearing: Listening) => Heard>> = {
  'piece.massKg': readMass,
  'piece.size': readSize,
  'piece.hanging': readHanging,
  ...Object.fromEntries(
    LENGTH_QUESTIONS.map((question) => [
      question,
      (said: readonly Token[], hearing: Listening) => readLengthFor(question, said, hearing),
    ]),
  ),
};

/** What the reader of a question makes of an answer to it, or of a message while another is open. */
export function hear(
  question: QuestionName,
  say: string,
  said: Said = {},
  awaiting: QuestionName | null = question,
): Heard {
  const reader = READERS[question];
  if (reader === undefined) throw new Error(`no reader for ${question}`);
  return reader(tokens(say), listening(awaiting, said));
}

/** Everything the readers of quantities make of one message together, each on what the one before left. */
export function hearAll(say: string, awaiting: QuestionName | null): JobSoFar {
  const hearing = listening(awaiting);
  const job: JobSoFar = {};
  let rest = tokens(say);
  for (const question of ['piece.hanging', 'piece.size', 'piece.massKg', ...LENGTH_QUESTIONS] as const) {
    const heard = READERS[question]?.(rest, hearing) ?? null;
    if (heard === null) continue;
    rest = heard.rest;
    if (heard.kind !== 'facts') continue;
    for (const { value } of heard.facts) {
      if (value.piece) job.piece = { ...job.piece, ...value.piece };
      if (value.wall) job.wall = { ...job.wall, ...value.wall };
    }
  }
  return job;
}

/** "ask", "refused", null, or what the facts set, flat: { 'piece.massKg': 24 }. */
export function outcome(heard: Heard): string | null | Record<string, unknown> {
  if (heard === null) return null;
  if (heard.kind !== 'facts') return heard.kind;
  return Object.assign({}, ...heard.facts.map((each) => flat(each.value, '')));
}

export function flat(value: unknown, path: string): Record<string, unknown> {
  if (Array.isArray(value) || typeof value !== 'object' || value === null) return { [path]: value };
  return Object.assign(
    {},
    ...Object.entries(value).map(([key, each]) => flat(each, path === '' ? key : `${path}.${key}`)),
  );
}

type Point = { fromLeftMm?: number; fromRightMm?: number; fromCentreMm?: number; fromTopMm?: number };

/** Points as sayings.json writes them: from the right negative, the middle 0.5. */
export function pairs(points: unknown): number[][] {
  return ((points ?? []) as Point[]).map((each) => [
    each.fromCentreMm !== undefined ? 0.5 : (each.fromLeftMm ?? -(each.fromRightMm ?? Number.NaN)),
    each.fromTopMm ?? Number.NaN,
  ]);
}
