import { z } from 'zod';
import { codePoints, TEXT_LIMIT_CODE_POINTS } from '../http/limits.ts';

/** Control characters other than new line and tab: nobody types them, and a terminal or a log obeys them. */
const CONTROL = /(?![\n\t])\p{Cc}/gu;
const ANY_CONTROL = /\p{Cc}/u;
/** Joiners, marks of direction and the like: they shape a word, and say nothing alone. */
const INVISIBLE = /\p{Cf}/gu;

/** A name for a thing: kept and compared as it is, so nothing in it may be invisible or half a character. */
export const identifier = (most: number, example: string) =>
  z
    .string()
    .refine((text) => codePoints(text) >= 1 && codePoints(text) <= most, {
      error: `text of 1 to ${most} characters`,
    })
    .refine((text) => text.isWellFormed() && !ANY_CONTROL.test(text), {
      error: 'text without control characters or half characters',
    })
    .meta({ minLength: 1, maxLength: most, examples: [example] });

/** A person's name: shown, never read for meaning. */
export const personName = z
  .string()
  .refine((text) => codePoints(text) <= 200, { error: 'text of at most 200 characters' })
  .meta({ maxLength: 200, examples: ['Robin'] })
  .transform(cleaned);

/** What someone typed. Control characters are dropped and half characters replaced before anyone reads it. */
export const typed = z
  .string()
  .refine((text) => codePoints(text) <= TEXT_LIMIT_CODE_POINTS, {
    error: `text of at most ${TEXT_LIMIT_CODE_POINTS.toLocaleString('en')} characters`,
  })
  .refine((text) => cleaned(text).replace(INVISIBLE, '').trim() !== '', { error: 'text that says something' })
  .meta({ minLength: 1, maxLength: TEXT_LIMIT_CODE_POINTS, examples: ['brick wall, 24 kg mirror'] })
  .transform(cleaned);

function cleaned(text: string): string {
  return text.toWellFormed().replace(CONTROL, ' ');
}
