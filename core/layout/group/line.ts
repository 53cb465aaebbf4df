import type { Across, Up } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { lengthText } from '../length-text.ts';
import type { DoesNotFit } from '../set-out.ts';
import { doesNotFit } from '../why-not.ts';

/** A stretch of wall, across from its left end or up from the datum. Millimetres. */
export type Stretch = { fromMm: Millimetres; toMm: Millimetres };

export const lengthOf = ({ fromMm, toMm }: Stretch): Millimetres => mm(toMm - fromMm);

/**
 * The stretch pieces are spread over: the whole wall; between two lines; from a left edge to the right end; from the
 * left end to a right edge; or as much either side of a centre as the nearer end allows.
 */
export function stretchAcross(across: Across, wallWidthMm: Millimetres): Stretch {
  switch (across.by) {
    case 'centre':
      return { fromMm: mm(0), toMm: wallWidthMm };
    case 'left-edge':
      return { fromMm: across.mm, toMm: wallWidthMm };
    case 'right-edge':
      return { fromMm: mm(0), toMm: mm(wallWidthMm - across.mm) };
    case 'centre-at':
      return about(across.mm, wallWidthMm);
    case 'between':
      return {
        fromMm: mm(Math.min(across.fromMm, across.toMm)),
        toMm: mm(Math.max(across.fromMm, across.toMm)),
      };
  }
}

/** The same for a column: from a bottom edge to the ceiling, from the datum to a top edge, or about a centre. */
export function stretchUp(up: Up, ceilingMm: Millimetres | null): Stretch | DoesNotFit {
  if (up.by === 'top-at') return { fromMm: mm(0), toMm: up.mm };
  if (ceilingMm === null) {
    return doesNotFit(
      'heightNotSaid',
      'To spread a column I need the height of the ceiling above what heights are measured from.',
      'Measure the wall from floor to ceiling, or say one gap between the pieces.',
    );
  }
  switch (up.by) {
    case 'bottom-above':
      return { fromMm: up.mm, toMm: ceilingMm };
    case 'below-ceiling':
      return { fromMm: mm(0), toMm: mm(ceilingMm - up.mm) };
    case 'centre-at':
      return about(up.mm, ceilingMm);
  }
}

function about(centreMm: Millimetres, endMm: Millimetres): Stretch {
  const half = Math.min(centreMm, endMm - centreMm);
  return { fromMm: mm(centreMm - half), toMm: mm(centreMm + half) };
}

/** Pieces that together are longer than what they are to be spread over: negative gaps are said, never overlapped. */
export function noRoomForGaps(overByMm: Millimetres, overMm: Millimetres): DoesNotFit {
  return doesNotFit(
    'noRoomForGaps',
    `The pieces together are ${lengthText(overByMm)} more than the ${lengthText(overMm)} they are spread over: there is no room for any gap.`,
    'Leave a piece out, use two rows, or choose a longer stretch of wall.',
    overByMm,
  );
}
