import type { Measured, MeasuredMark } from '../../core/check.ts';
import { MM_PER_INCH, mm } from '../../core/quantity.ts';
import { type Open, situationIn } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { DisplayUnit } from '../reading.ts';
import { inUnit } from '../wording/in-unit.ts';
import { inHandIn } from './in-hand.ts';
import { figureOf } from './tape-figure.ts';

const FIGURE = String.raw`\d+(?:\.\d+)?(?:[ -]\d+\/\d+)?|\d+\/\d+`;
/** A mark's letter, then how far from the left, then how far up: "A 1025 1020", "mark B is 1675 from the left and 1020 up". */
const MARK = new RegExp(String.raw`\b([a-h])\b[^\da-h]*?(?:[a-z =:,]*?)(${FIGURE})[^\d/]+?(${FIGURE})`, 'gi');

const MM_PER: Readonly<Record<DisplayUnit, number>> = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH };

/** Holds what was measured at the wall against the plan: go, or which mark is off, by how much, which way. */
export function readBack(said: string, open: Open, parts: Parts): string[] {
  const { whole } = situationIn(open);
  if (open.standing === null || whole === null) return ['There are no marks to check yet.'];
  const ids = open.standing.plan.marks.map(({ id }) => id);
  const marks = measuredIn(said, open.folded.unit, ids);
  const fixing = inHandIn(said);
  if (marks.length === 0 && fixing === null) {
    return [
      'Read each mark back by its letter: from the left, then up, for example “A 1025 1020, B 1675 1020”. Or say what is in your hand: “8 mm bit, 50 plug, 14 gauge 75”.',
    ];
  }
  const measured: Measured = { ...(marks.length > 0 && { marks }), ...(fixing && { fixing }) };
  return [inUnit(parts.checkOf(whole, measured).text, open.folded.unit)];
}

/** "14 g 75" holds no mark G: only the plan's own letters are marks, and one that is in line with them. */
function measuredIn(said: string, unit: DisplayUnit, ids: readonly string[]): MeasuredMark[] {
  const isMark = (letter: string): boolean => ids.includes(letter.toUpperCase()) || /[A-F]/.test(letter);
  const found = [...said.matchAll(MARK)].filter(([, letter = '']) => isMark(letter));
  return found.map(([, letter = '', left = '', up = '']) => ({
    id: letter.toUpperCase(),
    fromLeftMm: mm(figureOf(left) * MM_PER[unit]),
    upMm: mm(figureOf(up) * MM_PER[unit]),
  }));
}
