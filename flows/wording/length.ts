import { toSixteenths } from '../../core/layout/inch.ts';
import { KG_PER_POUND, type Kilograms, type Millimetres } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';

const MM_PER: Readonly<Record<Exclude<DisplayUnit, 'in'>, number>> = { mm: 1, cm: 10, m: 1000 };
/** Millimetres to a tenth, centimetres to the millimetre, metres to the millimetre. */
const DECIMALS: Readonly<Record<Exclude<DisplayUnit, 'in'>, number>> = { mm: 1, cm: 1, m: 3 };

/** A length in the person's unit, rounded once, here: "1025 mm", "102.5 cm", "1.025 m", "40-3/8 in". */
export function length(value: Millimetres, unit: DisplayUnit): string {
  return `${figure(value, unit)} ${unit}`;
}

/** The figure alone. */
export function figure(value: Millimetres, unit: DisplayUnit): string {
  if (unit === 'in') return toSixteenths(value).text;
  return tidy(value / MM_PER[unit], DECIMALS[unit]);
}

/** A mass: kilograms, and pounds beside them for who speaks in inches. */
export function mass(value: Kilograms, unit: DisplayUnit): string {
  const kilos = `${tidy(value, 2)} kg`;
  return unit === 'in' ? `${kilos} (${tidy(value / KG_PER_POUND, 1)} lb)` : kilos;
}

/** A number without a tail of noughts. */
export function tidy(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return String(Math.round(value * scale) / scale + 0);
}
