import { expect, test } from 'vitest';
import { EXAMPLE_JOB } from '../../../src/schema/example-job.ts';
import { posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

const { piece, ...REST } = EXAMPLE_JOB;

const groupOf = (arrange: unknown, pieces: unknown = [piece, piece, piece]): object => ({
  ...REST,
  pieces,
  arrange,
});

/** [how they are said to stand, the field refused, words of what would do]. */
const REFUSED: [string, object, string, RegExp][] = [
  ['no gap and no spread', groupOf({ as: 'row' }), 'arrange.gapMm', /either gapMm.*or spread/],
  ['a gap and a spread', groupOf({ as: 'row', gapMm: 75, spread: 'ends' }), 'arrange.gapMm', /either gapMm/],
  ['a negative gap', groupOf({ as: 'row', gapMm: -5 }), 'arrange.gapMm', /from 0 to/],
  ['a grid without columns', groupOf({ as: 'grid', gapMm: 60 }), 'arrange.columns', /how many columns/],
  ['a grid of no columns', groupOf({ as: 'grid', columns: 0, gapMm: 60 }), 'arrange.columns', /whole number/],
  ['columns of a row', groupOf({ as: 'row', columns: 3, gapMm: 60 }), 'arrange.columns', /only a grid/],
  ['rows of a row', groupOf({ as: 'row', rowGapMm: 60, gapMm: 60 }), 'arrange.rowGapMm', /only a grid/],
  ['tops of a column', groupOf({ as: 'column', gapMm: 60, align: 'top' }), 'arrange.align', /centre/],
  ['a circle', groupOf({ as: 'circle', gapMm: 60 }), 'arrange.as', /row, column, grid/],
  ['a spread of another kind', groupOf({ as: 'row', spread: 'evenly' }), 'arrange.spread', /ends, flush/],
  ['a field of no such name', groupOf({ as: 'row', gapMm: 60, gapCm: 6 }), 'arrange.gapCm', /no field/],
  ['nothing', { ...REST, pieces: [piece, piece] }, 'arrange', /an object/],
  ['no pieces', groupOf({ as: 'row', gapMm: 60 }, []), 'pieces', /a list of 1 to 40/],
  ['forty-one', groupOf({ as: 'row', gapMm: 60 }, Array(41).fill(piece)), 'pieces', /a list of 1 to 40/],
  [
    'a piece without a width',
    groupOf({ as: 'row', gapMm: 60 }, [piece, { ...piece, widthMm: undefined }]),
    'pieces.1.widthMm',
    /millimetres/,
  ],
  ['both', { ...groupOf({ as: 'row', gapMm: 60 }), piece }, 'pieces', /not both/],
];

const TAKEN: object[] = [
  { as: 'row', gapMm: 75, align: 'centre' },
  { as: 'row', gapMm: 0 },
  { as: 'row', spread: 'flush', align: 'hangers' },
  { as: 'column', spread: 'ends', align: 'centre' },
  { as: 'grid', columns: 2, gapMm: 60, rowGapMm: 90, align: 'top' },
];

/** Several pieces: contract, section 4, last point. */
export function groupJobContract(appWith: AppFactory): void {
  test.each(REFUSED)(
    'several pieces arranged as %s are refused at the field',
    async (_, job, path, words) => {
      const app = await appWith();
      const response = await app.request('/v1/plans', posted(job));
      expect(response.status).toBe(422);
      const { errors } = await response.json();
      expect(errors).toContainEqual(
        expect.objectContaining({ path, expected: expect.stringMatching(words), example: expect.anything() }),
      );
      expect(app.jobs).toHaveLength(0);
    },
  );

  test.each(TAKEN)('several pieces arranged as %j are taken as they were sent', async (arrange) => {
    const app = await appWith();
    expect((await app.request('/v1/plans', posted(groupOf(arrange)))).status).toBe(200);
    expect(app.jobs[0]).toEqual(groupOf(arrange));
  });

  test('a check of several pieces names their marks by number and letter', async () => {
    const app = await appWith();
    const body = {
      job: groupOf({ as: 'row', gapMm: 75 }),
      measured: { marks: [{ id: '2B', fromLeftMm: 1675, upMm: 1020 }] },
    };
    expect((await app.request('/v1/checks', posted(body))).status).toBe(200);
  });
}
