import { MM_PER_INCH, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import type { LengthUnit } from '../words/unit.ts';
import type { Placed } from './hanging-roles.ts';

/** Figures all under this, without a unit, on a frame of this trade are hardly millimetres; our choice. */
const LEAST_LIKELY_MM = 25;
/** In a conversation in centimetres a bare figure up to this is centimetres; our choice. */
export const MOST_CM = 100;

/** A bare figure read in another unit. */
export function as(found: Placed, unit: LengthUnit): Placed {
  if (found.unitSaid !== null && found.readings.length === 1) return found;
  const bare = found.readings.at(-1)?.valueMm ?? found.valueMm;
  const factor = unit === 'cm' ? 10 : unit === 'in' ? MM_PER_INCH : 1;
  const value = mm(bare * factor);
  return { ...found, valueMm: value, readings: [{ valueMm: value, unit }], inferred: true };
}

/** The units the figures may be in, when they can't be plain millimetres; empty when there is no doubt. */
export function doubtful(figures: readonly Placed[], listening: Listening, pairs: boolean): LengthUnit[] {
  const points = figures.filter((each) => each.role !== 'seat' && each.role !== 'stand-off');
  if (pairs || listening.unit === 'in' || points.length === 0) return [];
  if (points.some((each) => each.readings.length > 1)) return ['in', 'mm', 'cm'];
  if (points.some((each) => each.unitSaid !== null || each.inferred)) return [];
  const most = Math.max(...points.map((each) => each.valueMm));
  if (listening.unit === 'cm' && most < MOST_CM) return ['cm'];
  return most < LEAST_LIKELY_MM ? ['mm', 'cm', 'in'] : [];
}
