import type { DisplayUnit, Listening } from '../../reading.ts';
import { massesIn } from '../piece/mass.ts';
import type { Token } from '../words/token.ts';
import { lengthsIn } from './length.ts';

/**
 * The unit a message speaks in, when it says one. Metres alone change nothing: who says "2.7 m" of a wall
 * says millimetres of a frame.
 */
export function unitSpoken(all: readonly Token[], { unit, awaiting }: Listening): DisplayUnit | undefined {
  const said = lengthsIn(all, awaiting === null ? { unit } : { unit, question: awaiting }).flatMap(
    (length) => (length.readings.length === 1 && length.unitSaid !== null ? [length.unitSaid] : []),
  );
  if (said.includes('mm')) return 'mm';
  if (said.includes('cm')) return 'cm';
  if (said.includes('in') || said.includes('ft')) return 'in';
  if (said.length > 0) return undefined;
  const masses = massesIn(all).flatMap((mass) => (mass.unit === null ? [] : [mass.unit]));
  return masses.includes('lb') || masses.includes('oz') ? 'in' : undefined;
}
