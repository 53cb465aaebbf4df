import type { JobSoFar } from '../core/job.ts';
import { MM_PER_INCH, mm } from '../core/quantity.ts';
import type { DisplayUnit } from './reading.ts';
import { length } from './wording/length.ts';

/** Middle of a piece above the floor: a convention of galleries, 1450 to 1550 mm or 57 to 60 in. */
const MIDDLE = { mm: mm(1500), in: mm(58 * MM_PER_INCH) };
/** Gap above furniture: common practice, 150 to 250 mm or 8 in. */
const GAP = { mm: mm(200), in: mm(8 * MM_PER_INCH) };

type Usual = { value: JobSoFar; words: string; label: string };

/** Where a piece usually hangs, for who does not know; null over a basin or a fire, where the place decides. */
export function usualHeight({ place, wall }: JobSoFar, unit: DisplayUnit): Usual | null {
  const tape = unit === 'in' ? 'in' : 'mm';
  const below = place?.below;
  if (below === 'sofa' || below === 'bed') {
    const gap = length(GAP[tape], unit);
    return {
      value: { place: { up: { by: 'bottom-above', mm: GAP[tape] } }, wall: { datum: { kind: 'furniture' } } },
      words: `its bottom ${gap} above the ${below}`,
      label: `Bottom ${gap} above the ${below}`,
    };
  }
  const isElsewhere = wall?.datum?.kind !== undefined && wall.datum.kind !== 'floor';
  if (isElsewhere || below === 'basin' || below === 'fireplace' || below === 'fireplace-unused') return null;
  const middle = length(MIDDLE[tape], unit);
  return {
    value: { place: { up: { by: 'centre-at', mm: MIDDLE[tape] } }, wall: { datum: { kind: 'floor' } } },
    words: `its middle ${middle} above the floor`,
    label: `Middle ${middle} above the floor`,
  };
}
