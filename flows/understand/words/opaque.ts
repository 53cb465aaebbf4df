import type { Raw } from './raw.ts';
import { unitOfWord } from './unit.ts';

/** What may stand glued behind a figure besides a unit, without making one opaque word of both. */
const SUFFIXES = new Set(
  'x by w h d l r wide high tall deep long across thick down up apart left right ish odd or to and from each off above below o c'.split(
    ' ',
  ),
);
const UNIT_BY = /^(?:(mm|cm|m|in|ft|kg|w|h|wide|high)(x|by)|(x|by)(w|h|d))$/;
const ORDINAL = /^(?:\d*1st|\d*2nd|\d*3rd|\d+th)$/;

/** "900mmx1200mm": the unit and the "x" were one run of letters. */
export function splitUnits(runs: readonly Raw[]): Raw[] {
  return runs.flatMap((run, at) => {
    const parts = run.kind === 'letters' && runs[at - 1]?.kind === 'digits' ? UNIT_BY.exec(run.text) : null;
    if (parts === null) return [run];
    const [, unit, by, x = '', letter = ''] = parts;
    const [first, second] = unit === undefined ? [x, letter] : [unit, by ?? ''];
    return [
      { ...run, text: first },
      { kind: 'letters' as const, text: second, glued: true },
    ];
  });
}

/** Figures that are no measure and stay one word: dates, ordinals, "1/0", "1890s", "12v", "1e5". Null otherwise. */
export function opaqueAt(runs: readonly Raw[], at: number): { text: string; next: number } | null {
  const [run, after, third] = [runs[at], runs[at + 1], runs[at + 2]];
  if (isOverZero(runs, at)) return { text: textOf(runs.slice(at, at + 3)), next: at + 3 };
  if (isDate(runs, at)) return { text: textOf(runs.slice(at, at + 5)), next: at + 5 };
  if (run?.kind !== 'digits' || after?.kind !== 'letters' || !after.glued) return null;
  const text = run.text + after.text;
  const ordinal = ORDINAL.test(text) && !(after.text === 'st' && third?.kind === 'digits');
  if (!ordinal && (SUFFIXES.has(after.text) || unitOfWord(after.text, true) !== null)) return null;
  let next = at + 2;
  let whole = text;
  for (let more = runs[next]; more?.glued && more.kind !== 'mark'; more = runs[next]) {
    whole += more.text;
    next += 1;
  }
  return { text: whole, next };
}

function isOverZero(runs: readonly Raw[], at: number): boolean {
  return runs[at]?.kind === 'digits' && runs[at + 1]?.text === '/' && /^0+$/.test(runs[at + 2]?.text ?? '');
}

/** "24/12/2024", "24-12-2024". */
function isDate(runs: readonly Raw[], at: number): boolean {
  const [day, first, month, second, year] = runs.slice(at, at + 5);
  const signs = first?.text === second?.text && /^[/-]$/.test(first?.text ?? '');
  const digits = day?.kind === 'digits' && month?.kind === 'digits' && year?.kind === 'digits';
  return signs && digits && [first, month, second, year].every((each) => each?.glued);
}

/** The runs as they stood. */
export function textOf(runs: readonly Raw[]): string {
  return runs.map((run, at) => (at > 0 && !run.glued ? ` ${run.text}` : run.text)).join('');
}
