import type { Frame } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Accessory, Wall } from '../wall/wall.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** Size of an accessory that was not measured: at least this much of an opening is there. */
const LARGER_PLATE = sourced(
  { width: mm(146), height: mm(86) },
  'our-choice',
  'contract 4: the larger common plate',
  'our-choice',
);

type Openings = Pick<Wall, 'accessories' | 'widthMm'>;

/** Windows and doors as this face has them: one told of on the far side goes through the wall, mirrored. */
export function openingsOf({ accessories, widthMm }: Openings): Accessory[] {
  if (!Array.isArray(accessories)) return [];
  return accessories
    .filter(({ kind }) => kind === 'window' || kind === 'door')
    .map((each) => (each.face === 'this' ? each : { ...each, xMm: mm(widthMm - each.xMm) }));
}

/**
 * The first opening a frame covers part of, with the least move that clears it; null when none, or when how high
 * the frame is above the floor is not known.
 */
export function overOpening(
  frame: Frame,
  wall: Openings,
  levelAboveFloorMm: Millimetres | null,
  what = 'The piece',
): DoesNotFit | null {
  if (levelAboveFloorMm === null) return null;
  for (const opening of openingsOf(wall)) {
    const edges = edgesOf(opening, levelAboveFloorMm);
    const moves = [
      { way: 'left', by: frame.rightMm - edges.leftMm },
      { way: 'right', by: edges.rightMm - frame.leftMm },
      { way: 'down', by: frame.topMm - edges.bottomMm },
      { way: 'up', by: edges.topMm - frame.bottomMm },
    ];
    if (moves.every(({ by }) => by > NOISE)) return covers(opening, moves, what);
  }
  return null;
}

/** Edges of an opening in a frame's own heights, `levelAboveFloorMm` below which the floor lies. Millimetres. */
export function edgesOf(opening: Accessory, levelAboveFloorMm: Millimetres): Frame {
  const halfWidth = (opening.widthMm ?? LARGER_PLATE.value.width) / 2;
  const halfHeight = (opening.heightMm ?? LARGER_PLATE.value.height) / 2;
  const centreMm = opening.yMm - levelAboveFloorMm;
  return {
    leftMm: mm(opening.xMm - halfWidth),
    rightMm: mm(opening.xMm + halfWidth),
    bottomMm: mm(centreMm - halfHeight),
    topMm: mm(centreMm + halfHeight),
  };
}

function covers(opening: Accessory, moves: readonly { way: string; by: number }[], what: string): DoesNotFit {
  const least = moves.reduce((best, move) => (move.by < best.by ? move : best));
  const over = mm(least.by);
  return doesNotFit(
    'overOpening',
    `${what} would cover part of the ${opening.kind}, by ${lengthText(over)}.`,
    `Move it at least ${lengthText(over)} ${least.way}, or choose another place.`,
    over,
  );
}

/** What can't be told about the openings: one whose size nobody measured, one whose height above the datum is not known. */
export function openingAdvice(frame: Frame, wall: Openings, levelAboveFloorMm: Millimetres | null): string[] {
  return openingsOf(wall).flatMap(({ kind, xMm, widthMm, heightMm }) => {
    if (widthMm === undefined || heightMm === undefined) {
      return [`The size of the ${kind} is not known, so only its middle was kept clear: measure its edges.`];
    }
    const beside = xMm + widthMm / 2 <= frame.leftMm || xMm - widthMm / 2 >= frame.rightMm;
    return levelAboveFloorMm === null && !beside
      ? [`How high the piece is above the floor is not known: see that it does not cover the ${kind}.`]
      : [];
  });
}
