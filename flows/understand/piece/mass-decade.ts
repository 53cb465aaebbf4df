import Fraction from 'fraction.js';
import type { Token } from '../words/token.ts';

/** "mid 20s", "in the thirties": the ten kilograms meant, its first and last; null when none is said. */
export function decadeOf(all: readonly Token[]): readonly [Fraction, Fraction] | null {
  for (const token of all) {
    const digits = /^([1-9]0)s$/.exec(token.text)?.[1];
    const first = digits === undefined ? (DECADES.get(token.text) ?? null) : Number(digits);
    if (first !== null) return [new Fraction(first), new Fraction(first + LAST)];
  }
  return null;
}

const LAST = 9;
const DECADES = new Map(Object.entries({ twenties: 20, thirties: 30, forties: 40, fifties: 50 }));
