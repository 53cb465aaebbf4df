import type { Mark } from './plan-shape.ts';
import { difference, type Millimetres, settled, sum, toTenth } from './quantity.ts';

/** Ends of a number's name that say it is a length or a force: these leave the program to a tenth. */
const TO_A_TENTH = /(?:Mm|N)$/;
/** Ratios leave to a hundredth. */
const TO_A_HUNDREDTH = /^(?:utilisation|tiltDeg)$/;

/**
 * Rounds once, at the end, on the way out: every number whose name ends in `Mm` or `N` to a tenth,
 * utilisation and tilt to a hundredth. A list takes its own name (`pullTestN: [...]`); values given as
 * assumptions keep what they are.
 */
export function rounded<T>(value: T): T {
  return walk(value, '') as T;
}

/**
 * A mark's figures to a tenth, so that left and right still make up the wall, and up and down its height: the
 * second of two is what the rounded first leaves. Rounded each by itself, two halves of a tenth add one to the wall.
 */
export function fromBothEnds(mark: Mark): Mark {
  const [fromLeftMm, fromRightMm] = tenthsOf(mark.fromLeftMm, mark.fromRightMm);
  if (mark.upMm === undefined || mark.downMm === undefined) return { ...mark, fromLeftMm, fromRightMm };
  const [upMm, downMm] = tenthsOf(mark.upMm, mark.downMm);
  return { ...mark, fromLeftMm, fromRightMm, upMm, downMm };
}

/** Two parts of one length, each to a tenth, that add up to it. */
function tenthsOf(one: Millimetres, other: Millimetres): [Millimetres, Millimetres] {
  const whole = settled(sum(one, other));
  return [toTenth(one), toTenth(settled(difference(whole, toTenth(one))))];
}

/** Words and citations, and whys, which round what they read out: nothing in them is rounded, and they are most of a plan. */
const WORDS = new Set([
  'why',
  'basis',
  'cautions',
  'steps',
  'tools',
  'advice',
  'rejected',
  'shopping',
  'clear',
]);

function walk(value: unknown, name: string): unknown {
  if (typeof value === 'number') return roundedNumber(value, name);
  if (Array.isArray(value)) return value.map((each) => walk(each, name));
  if (value === null || typeof value !== 'object') return value;
  const out: Record<string, unknown> = {};
  for (const key in value) {
    const child = (value as Record<string, unknown>)[key];
    out[key] = WORDS.has(key) ? child : walk(child, key);
  }
  return out;
}

function roundedNumber(value: number, name: string): number {
  const to = TO_A_TENTH.test(name) ? 10 : TO_A_HUNDREDTH.test(name) ? 100 : 0;
  // + 0 turns a negative zero into zero, which JSON would print alike but a comparison would not.
  return to === 0 ? value : Math.round(value * to) / to + 0;
}
