import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';

/** Parts of an inch that a tape shows. */
const PARTS = 16;
const INCHES_PER_FOOT = 12;
/** A length is taken to this fraction of a millimetre, so that halves of a sixteenth (0.79375 mm) are met exactly. */
const STEPS_PER_MM = 1e5;

/** A length as inches on a tape: whole sixteenths, in words, and what the rounding added. */
export type TapeInches = { sixteenths: number; text: string; inches: number; errorMm: Millimetres };

/**
 * Millimetres to the nearest sixteenth of an inch, 25.4 mm = 1 in exactly, a half going away from zero. In whole
 * numbers, so exact for lengths given to 0.00001 mm; never further off than half a sixteenth, 0.79375 mm.
 */
export function toSixteenths(lengthMm: Millimetres): TapeInches {
  const steps = Math.round(Math.abs(lengthMm) * STEPS_PER_MM);
  const perPart = (MM_PER_INCH * STEPS_PER_MM) / PARTS;
  const parts = Math.floor((2 * steps + perPart) / (2 * perPart)) * Math.sign(lengthMm);
  const inches = (parts + 0) / PARTS;
  return {
    sixteenths: parts + 0,
    text: sixteenthsText(parts),
    inches,
    errorMm: mm(inches * MM_PER_INCH - lengthMm),
  };
}

/** Inches to whole sixteenths, a half going up: exact for any fraction a tape shows. */
export function sixteenthsOf(inches: number): number {
  return Math.round(inches * PARTS);
}

/** Sixteenths in words with the fraction in lowest terms: 419 is "26-3/16", 16 is "1", 5 is "5/16". */
export function sixteenthsText(sixteenths: number): string {
  const size = Math.abs(sixteenths);
  const whole = Math.floor(size / PARTS);
  let top = size % PARTS;
  let bottom = PARTS;
  while (top !== 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const text =
    whole === 0 && fraction !== '' ? fraction : [String(whole), fraction].filter(Boolean).join('-');
  return sixteenths < 0 ? `-${text}` : text;
}

/** Feet and inches to millimetres, exact by definition. */
export function feetAndInches(feet: number, inches: number): Millimetres {
  return mm((feet * INCHES_PER_FOOT + inches) * MM_PER_INCH);
}
