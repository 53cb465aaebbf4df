import type { JobSoFar } from '../core/job.ts';
import type { QuestionName } from './question.ts';

/** The unit a person speaks in; replies follow it. */
export type DisplayUnit = 'mm' | 'cm' | 'm' | 'in';

/** One thing that was said: the part of the job it sets, for one question. */
export type Fact = {
  question: QuestionName;
  value: JobSoFar;
  /** The words it was read from. */
  said: string;
  /** Set when the words said only part: what is still to be asked for this question. */
  partial?: string;
  /** True when it was read from words or by plausibility, so that it is confirmed before the plan. */
  inferred?: boolean;
};

/** Understood as an answer, but it can't be one. */
export type Refusal = { question: QuestionName; because: string; example: string };

/** Could be read two ways: asked back, with the readings named. Nothing is recorded for it. */
export type AskBack = {
  question: QuestionName;
  text: string;
  readings: { label: string; fact?: Fact }[];
};

export type Intent =
  | 'answer'
  | 'yes'
  | 'no'
  | 'none-of-these'
  | 'dont-know'
  | 'back'
  | 'start-over'
  | 'why'
  | 'help'
  | 'stop'
  | 'greet'
  | 'trade-question'
  | 'new-piece'
  | 'self-check'
  | 'where-were-we'
  | 'not-understood';

/** What a message says, before anything is recorded. */
export type Reading = {
  intent: Intent;
  facts: Fact[];
  refused: Refusal[];
  asks: AskBack[];
  /** "make that 28", "no wait, 26 kg": the facts replace earlier ones. */
  correction: boolean;
  /** Set when the message used one: the unit of the conversation follows. */
  unit?: DisplayUnit;
  /** For intent 'why': what is asked about, as typed ("72 mm", "the year"). */
  about?: string;
};

/** What is needed to read a message. Nothing else: no clock, no ledger. */
export type Listening = {
  awaiting: QuestionName | null;
  known: JobSoFar;
  unit: DisplayUnit;
  /** The question answered last: "make it 28" is about that one. */
  lastAnswered: QuestionName | null;
  /** True once there is a plan: a message naming another piece is then a question. */
  hasPlan: boolean;
  /** The readings last offered by an ask-back, so that "the second one" or "inches" can be taken. */
  offered?: AskBack;
};

/** Reads a message. Pure; never throws, whatever is typed. */
export type Understand = (said: string, listening: Listening) => Reading;
