import type { JobSoFar } from '../../core/job.ts';
import type { QuestionName } from '../question.ts';
import type { DisplayUnit } from '../reading.ts';
import type { Choice, Expects } from '../reply.ts';

/** What a question may look at to know whether it is still to be asked. */
export type Heard = {
  readonly job: JobSoFar;
  /** Questions with a live answer of their own, "don't know" included. */
  readonly answered: ReadonlySet<QuestionName>;
  /** Questions whose last answer was "don't know". */
  readonly unknown: ReadonlySet<QuestionName>;
};

/** A question as data: the machine says when, this says what. */
export type Question = {
  /** Short, with its unit and how to measure it in a line. A function where part is known already. */
  asks: string | ((job: JobSoFar, unit: DisplayUnit) => string);
  expects: Expects;
  choices: readonly Choice[];
  /** Other buttons where part is known already. A value that is no fact of the question is read as its words. */
  choicesFor?: (job: JobSoFar, unit: DisplayUnit) => readonly Choice[];
  why: string;
  example: string;
  /** True while the answer is needed and not there. */
  isMissing: (heard: Heard) => boolean;
  /** What "don't know" records; null where nothing goes on without it, so it is put off and asked again. */
  ifUnknown: { value: JobSoFar; says: string } | null;
  /** What "don't know" takes instead of putting it off: the usual, said at once and confirmed before the plan. */
  usual?: (job: JobSoFar, unit: DisplayUnit) => { value: JobSoFar; says: string } | null;
  /** How to find out, for who doesn't know. */
  howTo: string;
};

export const choice = (value: string, label: string): Choice => ({ value, label });

export const NOT_SURE: Choice = { value: 'unknown', label: 'Not sure' };

export const isAbsent = (value: unknown): boolean => value === undefined;
