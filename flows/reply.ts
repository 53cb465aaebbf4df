import type { Fixing } from '../core/fixing/fixing-shape.ts';
import type { CrossCheck, Mark, Severity, Verdict } from '../core/plan-shape.ts';
import type { QuestionName } from './question.ts';
import type { DisplayUnit } from './reading.ts';

/** Replies say what, never how: a renderer per platform does the rest. Each `text` is complete in itself. */
export type Choice = { value: string; label: string };

export type Expects =
  | 'text'
  | 'choice'
  | 'length'
  | 'mass'
  | 'size'
  | 'points'
  | 'yes-no'
  | 'number'
  | 'year'
  | 'place'
  | 'accessories';

export type Reply =
  | { kind: 'text'; text: string }
  | { kind: 'question'; question: QuestionName; text: string; expects: Expects; choices: Choice[] }
  | { kind: 'caution'; id: string; severity: Severity; text: string; basis: string[] }
  | { kind: 'marks'; text: string; marks: Mark[]; crossChecks: CrossCheck[]; unit: DisplayUnit }
  | { kind: 'fixing'; text: string; fixing: Fixing }
  | { kind: 'table'; text: string; columns: string[]; rows: string[][] }
  | { kind: 'picture' | 'document'; text: string; alt: string; url: string }
  | { kind: 'plan'; text: string; id: string; verdict: Verdict };
