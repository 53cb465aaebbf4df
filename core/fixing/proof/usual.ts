import { kg, type Newtons, STANDARD_GRAVITY, toTenth } from '../../quantity.ts';

/** Whether a force is more than the kilograms a careful person uses without a second look, to a tenth of a kilogram. */
export function isOverUsual(force: Newtons, usualKg: number): boolean {
  return toTenth(kg(force / STANDARD_GRAVITY)) > usualKg;
}
