import { z } from 'zod';
import { kg, mm } from '../../core/quantity.ts';

/**
 * The figures a job may hold. The ranges are the door's: wide enough for any real wall, narrow enough that
 * a slip of the unit (a wall of 2.7 mm, a mirror of 900 t) is refused. Whether a job can be done is core's.
 */
export const LONGEST_MM = 100_000;

const bounded = (least: number, most: number, example: number) =>
  z
    .number()
    .min(least)
    .max(most)
    .meta({ examples: [example] });

/** A length in millimetres from `least` to `most`. */
export const lengthMm = (least: number, most: number, example: number) =>
  bounded(least, most, example).transform(mm);

/** A mass in kilograms. */
export const massKg = (example: number) => bounded(0.01, 5000, example).transform(kg);

/** A force in newtons that someone read off a packet or a gauge. */
export const forceN = (example: number) => bounded(1, 100_000, example);

export const year = (example: number) =>
  z
    .int()
    .min(1000)
    .max(2100)
    .meta({ examples: [example] });

export const count = (most: number, example: number) =>
  z
    .int()
    .min(1)
    .max(most)
    .meta({ examples: [example] });

/** The word a person's "don't know" becomes: asked, and not known. */
const unknown = z.literal('unknown');

export const orUnknown = <S extends z.ZodType>(schema: S) => z.union([schema, unknown]);

export const yesNoUnknown = orUnknown(z.boolean());
