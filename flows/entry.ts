import type { JobSoFar } from '../core/job.ts';
import type { QuestionName } from './question.ts';
import type { DisplayUnit } from './reading.ts';

/**
 * One accepted answer, as the ledger keeps it. The entries since the last start-over fold into the job;
 * everything else (the machine's snapshot, the plan) is rebuilt from them.
 */
export type Entry = {
  act:
    | 'set'
    | 'take-back'
    | 'unknown'
    | 'confirm'
    | 'acknowledge'
    | 'start-over'
    | 'new-piece'
    | 'default'
    | 'asked-back';
  question: QuestionName | null;
  /** The part of a job it sets, as said. Null for acts that set nothing. */
  value: JobSoFar | null;
  said: string;
  by: string;
  /** RFC 3339. */
  at: string;
  unit?: DisplayUnit;
  /** Read from words or by plausibility: confirmed before the plan. */
  inferred?: boolean;
  /** Caution ids acknowledged. */
  cautions?: string[];
};
