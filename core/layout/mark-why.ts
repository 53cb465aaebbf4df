import type { Mark } from '../plan-shape.ts';
import { type Millimetres, mm, toTenth } from '../quantity.ts';
import { basisOf } from '../sources.ts';
import type { Why } from '../why.ts';
import type { LeftEdge } from './across.ts';
import type { Bearing } from './bearing.ts';
import type { PlacedMark } from './cross-checks.ts';
import type { BottomEdge } from './heights.ts';
import { lengthText } from './length-text.ts';
import { GEOMETRY } from './tolerance.ts';

const basis = [basisOf(GEOMETRY)];

/** Why the frame is where it is: its left edge and its bottom edge. */
export function frameWhys(across: LeftEdge, bottom: BottomEdge): Why[] {
  return [
    {
      of: 'frame left edge',
      formula: across.formula,
      inputs: tenths(across.inputs),
      result: lengthText(across.leftMm),
      basis,
    },
    {
      of: 'frame bottom edge',
      formula: bottom.formula,
      inputs: tenths(bottom.inputs),
      result: lengthText(bottom.bottomMm),
      basis,
    },
  ];
}

/** Why a mark is where it is: across from the wall's left end, and up. */
export function markWhys(
  mark: PlacedMark,
  bearing: Bearing,
  across: LeftEdge,
  bottom: BottomEdge,
  pieceHeightMm: Millimetres,
  seatToScrewMm: Millimetres,
): Why[] {
  return [
    {
      of: `mark ${mark.id} across`,
      formula: `frame left edge + ${bearing.acrossFormula}`,
      inputs: tenths({ 'frame left edge': across.leftMm, ...bearing.acrossInputs }),
      result: lengthText(mark.xMm),
      basis,
    },
    {
      of: `mark ${mark.id} up`,
      formula: `frame bottom edge + piece height - ${parenthesised(bearing.dropFormula)} + seat to screw`,
      inputs: tenths({
        'frame bottom edge': bottom.bottomMm,
        'piece height': pieceHeightMm,
        ...bearing.dropInputs,
        'seat to screw': seatToScrewMm,
      }),
      result: lengthText(mark.yMm),
      basis,
    },
  ];
}

/** Lengths as they are read out: to a tenth of a millimetre. */
export function tenths(lengths: Record<string, number>): Record<string, number> {
  const told: Record<string, number> = {};
  for (const name in lengths) told[name] = toTenth(mm(lengths[name] ?? 0));
  return told;
}

const parenthesised = (formula: string): string => (formula.includes(' - ') ? `(${formula})` : formula);

/** Why a tape straight below a later mark reads another figure than the level line: the datum runs out. */
export function slopeWhys(
  later: readonly Mark[],
  fallMm: Millimetres,
  wallWidthMm: Millimetres,
  first: Pick<Mark, 'id' | 'fromLeftMm'> | undefined,
): Why[] {
  return later.flatMap(({ id, fromLeftMm, upMm, upHereMm }) =>
    first === undefined || upMm === undefined || upHereMm === undefined
      ? []
      : [
          {
            of: `mark ${id} up here`,
            formula: `mark ${id} up - fall x (mark ${id} across - mark ${first.id} across) / wall width`,
            inputs: tenths({
              [`mark ${id} up`]: upMm,
              fall: fallMm,
              [`mark ${id} across`]: fromLeftMm,
              [`mark ${first.id} across`]: first.fromLeftMm,
              'wall width': wallWidthMm,
            }),
            result: lengthText(upHereMm),
            basis,
          },
        ],
  );
}
