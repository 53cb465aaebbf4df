import { type Degrees, type Millimetres, mm, toTenth } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Why } from '../why.ts';
import type { PlacedMark } from './cross-checks.ts';
import { lengthText } from './length-text.ts';
import { degreesText, TARGET_TILT, tiltOf, VISIBLE_TILT } from './level.ts';
import { tenths } from './mark-why.ts';

/**
 * What sets one of two screws higher than meant, each either way, in millimetres: a hanger's drop read with a tape,
 * half of a pencil line, the bit's wander; and a spirit level over its length, in millimetres a millimetre.
 */
const ERRORS = sourced(
  { drop: mm(1), pencil: mm(0.5), bit: mm(1), level: 0.5 / 1000 },
  'our-choice',
  'tape read to 1 mm, a line 1 mm wide, a bit that wanders 1 mm, a level good to 0.5 mm in a metre',
  'our-choice',
);

/** How far one of two marks may end up above the other, and how crooked that is: at worst, and as a rule. */
export type MarkingTilt = { worstMm: Millimetres; usualMm: Millimetres; worst: Degrees; usual: Degrees };

/**
 * Tilt that a tape, a pencil, a level and a bit leave over a span: each error of both ends added up at worst, as a
 * rule the root of the sum of their squares; atan(error / span). Millimetres in.
 */
export function markingTilt(spanMm: Millimetres): MarkingTilt {
  const { drop, pencil, bit, level } = ERRORS.value;
  const each = [drop, drop, pencil, pencil, bit, bit, spanMm * level];
  const worstMm = mm(each.reduce((all, one) => all + one, 0));
  const usualMm = mm(Math.hypot(...each));
  return { worstMm, usualMm, worst: tiltOf(worstMm, spanMm), usual: tiltOf(usualMm, spanMm) };
}

const acrossBetween = (placed: readonly PlacedMark[]): Millimetres =>
  mm((placed.at(-1)?.xMm ?? 0) - (placed[0]?.xMm ?? 0));

/** Rings so near to each other that a millimetre shows: the frame itself is then what is levelled. */
export function shortSpanAdvice(placed: readonly PlacedMark[]): string[] {
  const span = acrossBetween(placed);
  const perMm = tiltOf(mm(1), span);
  if (!(span > 0) || perMm < TARGET_TILT.value) return [];
  return [
    `The marks are only ${lengthText(span)} apart: a pencil line (1 mm) out is ${degreesText(perMm)}, and ${VISIBLE_TILT.value} shows. Level the frame itself before you let go.`,
  ];
}

/** How level the marks can come out, for "why" and "how level": none for one mark. */
export function tiltWhys(placed: readonly PlacedMark[]): Why[] {
  const span = acrossBetween(placed);
  if (!(span > 0)) return [];
  const { worstMm, usualMm, worst, usual } = markingTilt(span);
  const { drop, pencil, bit } = ERRORS.value;
  return [
    {
      of: 'tilt',
      formula:
        'arctangent of (error / mark to mark); the errors of both ends added at worst, as a rule the root of the sum of their squares',
      inputs: {
        ...tenths({ 'mark to mark': span }),
        'hanger read to': `${drop} mm`,
        'half a pencil line': `${pencil} mm`,
        'bit wanders': `${bit} mm`,
        'error as a rule': `${toTenth(usualMm)} mm`,
        'error at worst': `${toTenth(worstMm)} mm`,
      },
      result: `${degreesText(usual)} as a rule, ${toTenth(worst)} at worst; ${VISIBLE_TILT.value} is seen`,
      basis: [basisOf(ERRORS), basisOf(VISIBLE_TILT), basisOf(TARGET_TILT)],
    },
  ];
}
