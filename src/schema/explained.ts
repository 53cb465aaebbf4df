import { z } from 'zod';

/** What a plan says of its own figures: why each is what it is, what was assumed, and by which documents. */
const n = z.number();
const words = z.array(z.string());

export const basis = z
  .strictObject({ id: z.string(), title: z.string(), at: z.string(), standing: z.string() })
  .meta({ id: 'Basis' });

export const why = z
  .strictObject({
    of: z.string(),
    formula: z.string(),
    inputs: z.record(z.string(), z.union([n, z.string()])),
    result: z.string(),
    basis: z.array(basis),
    symbols: z
      .string()
      .optional()
      .describe('The formula as arithmetic over the names of the inputs, where it is that.'),
    paths: words
      .optional()
      .describe('The numbers of this plan that it explains: `fixing.bit.depthMm`, `marks.A.upMm`.'),
  })
  .meta({ id: 'Why' });

const ifWrong = z
  .strictObject({
    value: z.unknown().describe('Another value it may well have.'),
    changes: z.array(z.strictObject({ path: z.string(), from: z.unknown(), to: z.unknown() })),
    text: z.string(),
  })
  .describe('On the three that matter most: what the plan would be then, recomputed.')
  .meta({ id: 'IfWrong' });

export const assumption = z
  .strictObject({
    field: z.string(),
    value: z.unknown(),
    because: z.string(),
    ifWrong: ifWrong.optional(),
  })
  .meta({ id: 'Assumption' });
