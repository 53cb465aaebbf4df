import { z } from 'zod';
import { EXAMPLE_JOB } from './example-job.ts';
import { LONGEST_MM, lengthMm } from './figures.ts';

const across = z
  .discriminatedUnion('by', [
    z.strictObject({ by: z.literal('centre') }),
    z.strictObject({
      by: z.enum(['left-edge', 'right-edge', 'centre-at']),
      mm: lengthMm(0, LONGEST_MM, 930),
    }),
    z.strictObject({
      by: z.literal('between'),
      fromMm: lengthMm(0, LONGEST_MM, 600),
      toMm: lengthMm(0, LONGEST_MM, 2100),
    }),
  ])
  .meta({ id: 'Across', examples: [{ by: 'centre' }] });

const up = z
  .strictObject({
    by: z.enum(['bottom-above', 'centre-at', 'top-at', 'below-ceiling']),
    mm: lengthMm(0, LONGEST_MM, 140),
  })
  .meta({ id: 'Up', examples: [{ by: 'bottom-above', mm: 140 }] });

/** Where it goes (contract, section 4). */
export const placeSchema = z
  .strictObject({
    across,
    up,
    below: z
      .enum(['nothing', 'bed', 'sofa', 'cot', 'basin', 'fireplace', 'fireplace-unused', 'walkway', 'unknown'])
      .exactOptional(),
    openingTopMm: lengthMm(0, LONGEST_MM, 700)
      .exactOptional()
      .describe('Top of the fire’s opening above the finished floor.'),
  })
  .meta({ id: 'Place', examples: [EXAMPLE_JOB.place] });
