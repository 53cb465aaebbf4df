import { type Millimetres, toTenth } from '../quantity.ts';

/** A length as said at the wall: millimetres to a tenth, with the unit. */
export function lengthText(length: Millimetres): string {
  return `${figure(length)} mm`;
}

/** The figure alone, to a tenth. */
export function figure(length: Millimetres): string {
  return String(toTenth(length) + 0);
}
