import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm, times } from '../quantity.ts';
import { type Basis, basisOf, sourced } from '../sources.ts';
import type { Piece } from './piece.ts';

const AT_DEPTH = sourced(
  1,
  'our-choice',
  'contract 4: the centre of mass lies its depth from the wall',
  'our-choice',
);
export const USUAL_DEPTH = sourced(mm(40), 'our-choice', 'depth of a framed piece, not given', 'our-choice');

/** Where the weight acts: from the finished wall and from the piece's left edge, in millimetres. */
export type CentreOfMass = {
  fromWallMm: Millimetres;
  fromLeftMm: Millimetres;
  assumptions: Assumption[];
  basis: readonly Basis[];
};

/**
 * Centre of mass of a piece: as given, else its whole depth out from the wall and at mid-width (contract 4).
 * The whole depth is the careful side, since what pulls a screw outward grows with it.
 */
export function comOf(
  piece: Pick<Piece, 'widthMm' | 'depthMm' | 'comFromWallMm' | 'comFromLeftMm'>,
): CentreOfMass {
  const depth = piece.comFromWallMm ?? piece.depthMm;
  const assumptions: Assumption[] =
    depth === undefined
      ? [
          {
            field: 'piece.depthMm',
            value: USUAL_DEPTH.value,
            because:
              'depth was not given; this is on the deep side for a framed piece, and deeper pulls harder',
          },
        ]
      : [];
  return {
    fromWallMm: depth ?? USUAL_DEPTH.value,
    fromLeftMm: piece.comFromLeftMm ?? times(piece.widthMm, 1 / 2),
    assumptions,
    basis: [basisOf(depth === undefined ? USUAL_DEPTH : AT_DEPTH)],
  };
}
