import { z } from 'zod';
import type { GroupJob } from '../../core/group-job.ts';
import { EXAMPLE_JOB } from './example-job.ts';
import { count, LONGEST_MM, lengthMm } from './figures.ts';
import { jobSchema } from './job.ts';
import { pieceSchema } from './piece.ts';

/** More than anyone hangs on one wall in a day. */
const MOST_PIECES = 40;

type Said = {
  as: string;
  columns?: number;
  rowGapMm?: number;
  gapMm?: number;
  spread?: string;
  align?: string;
};

/** What can't be meant together, each at the field that would put it right. */
const WRONG: readonly { field: string; when: (said: Said) => boolean; expected: string }[] = [
  {
    field: 'gapMm',
    when: ({ gapMm, spread }) => (gapMm === undefined) === (spread === undefined),
    expected: 'either gapMm, one gap between all, or spread, equal gaps over the room there is',
  },
  {
    field: 'columns',
    when: ({ as, columns }) => as === 'grid' && columns === undefined,
    expected: 'how many columns the grid has',
  },
  {
    field: 'columns',
    when: ({ as, columns }) => as !== 'grid' && columns !== undefined,
    expected: 'no columns: only a grid has them',
  },
  {
    field: 'rowGapMm',
    when: ({ as, rowGapMm }) => as !== 'grid' && rowGapMm !== undefined,
    expected: 'no gap between rows: only a grid has them',
  },
  {
    field: 'align',
    when: ({ as, align }) => as === 'column' && align !== undefined && align !== 'centre',
    expected: 'centre: in a column the middles stand above each other',
  },
];

const arrangeSchema = z
  .strictObject({
    as: z.enum(['row', 'column', 'grid']),
    columns: count(MOST_PIECES, 3).exactOptional().describe('Of a grid.'),
    gapMm: lengthMm(0, LONGEST_MM, 75).exactOptional().describe('One gap between all, by edges.'),
    rowGapMm: lengthMm(0, LONGEST_MM, 75)
      .exactOptional()
      .describe('Of a grid, between its rows, where it is not the gap across.'),
    spread: z
      .enum(['ends', 'flush'])
      .exactOptional()
      .describe('Equal gaps: at the ends too, or the ends flush.'),
    align: z.enum(['centre', 'top', 'bottom', 'hangers']).exactOptional(),
  })
  .superRefine((said, context) => {
    for (const { field, when, expected } of WRONG)
      if (when(said)) context.addIssue({ code: 'custom', path: [field], message: expected });
  })
  .meta({ id: 'Arrange', examples: [{ as: 'row', gapMm: 75, align: 'centre' }] });

const { piece, ...REST } = EXAMPLE_JOB;

/** Several pieces on one wall (contract, section 4): `place` places the group. */
export const groupJobSchema = jobSchema
  .omit({ piece: true })
  .extend({
    pieces: z.array(pieceSchema).min(1).max(MOST_PIECES),
    arrange: arrangeSchema,
  })
  .meta({
    id: 'GroupJob',
    examples: [{ ...REST, pieces: [piece, piece], arrange: { as: 'row', gapMm: 75, align: 'centre' } }],
  }) satisfies z.ZodType<GroupJob>;

/** One piece or several. */
export const anyJobSchema = z
  .union([jobSchema, groupJobSchema])
  .meta({ id: 'AnyJob', examples: [EXAMPLE_JOB] });
