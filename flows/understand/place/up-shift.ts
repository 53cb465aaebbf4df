import { difference, sum } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { type Found, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const SHIFT =
  /(?:\bby )?<(\d+)> (higher|lower)\b|\b(?:raise|lift|move|bring|put|drop|lower)(?: (?:it|that|up|down|the|mirror|picture|frame))* (up|down)(?: by)? <(\d+)>/;

/** "100 higher": from where it was said to go. */
export function shifted(outline: Outline, listening: Listening): Found | null {
  const known = listening.known.place?.up;
  const match = SHIFT.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1] ?? match[4], 'place.up');
  if (known === undefined || match === null || length === null) return null;
  const rises = /^(?:higher|up)$/.test(match[2] ?? match[3] ?? '');
  const adds = rises !== (known.by === 'below-ceiling');
  const options = { expected: 'a height on a wall', example: '100 higher', inferred: true };
  return settled(
    without(outline, match),
    'place.up',
    length,
    (far) => ({ place: { up: { by: known.by, mm: adds ? sum(known.mm, far) : difference(known.mm, far) } } }),
    options,
  );
}
