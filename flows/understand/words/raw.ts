import { normalise } from './normalise.ts';

/** A run of digits with their points and commas, a run of letters, or one other sign. */
export type Raw = {
  kind: 'digits' | 'letters' | 'mark';
  text: string;
  /** True when nothing stands between it and the one before. */
  glued: boolean;
};

/** "900,1200" is two figures: no thousands group has four digits. */
const DIGITS = /\d+(?:[.]\d+|,\d{1,3}(?!\d))*/y;
const LETTERS = /[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*/uy;
const SPACE = /[\s\p{C}\p{Z}]/u;
const SIGN = /[-+/.,;:()=%#&?!@~<>±°"'|]/;

/** Splits a message into runs, each read once. Emoji and control characters only separate. */
export function raws(said: string): Raw[] {
  const text = normalise(said);
  const found: Raw[] = [];
  let glued = false;
  for (let at = 0; at < text.length; ) {
    const run = runAt(text, at, glued);
    if (run !== null) {
      found.push({ ...run, glued });
      glued = true;
      at += run.length;
      continue;
    }
    const sign = text[at] ?? '';
    if (SIGN.test(sign)) {
      found.push({ kind: 'mark', text: sign, glued });
      glued = true;
    } else glued = false;
    at += 1;
  }
  return found;
}

function runAt(text: string, at: number, glued: boolean) {
  const code = text.charCodeAt(at);
  // ".5" after a space is a half; after a letter or digit the dot ends a sentence.
  const leadingDot = text[at] === '.' && !(glued && /[\p{L}\d]/u.test(text[at - 1] ?? ''));
  if ((code >= 48 && code <= 57) || (leadingDot && /\d/.test(text[at + 1] ?? ''))) {
    DIGITS.lastIndex = leadingDot ? at + 1 : at;
    const match = DIGITS.exec(text)?.[0] ?? '';
    return leadingDot
      ? { kind: 'digits' as const, text: `0.${match}`, length: match.length + 1 }
      : { kind: 'digits' as const, text: match, length: match.length };
  }
  if (SPACE.test(text[at] ?? '')) return null;
  LETTERS.lastIndex = at;
  const letters = LETTERS.exec(text)?.[0];
  if (letters === undefined) return null;
  return { kind: 'letters' as const, text: letters.replaceAll("'", ''), length: letters.length };
}
