import { type Millimetres, toTenth } from '../quantity.ts';

/** A length as said at the wall: millimetres to a tenth, with the unit; never minus nothing. */
export function lengthText(length: Millimetres): string {
  return `${toTenth(length) + 0} mm`;
}
