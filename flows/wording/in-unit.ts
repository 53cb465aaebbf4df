import { mm } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';
import { inInches } from './in-inches.ts';
import { length } from './length.ts';

const MILLIMETRES = /(\d+(?:\.\d+)?) mm\b/g;

/** Words of `core`, which are in millimetres, in the person's unit. */
export function inUnit(text: string, unit: DisplayUnit): string {
  if (unit === 'mm') return text;
  if (unit === 'in') return inInches(text);
  return text.replace(MILLIMETRES, (_, value: string) => length(mm(Number(value)), unit));
}

/** A step that measures, in the person's unit; who speaks in cm or m has bits and screws in millimetres all the same. */
export function stepInUnit(step: string, unit: DisplayUnit): string {
  return unit === 'in' || /^(?:Tape on|Mark|Check)\b/.test(step) ? inUnit(step, unit) : step;
}
