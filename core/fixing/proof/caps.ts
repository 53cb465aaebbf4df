import type { Newtons } from '../../quantity.ts';
import { type Kilograms, kg, weightOf } from '../../quantity.ts';
import { type Sourced, sourced } from '../../sources.ts';

/** A cap as a force that may act for good. No document gives these numbers. */
export function capForce(cap: Sourced<Kilograms>): Newtons {
  return weightOf(cap.value);
}

/** A cap of installers, kilograms per fixing. */
export const practice = (value: number, at: string): Sourced<Kilograms> =>
  sourced(kg(value), 'common-practice', at, 'common-practice');

/** Plug, axial or shear, in solid brick, dense block or concrete. */
const DECLARED_PLUG = sourced(
  { 6: kg(5), 8: kg(15), 10: kg(25) } as const,
  'our-choice',
  'declared cap of a plug 6 x 30, 8 x 50, 10 x 60 in a solid unit',
  'our-choice',
);
/** In perforated, hollow or aerated units, half of it. */
const CORED_SHARE = sourced(
  1 / 2,
  'our-choice',
  'half of it in perforated, hollow or aerated units',
  'our-choice',
);

/** Of two caps the lower holds, and says whose it is. */
export function lowerCap(one: Sourced<Kilograms>, other: Sourced<Kilograms>): Sourced<Kilograms> {
  return one.value <= other.value ? one : other;
}

/** The declared cap of a plug by diameter, halved in a unit with cores. */
export function declaredCap(plug: 6 | 8 | 10, unit: 'solid' | 'cored'): Sourced<Kilograms> {
  const whole = DECLARED_PLUG.value[plug];
  return unit === 'solid'
    ? sourced(whole, 'our-choice', DECLARED_PLUG.at, 'our-choice')
    : sourced(kg(whole * CORED_SHARE.value), 'our-choice', CORED_SHARE.at, 'our-choice');
}
