import type { Up } from '../job.ts';
import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Datum, datumName } from './datum.ts';
import type { DoesNotFit } from './set-out.ts';
import { doesNotFit } from './why-not.ts';

/**
 * Where the piece's bottom edge comes, and from what level. `levelAboveFloorMm` plus any height up of the plan
 * is a height above the finished floor; null when not known. `downFrom` is set when marks are measured down from
 * the ceiling: the ceiling's height in the same frame as `bottomMm`.
 */
export type BottomEdge = {
  ok: true;
  bottomMm: Millimetres;
  levelAboveFloorMm: Millimetres | null;
  downFromMm: Millimetres | null;
  /** False with a ceiling of unknown height: then heights are negative, below the ceiling. */
  upKnown: boolean;
  formula: string;
  inputs: Record<string, number>;
  assumptions: Assumption[];
};

/** Bottom edge of a piece above the datum for every way of saying how high (contract 4), in millimetres. */
export function bottomEdgeOf(
  up: Up,
  datum: Datum,
  pieceHeightMm: Millimetres,
  wallHeightMm: Millimetres | undefined,
): BottomEdge | DoesNotFit {
  if (up.by === 'below-ceiling') return belowCeiling(up.mm, datum, pieceHeightMm, wallHeightMm);
  if (datum.kind === 'ceiling') {
    return doesNotFit(
      'heightNotSaid',
      'With the ceiling to measure from, say how far the top of the frame is below it.',
      'Give the distance from the ceiling down to the top of the frame, or measure from the floor.',
    );
  }
  const plain = {
    ok: true,
    levelAboveFloorMm: datum.aboveFloorMm,
    downFromMm: null,
    upKnown: true,
  } as const;
  const height = { 'piece height': pieceHeightMm };
  switch (up.by) {
    case 'bottom-above':
      return { ...plain, bottomMm: up.mm, formula: 'as said', inputs: { bottom: up.mm }, assumptions: [] };
    case 'centre-at':
      return {
        ...plain,
        bottomMm: mm(up.mm - pieceHeightMm / 2),
        formula: 'centre - piece height / 2',
        inputs: { centre: up.mm, ...height },
        assumptions: [],
      };
    case 'top-at':
      return {
        ...plain,
        bottomMm: mm(up.mm - pieceHeightMm),
        formula: 'top - piece height',
        inputs: { top: up.mm, ...height },
        assumptions: [],
      };
  }
}

function belowCeiling(
  belowMm: Millimetres,
  datum: Datum,
  pieceHeightMm: Millimetres,
  wallHeightMm: Millimetres | undefined,
): BottomEdge | DoesNotFit {
  const inputs = { 'below the ceiling': belowMm, 'piece height': pieceHeightMm };
  if (wallHeightMm === undefined) {
    if (datum.kind !== 'ceiling') {
      return doesNotFit(
        'heightNotSaid',
        `To bring a height below the ceiling to ${datumName(datum.kind)} I need the height of the ceiling.`,
        'Measure the wall from floor to ceiling, or measure down from the ceiling only.',
      );
    }
    return {
      ok: true,
      bottomMm: mm(0 - belowMm - pieceHeightMm),
      levelAboveFloorMm: null,
      downFromMm: mm(0),
      upKnown: false,
      formula: '0 - below the ceiling - piece height',
      inputs,
      assumptions: [],
    };
  }
  const fromFloor = mm(wallHeightMm - belowMm - pieceHeightMm);
  if (datum.kind === 'ceiling' || datum.aboveFloorMm === null) {
    return {
      ok: true,
      bottomMm: fromFloor,
      levelAboveFloorMm: mm(0),
      downFromMm: wallHeightMm,
      upKnown: true,
      formula: 'wall height - below the ceiling - piece height',
      inputs: { 'wall height': wallHeightMm, ...inputs },
      assumptions: datum.kind === 'ceiling' ? [] : [setFromTheCeiling(datum)],
    };
  }
  return {
    ok: true,
    bottomMm: mm(fromFloor - datum.aboveFloorMm),
    levelAboveFloorMm: datum.aboveFloorMm,
    downFromMm: null,
    upKnown: true,
    formula: 'wall height - below the ceiling - piece height - datum above the floor',
    inputs: { 'wall height': wallHeightMm, ...inputs, 'datum above the floor': datum.aboveFloorMm },
    assumptions: [],
  };
}

/** The ceiling is what was said and its height is known; how high the named datum is does not matter then. */
function setFromTheCeiling(datum: Datum): Assumption {
  return {
    field: 'wall.datum.kind',
    value: 'ceiling',
    because: `how high ${datumName(datum.kind)} is was not said, so marks are given down from the ceiling and up from the floor`,
  };
}
