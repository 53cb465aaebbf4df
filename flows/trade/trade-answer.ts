import type { JobSoFar } from '../../core/job.ts';
import { basisOf, type Sourced } from '../../core/sources.ts';
import { HOW_KNOWN } from '../wording/how-known.ts';
import { sentence } from '../wording/sentence.ts';

/** A question of the trade: every form in `asks` must match; `answer` is null when the figures in it are not ours. */
export type TradeAnswer = {
  asks: readonly RegExp[];
  answer: (text: string, job: JobSoFar) => string | null;
};

/** Where a number comes from, at the end of an answer. */
export function by(record: Omit<Sourced<unknown>, 'value'>): string {
  const { title, at, standing } = basisOf(record);
  return standing === 'common-practice' || standing === 'our-choice'
    ? `(${sentence(HOW_KNOWN[standing])})`
    : `(${title}, ${at}: ${HOW_KNOWN[standing]}.)`;
}

const NUMBER: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
  fourteen: 14,
};

/** The figure that stands before some words: 14 in "a 14 gauge". */
export function figureBefore(text: string, words: string): number | null {
  const said = new RegExp(
    `(\\d+(?:\\.\\d+)?|${Object.keys(NUMBER).join('|')})[\\s-]*(?:of )?(?:${words})`,
  ).exec(text)?.[1];
  return said === undefined ? null : (NUMBER[said] ?? Number(said));
}
