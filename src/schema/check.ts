import { z } from 'zod';
import { EXAMPLE_JOB } from './example-job.ts';
import { LONGEST_MM, lengthMm } from './figures.ts';
import { anyJobSchema } from './group-job.ts';
import { cautionSchema, FASTENERS, HEADS, verdictSchema } from './plan.ts';
import { identifier } from './words.ts';

const diameterMm = lengthMm(0.5, 100, 8);
const lengthOfMm = lengthMm(1, 1000, 50);

const measuredMark = z
  .strictObject({
    id: identifier(10, 'A'),
    fromLeftMm: lengthMm(-LONGEST_MM, LONGEST_MM, 1025),
    upMm: lengthMm(-LONGEST_MM, LONGEST_MM, 1020),
  })
  .meta({ id: 'MeasuredMark', examples: [{ id: 'A', fromLeftMm: 1025, upMm: 1020 }] });

/** What is in the hand: any of a plan's fixing. */
const inHand = z
  .strictObject({
    fastener: z.enum(FASTENERS).exactOptional(),
    bit: z
      .strictObject({
        kind: z.enum(['masonry', 'wood', 'metal', 'tile', 'none']).exactOptional(),
        action: z.enum(['rotary', 'hammer-after-finish', 'rotary-until-known', 'none']).exactOptional(),
        diameterMm: diameterMm.exactOptional(),
        depthMm: lengthOfMm.exactOptional(),
      })
      .exactOptional(),
    plug: z.strictObject({ diameterMm, lengthMm: lengthOfMm }).partial().exactOptional(),
    screw: z
      .strictObject({
        gauge: z
          .int()
          .min(0)
          .max(30)
          .meta({ examples: [14] })
          .exactOptional(),
        diameterMm: diameterMm.exactOptional(),
        lengthMm: lengthOfMm.exactOptional(),
        head: z.enum(HEADS).exactOptional(),
      })
      .exactOptional(),
  })
  .refine((hand) => Object.keys(hand).length > 0, {
    error: 'at least one of fastener, bit, plug and screw',
  })
  .meta({ id: 'InHand', examples: [{ plug: { diameterMm: 8, lengthMm: 50 } }] });

/** A job and what was found at the wall (contract, section 6). */
export const checkRequestSchema = z
  .strictObject({
    job: anyJobSchema,
    measured: z
      .strictObject({
        marks: z
          .array(measuredMark)
          .max(100)
          .refine((marks) => new Set(marks.map(({ id }) => id)).size === marks.length, {
            error: 'each mark once',
          })
          .exactOptional(),
        fixing: inHand.exactOptional(),
      })
      .refine((found) => found.marks?.length || found.fixing, {
        error: 'marks, or the fixing in the hand, or both',
      }),
  })
  .meta({
    id: 'CheckRequest',
    examples: [{ job: EXAMPLE_JOB, measured: { marks: [{ id: 'A', fromLeftMm: 1025, upMm: 1021 }] } }],
  });

/** `offByMm` is measured less planned, right and up positive. */
export const checkSchema = z
  .strictObject({
    verdict: verdictSchema,
    marks: z.array(
      z.strictObject({ id: z.string(), offByMm: z.strictObject({ across: z.number(), up: z.number() }) }),
    ),
    tiltDeg: z.number().nullable().describe('Positive when the right side is high.'),
    fixing: z
      .strictObject({ holds: z.boolean(), utilisation: z.number().nullable(), text: z.string() })
      .nullable(),
    cautions: z.array(cautionSchema),
    text: z.string(),
  })
  .meta({ id: 'Check' });
