import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planOf } from '../../../core/plan.ts';
import { readableJob } from '../layout/any-job.ts';

/** A figure in whole tenths of a millimetre, and how far it is off one. */
const offTenths = (figure: number): number => Math.abs(figure * 10 - Math.round(figure * 10));

test('as told, from the left plus from the right is the wall, up plus down its height, all to a tenth', () => {
  let marks = 0;
  fc.assert(
    fc.property(readableJob, (job) => {
      const { widthMm, heightMm } = job.wall;
      // A wall measured finer than a tenth is as near as the tenths come: half of one.
      const near = offTenths(widthMm) > 1e-6 || offTenths(heightMm ?? 0) > 1e-6 ? 0.05 + 1e-6 : 1e-6;
      for (const mark of planOf(job).marks) {
        marks += 1;
        expect(Math.abs(mark.fromLeftMm + mark.fromRightMm - widthMm)).toBeLessThanOrEqual(near);
        const { upMm, downMm } = mark;
        if (upMm !== undefined && downMm !== undefined) {
          expect(Math.abs(upMm + downMm - (heightMm ?? Number.NaN))).toBeLessThanOrEqual(near);
        }
        for (const figure of [mark.fromLeftMm, mark.fromRightMm, upMm ?? 0, downMm ?? 0])
          expect(offTenths(figure)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 400 },
  );
  expect(marks).toBeGreaterThan(50);
});
