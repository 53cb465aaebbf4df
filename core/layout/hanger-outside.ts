import type { PlacedHanger } from '../piece/hangers.ts';
import type { Hanging } from '../piece/piece.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** The hanger furthest off the piece, with how far; null when all are on it. Ears and plates may stand above the top. */
export function hangerOutside(
  by: Hanging['by'],
  hangers: readonly PlacedHanger[],
  widthMm: Millimetres,
  heightMm: Millimetres,
): DoesNotFit | null {
  const mayStandAbove = by === 'rings' || by === 'clips';
  let worst = { over: NOISE, where: '' };
  for (const { acrossMm, dropMm } of hangers) {
    const ways = [
      { over: mm(0 - acrossMm), where: 'past the left side' },
      { over: mm(acrossMm - widthMm), where: 'past the right side' },
      { over: mm(dropMm - heightMm), where: 'below the bottom edge' },
      { over: mm(mayStandAbove ? 0 : 0 - dropMm), where: 'above the top edge' },
    ];
    for (const way of ways) if (way.over > worst.over) worst = way;
  }
  return worst.where === '' ? null : outside(worst.over, worst.where);
}

function outside(over: Millimetres, where: string): DoesNotFit {
  return doesNotFit(
    'hangerOutside',
    `A hanger would be ${lengthText(over)} ${where} of the piece.`,
    'Measure the piece and its hangers again: in from the side, down from the top.',
    over,
  );
}
