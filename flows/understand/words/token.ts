import type Fraction from 'fraction.js';
import { numberAt } from './number.ts';
import { opaqueAt, splitUnits, textOf } from './opaque.ts';
import { type Raw, raws } from './raw.ts';
import { type UnitName, unitOfWord } from './unit.ts';

/**
 * What every reader of `flows/understand` reads:
 *
 *   tokens(said: string): Token[]
 *   saidBetween(tokens, from, to): string     the words from..to (to exclusive), for a fact's `said`
 *   isNumber(token), isUnit(token), isWord(token, ...words)
 *
 * All text is lower case; apostrophes inside words are gone ("dont", "its"), hyphens between letters too
 * ("d-rings" is d, rings). Figures glued to letters that are no unit stay one word ("1890s", "70s", "12v").
 * "x", "×", "*" and "by" between figures are the mark "x"; inch and foot signs are units.
 * Number words are numbers, also "one" and "two" of "the left one": `words` is then true, and `text`
 * keeps the words, so compare `text` whatever the kind. "in" straight after a figure is always
 * the unit 'in' here; `length.ts` says whether it may be "inward".
 */
export type Token = { text: string; glued: boolean } & (
  | {
      kind: 'number';
      value: Fraction;
      /** The second reading, where a comma or a dot may be decimal or thousands. */
      other?: Fraction;
      /** "95,240": the two figures, should it be a pair. */
      pair?: readonly [Fraction, Fraction];
      negative: boolean;
      /** Spelled in words. */
      words: boolean;
      /** Said with a fraction of a tape ("10 1/2", "three and a half"). */
      fraction: boolean;
    }
  | { kind: 'unit'; unit: UnitName }
  | { kind: 'word' }
  | { kind: 'mark' }
);

export type NumberToken = Extract<Token, { kind: 'number' }>;
type UnitToken = Extract<Token, { kind: 'unit' }>;

/** Splits a message into numbers, units, words and marks. Linear in its length; never throws. */
export function tokens(said: string): Token[] {
  const runs = splitUnits(raws(said));
  const found: Token[] = [];
  for (let at = 0; at < runs.length; ) {
    const token = opaqueToken(runs, at) ?? number(runs, at, found) ?? other(runs, at, found);
    if (token.token !== null) found.push(token.token);
    at = token.next;
  }
  return found;
}

function opaqueToken(runs: readonly Raw[], at: number) {
  const word = opaqueAt(runs, at);
  if (word === null) return null;
  return {
    token: { kind: 'word' as const, text: word.text, glued: runs[at]?.glued ?? false },
    next: word.next,
  };
}

function number(runs: readonly Raw[], at: number, before: readonly Token[]) {
  const run = runs[at];
  const loose = !run?.glued || before.length === 0 || runs[at - 1]?.text === '-';
  const minus =
    (run?.text === '-' && runs[at + 1]?.glued && loose) || run?.text === 'minus' || run?.text === 'negative';
  const last = before.at(-1);
  const sum = last?.kind === 'number' || (last?.kind === 'unit' && last.text !== 'in');
  const negative = minus && !sum;
  const start = negative ? at + 1 : at;
  const read = numberAt(runs, start);
  if (read === null || (negative && runs[start]?.text === 'a')) return null;
  const { next, ...figure } = read;
  const text = textOf(runs.slice(at, next));
  return { token: { kind: 'number' as const, ...figure, negative, text, glued: run?.glued ?? false }, next };
}

function other(runs: readonly Raw[], at: number, before: readonly Token[]) {
  const run = runs[at] ?? { kind: 'mark' as const, text: '', glued: false };
  const { text, glued } = run;
  const next = at + 1;
  const last = before.at(-1);
  const afterFigure = last?.kind === 'number' || (last?.kind === 'word' && /^an?$/.test(last.text));
  const token = (kind: 'word' | 'mark', said: string) => ({ token: { kind, text: said, glued }, next });
  const unit = (name: UnitName) => ({ token: { kind: 'unit' as const, unit: name, text, glued }, next });
  if (run.kind === 'letters') {
    const tolerance = text === 'plus' ? (runs[next]?.text === 'or' ? next + 1 : next) : -1;
    if (runs[tolerance]?.text === 'minus')
      return { token: { kind: 'mark' as const, text: '±', glued }, next: tolerance + 1 };
    if (isBetween(runs, at, last)) return token('mark', 'x');
    const spelled = unitOfWord(text, afterFigure);
    return spelled === null ? token('word', text) : unit(spelled);
  }
  if (run.kind === 'digits') return token('word', text);
  if (text === '"' || text === "'") {
    if (last?.kind === 'number') return unit(text === '"' ? 'in' : 'ft');
    return { token: null, next };
  }
  if (text === '#' && last?.kind === 'number' && glued) return unit('lb');
  if (text === '-' && (glued || runs[next]?.glued)) {
    const letters = runs[at - 1]?.kind === 'letters' || runs[next]?.kind === 'letters';
    if (letters && glued && runs[next]?.glued) return { token: null, next };
  }
  if (text === '+' && /^[/-]$/.test(runs[next]?.text ?? '')) {
    return {
      token: { kind: 'mark' as const, text: '±', glued },
      next: runs[next]?.text === '/' ? at + 3 : at + 2,
    };
  }
  return text === '&' ? token('word', 'and') : token('mark', text);
}

/** True for the "x" or "by" that stands between two figures. */
function isBetween(runs: readonly Raw[], at: number, last: Token | undefined): boolean {
  const text = runs[at]?.text;
  if ((text !== 'x' && text !== 'by') || last === undefined) return false;
  const side =
    last.kind === 'number' || last.kind === 'unit' || /^(w|h|d|wide|high|tall|\))$/.test(last.text);
  const next = runs[at + 1];
  const ahead = next?.kind === 'digits' || next?.text === '-' || numberAt(runs, at + 1) !== null;
  return side && (ahead || (next?.glued === false && /^[whd]$/.test(next.text)));
}

/** The words of `from`..`to` (exclusive), joined as they stood. */
export function saidBetween(all: readonly Token[], from: number, to: number): string {
  return all
    .slice(from, to)
    .map((token, at) => (at > 0 && !token.glued ? ` ${token.text}` : token.text))
    .join('');
}

export function isNumber(token: Token | undefined): token is NumberToken {
  return token?.kind === 'number';
}

export function isUnit(token: Token | undefined): token is UnitToken {
  return token?.kind === 'unit';
}

/** True when the token's text is one of `words`, whatever its kind. */
export function isWord(token: Token | undefined, ...words: readonly string[]): boolean {
  return token !== undefined && words.includes(token.text);
}
