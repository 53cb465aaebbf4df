import { mm } from '../quantity.ts';
import type { PlacedMark } from './cross-checks.ts';
import { ceilingAt, type Fit } from './fit.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** A mark above the ceiling or below the floor though the piece itself fits: its seat or its drop is misread. */
export function markOffWall(placed: readonly PlacedMark[], fit: Omit<Fit, 'frame'>): DoesNotFit | null {
  for (const { id, xMm, yMm } of placed) {
    const above = mm(yMm - (ceilingAt(fit, xMm) ?? Infinity));
    const level = fit.bottom.levelAboveFloorMm;
    const below = mm(level === null ? -Infinity : 0 - level - yMm);
    const over = mm(Math.max(above, below));
    if (over > NOISE) {
      return doesNotFit(
        above > below ? 'throughCeiling' : 'belowDatum',
        `Mark ${id} would be ${lengthText(over)} ${above > below ? 'above the ceiling' : 'below the floor'}.`,
        'Measure again from where the hanger bears up to the screw, and down from the top of the frame.',
        over,
      );
    }
  }
  return null;
}
