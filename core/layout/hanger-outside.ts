import type { Hanging } from '../job.ts';
import type { PlacedHanger } from '../piece/hangers.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** The first hanger that is not on the piece, with how far it is off; ears and plates may stand above the top. */
export function hangerOutside(
  by: Hanging['by'],
  hangers: readonly PlacedHanger[],
  widthMm: Millimetres,
  heightMm: Millimetres,
): DoesNotFit | null {
  const mayStandAbove = by === 'rings' || by === 'clips';
  for (const { acrossMm, dropMm } of hangers) {
    const side = mm(Math.max(0 - acrossMm, acrossMm - widthMm));
    if (side > NOISE) return outside(side, acrossMm < 0 ? 'past the left side' : 'past the right side');
    const below = mm(dropMm - heightMm);
    if (below > NOISE) return outside(below, 'below the bottom edge');
    if (!mayStandAbove && dropMm < 0) return outside(mm(0 - dropMm), 'above the top edge');
  }
  return null;
}

function outside(over: Millimetres, where: string): DoesNotFit {
  return doesNotFit(
    'hangerOutside',
    `A hanger would be ${lengthText(over)} ${where} of the piece.`,
    'Measure the piece and its hangers again: in from the side, down from the top.',
    over,
  );
}
