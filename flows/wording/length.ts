import { KG_PER_POUND, type Kilograms, type Millimetres, MM_PER_INCH } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';

/** Tape measures in inches are read to the sixteenth. */
const SIXTEENTHS = 16;
const MM_PER: Readonly<Record<Exclude<DisplayUnit, 'in'>, number>> = { mm: 1, cm: 10, m: 1000 };
/** Millimetres to a tenth, centimetres to the millimetre, metres to the millimetre. */
const DECIMALS: Readonly<Record<Exclude<DisplayUnit, 'in'>, number>> = { mm: 1, cm: 1, m: 3 };

/** A length in the person's unit, rounded once, here: "1025 mm", "102.5 cm", "1.025 m", "40 3/8 in". */
export function length(value: Millimetres, unit: DisplayUnit): string {
  return `${figure(value, unit)} ${unit}`;
}

/** The figure alone. */
export function figure(value: Millimetres, unit: DisplayUnit): string {
  if (unit === 'in') return inches(value);
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

function inches(value: Millimetres): string {
  const total = Math.round((Math.abs(value) / MM_PER_INCH) * SIXTEENTHS);
  const whole = Math.floor(total / SIXTEENTHS);
  const part = total % SIXTEENTHS;
  const sign = value < 0 && total > 0 ? '-' : '';
  if (part === 0) return `${sign}${whole}`;
  let [top, bottom] = [part, SIXTEENTHS];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}
