import type { Offered } from '../open.ts';

const FIRST = /^(?:the )?(?:1|1st|one|first|former|a)(?: (?:one|of them))?$/;
const SECOND = /^(?:the )?(?:2|2nd|two|second|latter|b)(?: (?:one|of them))?$/;
const THIRD = /^(?:the )?(?:3|3rd|three|third|c)(?: (?:one|of them))?$/;
const LAST = /^(?:the )?last(?: one)?$/;
const NEWER = /\b(?:new|newer|now|latest|replace)\b/;
const OLDER = /\b(?:old|older|before|keep|earlier|original)\b/;
/** And nothing else: what more is said of it is read for itself. */
const THE_WALL =
  /^(?:its |it is |thats |that is |no |yes |the |for |of |is )*wall(?: is| width| height| of course| sorry)*$/;
const ANOTHER = /\b(?:new|another|next|different|other|separate)\b/;
const SAME_ONE = /\b(?:change|this|same|correct|edit|fix|that one)\b/;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.,/ ]+/gu, '')
    .trim();

/** Which of the readings offered was picked in words; null when none was. */
export function pickedIn(said: string, offered: Offered): number | null {
  const text = plain(said);
  const { readings } = offered.ask;
  const byLabel = readings.findIndex(({ label }) => plain(label) === text);
  if (byLabel >= 0) return byLabel;
  const byOrder = [FIRST, SECOND, THIRD].findIndex((form) => form.test(text));
  if (byOrder >= 0 && byOrder < readings.length) return byOrder;
  if (LAST.test(text)) return readings.length - 1;
  const ofTheWall = readings.findIndex(({ fact }) => fact?.question.startsWith('wall.'));
  if (offered.kind === 'contradiction' && ofTheWall > 1 && THE_WALL.test(text)) return ofTheWall;
  return byWord(text, offered.kind);
}

function byWord(text: string, kind: Offered['kind']): number | null {
  if (kind === 'contradiction') return OLDER.test(text) ? 0 : NEWER.test(text) ? 1 : null;
  if (kind === 'another-piece') return SAME_ONE.test(text) ? 1 : ANOTHER.test(text) ? 0 : null;
  return null;
}

const READING = /^reading-(\d)$/;

/** The value of a button for a reading, and back. */
export const readingValue = (index: number): string => `reading-${index + 1}`;

export function readingChosen(value: string): number | null {
  const digit = READING.exec(value)?.[1];
  return digit === undefined ? null : Number(digit) - 1;
}
