import { kg, type Newtons, STANDARD_GRAVITY, settled, toTenth } from '../../quantity.ts';

/** A force as the mass whose weight it is, for reading out: "12.3 kg". */
export function kilogramsOf(force: Newtons): string {
  return `${toTenth(kg(force / STANDARD_GRAVITY))} kg`;
}

/** The whole kilograms that are enough for a force: rounded up, so that what is bought is never too weak. */
export function upToWhole(force: Newtons): number {
  return Math.ceil(settled(kg(force / STANDARD_GRAVITY)));
}
