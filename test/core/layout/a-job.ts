import type { Job, Place } from '../../../core/job.ts';
import type { Piece } from '../../../core/piece/piece.ts';
import { kg, mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';

/** A plain job to change one thing in: invented, an 840 x 1120 mirror on two rings in the middle of a 2700 brick wall. */
export function jobOf(
  change: { piece?: Partial<Piece>; wall?: Partial<Wall>; place?: Partial<Place> } = {},
): Job {
  return {
    piece: {
      kind: 'mirror',
      widthMm: mm(840),
      heightMm: mm(1120),
      massKg: kg(24),
      hanging: {
        by: 'rings',
        points: [
          { fromLeftMm: mm(95), fromTopMm: mm(240) },
          { fromRightMm: mm(95), fromTopMm: mm(240) },
        ],
      },
      ...change.piece,
    },
    wall: { baseMaterial: 'clay-brick', widthMm: mm(2700), ...change.wall },
    place: { across: { by: 'centre' }, up: { by: 'bottom-above', mm: mm(800) }, ...change.place },
  };
}

/** Marks as [from left, up], for a table. */
export const pairs = (marks: readonly { fromLeftMm: number; upMm?: number }[]): (number | undefined)[][] =>
  marks.map((mark) => [mark.fromLeftMm, mark.upMm]);
