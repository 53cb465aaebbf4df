import type { Check, Measured } from '../core/check.ts';
import type { Job, JobSoFar } from '../core/job.ts';
import type { Caution, Plan } from '../core/plan-shape.ts';
import type { QuestionName } from './question.ts';
import type { Fact, Understand } from './reading.ts';

/** What the conversation is put together from. Handed in, so that a test can put a plain one in its place. */
export type Parts = {
  understand: Understand;
  /** The fact a button stands for; null when the value is none of the question's. */
  factForChoice: (question: QuestionName, value: string) => Fact | null;
  planOf: (job: Job) => Plan;
  checkOf: (job: Job, measured: Measured) => Check;
  /** What stops a job wherever the piece goes, from what is known so far. */
  stopsSoFar: (job: JobSoFar) => readonly Caution[];
  /** Said in one line with every set of marks. */
  standingLine: string;
};
