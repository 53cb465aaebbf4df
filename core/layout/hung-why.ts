import type { Hanging } from '../piece/piece.ts';
import type { BattenLine, Frame } from '../plan-shape.ts';
import { type Millimetres, mm, toTenth } from '../quantity.ts';
import { basisOf } from '../sources.ts';
import type { Why } from '../why.ts';
import { lengthText } from './length-text.ts';
import { tenths } from './mark-why.ts';
import type { SetOut } from './set-out.ts';
import { GEOMETRY } from './tolerance.ts';

const basis = [basisOf(GEOMETRY)];

/** Why a cord rises as it does and stands at its angle. */
export function cordWhys(
  { riseMm, legAngle, spreadMm }: NonNullable<SetOut['cord']>,
  hanging: Extract<Hanging, { by: 'cord' }>,
): Why[] {
  const apart = hanging.hooksApartMm ?? mm(0);
  const spans = { 'ring to ring': spreadMm, 'hooks apart': apart };
  const measured = hanging.riseMm !== undefined || hanging.lengthMm === undefined;
  return [
    {
      of: 'cord rise',
      formula: measured
        ? 'as measured, pulled up tight'
        : 'square root of (((cord length - hooks apart) / 2)^2 - ((ring to ring - hooks apart) / 2)^2)',
      inputs: tenths(measured ? { rise: riseMm } : { 'cord length': hanging.lengthMm ?? 0, ...spans }),
      result: lengthText(riseMm),
      basis,
    },
    {
      of: 'cord angle',
      formula: 'arctangent of rise / ((ring to ring - hooks apart) / 2)',
      inputs: tenths({ rise: riseMm, ...spans }),
      result: `${toTenth(legAngle)} degrees from level`,
      basis,
    },
  ];
}

/** Why the wall half of a batten is where it is. */
export function battenWhys(line: BattenLine, frame: Frame, fromTopMm: Millimetres): Why[] {
  return [
    {
      of: 'batten line up',
      formula: 'top of the frame - batten seat below the top',
      inputs: tenths({ 'top of the frame': frame.topMm, 'batten seat below the top': fromTopMm }),
      result: lengthText(line.upMm),
      basis,
    },
    {
      of: 'batten left end',
      formula: '(frame left edge + frame right edge - batten length) / 2',
      inputs: tenths({
        'frame left edge': frame.leftMm,
        'frame right edge': frame.rightMm,
        'batten length': line.toLeftMm - line.fromLeftMm,
      }),
      result: lengthText(line.fromLeftMm),
      basis,
    },
  ];
}
