import { MM_PER_INCH } from '../../core/quantity.ts';
import type { DisplayUnit, Fact, Reading } from '../reading.ts';

/** Tapes show sixteenths; a decimal of an inch is finer, but site answers are not. Parts of an inch. */
const PARTS = 64;
/** How near a length must be to such a part to have been said in inches, in parts. */
const NEAR = 0.02;

/**
 * The unit a message speaks in. "95 in and 240 down" holds the word and not the inch: when no length it gave is a
 * whole part of an inch, nothing was said in inches.
 */
export function spokenUnit({ unit, facts }: Reading): DisplayUnit | undefined {
  if (unit !== 'in') return unit;
  const lengths = facts.flatMap(lengthsIn);
  return lengths.length > 0 && !lengths.some(isPartOfAnInch) ? undefined : unit;
}

function isPartOfAnInch(lengthMm: number): boolean {
  const parts = (lengthMm / MM_PER_INCH) * PARTS;
  return Math.abs(parts - Math.round(parts)) < NEAR;
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
