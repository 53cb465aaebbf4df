import Fraction from 'fraction.js';
import { type Figure, figure } from './figure.ts';
import type { Raw } from './raw.ts';
import { scaled, spelled, spelledDigit } from './spelled.ts';
import { unitOfWord } from './unit.ts';

/** A number and how far it reaches; `words` when none of it was digits. */
type NumberSaid = Figure & { next: number; words: boolean; fraction: boolean };

const PARTS = new Map(
  Object.entries({
    half: 2,
    halfs: 2,
    halves: 2,
    third: 3,
    thirds: 3,
    quarter: 4,
    quarters: 4,
    eighth: 8,
    eighths: 8,
    sixteenth: 16,
    sixteenths: 16,
  }),
);
const ONE = new Fraction(1);
/** Denominators on a tape, and thirds. */
const TAPE = new Set(['2', '3', '4', '8', '16', '32', '64']);
const AND = new Set(['and', 'an', 'n', '&', 'nd', 'und']);

/** Reads the number that begins at `at`: digits, fractions, words and mixtures of them. */
export function numberAt(raws: readonly Raw[], at: number): NumberSaid | null {
  const base = baseAt(raws, at);
  if (base === null || base.fraction) return base;
  const whole = base.value.d === 1n;
  if (!whole) return base;
  const mixed = mixedPart(raws, base.next);
  if (mixed === null) return base;
  return { value: base.value.add(mixed.value), next: mixed.next, words: base.words, fraction: true };
}

function baseAt(raws: readonly Raw[], at: number): NumberSaid | null {
  const raw = raws[at];
  if (raw?.kind === 'digits') {
    const slashed = slashAt(raws, at);
    if (slashed !== null) {
      return { value: slashed.value, next: pastOf(raws, slashed.next), words: false, fraction: true };
    }
    const read = figure(raw.text);
    if (read === null) return null;
    const word = raws[at + 1]?.text;
    if ((word === 'hundred' || word === 'thousand') && read.value.d === 1n) {
      const more = scaled(raws, { value: read.value.valueOf(), next: at + 1 });
      return { value: new Fraction(more.value), next: more.next, words: false, fraction: false };
    }
    if (word === 'point' && raws[at + 2]?.kind === 'digits') {
      const value = figure(`${raw.text}.${raws[at + 2]?.text}`)?.value;
      if (value !== undefined) return { value, next: at + 3, words: false, fraction: false };
    }
    return { ...read, next: at + 1, words: false, fraction: false };
  }
  if (raw?.kind !== 'letters') return null;
  return wordsAt(raws, at);
}

function wordsAt(raws: readonly Raw[], at: number): NumberSaid | null {
  const text = raws[at]?.text;
  const article = text === 'a' || text === 'an' ? 1 : 0;
  const part = partAt(raws, at + article, ONE);
  // "Quarter of a metre" leaves the article out.
  const unit = raws[part?.next ?? at]?.text ?? '';
  const lone = part !== null && unit.length > 2 && unitOfWord(unit, true) !== null;
  if (part !== null && (article === 1 || text === 'half' || lone)) {
    return { ...part, words: true, fraction: true };
  }
  if (article === 1 && !/^hund|^thous/.test(raws[at + 1]?.text ?? '')) return null;
  const read = spelled(raws, at + article);
  if (read === null) return null;
  const count = new Fraction(read.value);
  const counted = read.value < 16 ? partAt(raws, read.next, count) : null;
  if (counted !== null && raws[read.next]?.text !== 'half')
    return { ...counted, words: true, fraction: true };
  const decimals = raws[read.next]?.text === 'point' ? pointAt(raws, read.next + 1) : null;
  if (decimals === null) return { value: count, next: read.next, words: true, fraction: false };
  return { value: count.add(decimals.value), next: decimals.next, words: true, fraction: false };
}

/** "half", "quarters of an" … : as many parts as `count`; the words up to the unit are taken too. */
function partAt(raws: readonly Raw[], at: number, count: Fraction) {
  const parts = raws[at]?.kind === 'letters' ? PARTS.get(raws[at]?.text ?? '') : undefined;
  if (parts === undefined) return null;
  return { value: count.div(parts), next: pastOf(raws, at + 1) };
}

/** Past the "of an" of "three quarters of an inch", when a unit follows. */
function pastOf(raws: readonly Raw[], at: number): number {
  const of = raws[at]?.text === 'of' ? 1 : 0;
  const article = /^an?$/.test(raws[at + of]?.text ?? '') ? 1 : 0;
  const unit = of + article > 0 && unitOfWord(raws[at + of + article]?.text ?? '', true) !== null;
  return unit ? at + of + article : at;
}

/** "three point four five". */
function pointAt(raws: readonly Raw[], from: number) {
  let digits = '';
  let next = from;
  for (; next < raws.length && digits.length < 6; next += 1) {
    const digit = spelledDigit(raws[next]) ?? (raws[next]?.kind === 'digits' ? raws[next]?.text : null);
    if (digit === null || digit === undefined || !/^\d+$/.test(`${digit}`)) break;
    digits += `${digit}`;
  }
  return digits === '' ? null : { value: new Fraction(`0.${digits.slice(0, 6)}`), next };
}

/** "1/2" typed without spaces; not "5/2024", not "24/25". */
function slashAt(raws: readonly Raw[], at: number) {
  const [top, slash, bottom] = [raws[at], raws[at + 1], raws[at + 2]];
  if (top?.kind !== 'digits' || slash?.text !== '/' || bottom?.kind !== 'digits') return null;
  if (!TAPE.has(bottom.text) || !/^\d{1,2}$/.test(top.text) || raws[at + 3]?.text === '/') return null;
  return { value: new Fraction(Number(top.text), Number(bottom.text)), next: at + 3 };
}

/** What follows a whole number: " 1/2", "-1/2", "and a half", "and three quarters". */
function mixedPart(raws: readonly Raw[], at: number) {
  const joined = raws[at]?.text === '-' && raws[at]?.glued && raws[at + 1]?.glued ? 1 : 0;
  const slashed = slashAt(raws, at + joined);
  if (slashed !== null) return slashed.value.lt(1) && (joined === 1 || !raws[at]?.glued) ? slashed : null;
  if (!AND.has(raws[at]?.text ?? '')) return null;
  const part = fractionAfterAnd(raws, at + 1);
  // "95 and a quarter of the way down": the quarter is another figure.
  const share = part !== null && /^(of|way)$/.test(raws[part.next]?.text ?? '');
  return share ? null : part;
}

/** "a half", "half", "3/4", "three quarters" after an "and". */
function fractionAfterAnd(raws: readonly Raw[], at: number) {
  const slashed = slashAt(raws, at);
  if (slashed !== null) return slashed.value.lt(1) ? slashed : null;
  const article = /^an?$/.test(raws[at]?.text ?? '') ? 1 : 0;
  const part = partAt(raws, at + article, ONE);
  if (part !== null) return part;
  const count = spelledDigit(raws[at]);
  return count === null ? null : partAt(raws, at + 1, new Fraction(count));
}
