import { MM_PER_INCH } from '../../core/quantity.ts';
import type { DisplayUnit, Fact, Reading } from '../reading.ts';

/** Inches are said in sixteenths off a tape, or in tenths. Parts of an inch. */
const PARTS = [16, 10] as const;
/** How near a length must be to such a part to have been said in inches, in parts. */
const NEAR = 0.02;

/**
 * The unit a message speaks in. "95 in and 240 down" holds the word and not the inch: when fewer than half of the
 * lengths it gave are whole parts of an inch, nothing was said in inches.
 */
export function spokenUnit({ unit, facts }: Reading): DisplayUnit | undefined {
  if (unit !== 'in') return unit;
  const lengths = facts.flatMap(lengthsIn);
  return lengths.length > 2 * lengths.filter(isPartOfAnInch).length ? undefined : unit;
}

function isPartOfAnInch(lengthMm: number): boolean {
  const inches = lengthMm / MM_PER_INCH;
  return PARTS.some((parts) => Math.abs(inches * parts - Math.round(inches * parts)) < NEAR);
}

function lengthsIn({ value }: Fact): number[] {
  const found: number[] = [];
  const walk = (part: unknown, name: string): void => {
    if (typeof part === 'number' && /mm$/i.test(name) && part !== 0) found.push(part);
    else if (typeof part === 'object' && part !== null) {
      for (const [key, each] of Object.entries(part)) walk(each, Array.isArray(part) ? name : key);
    }
  };
  walk(value, '');
  return found;
}
