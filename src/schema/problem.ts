import { z } from 'zod';
import { PROBLEM_TYPE, PROBLEMS, type ProblemName } from '../http/problem.ts';

const names = Object.keys(PROBLEMS) as [ProblemName, ...ProblemName[]];

/** RFC 9457, with the fields that were refused. */
export const problemSchema = z
  .strictObject({
    type: z.enum(names.map((name) => `${PROBLEM_TYPE}${name}` as const)),
    title: z.string(),
    status: z.int().min(400).max(599),
    detail: z.string(),
    errors: z
      .array(
        z.strictObject({
          path: z.string(),
          expected: z.string(),
          received: z.string().optional(),
          example: z.unknown(),
        }),
      )
      .optional(),
  })
  .meta({ id: 'Problem' });
