import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';

type Sanity = {
  id: string;
  title: string;
  job: Job;
  accept: { verdicts: string[]; count?: [number, number] };
  check: {
    frameMm: [number, number, number, number];
    marksMm?: [number, number][];
    battenFromMm?: number;
    battenToMm?: number;
    battenUpMm?: number;
  };
};

const { jobs }: { jobs: Sanity[] } = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/sanity-jobs.json', import.meta.url), 'utf8'),
);

test.each(jobs.map((each) => [`${each.id}: ${each.title} (common practice, no source)`, each] as const))(
  '%s is framed and marked where a good tradesperson puts it',
  (_, { job, check, accept }) => {
    const layout = setOut(job);
    if (!layout.ok) throw new Error(layout.text);
    const { leftMm, rightMm, bottomMm, topMm } = layout.frame;
    for (const [at, edge] of [leftMm, rightMm, bottomMm, topMm].entries()) {
      expect(edge).toBeCloseTo(check.frameMm[at] ?? Number.NaN, 6);
    }
    for (const [at, [across, up]] of (check.marksMm ?? []).entries()) {
      expect(layout.marks[at]?.fromLeftMm).toBeCloseTo(across, 6);
      expect(layout.marks[at]?.upMm).toBeCloseTo(up, 6);
    }
    if (check.marksMm?.length) expect(layout.marks).toHaveLength(check.marksMm.length);
    if (check.battenUpMm !== undefined) {
      expect(layout.batten).toEqual({
        fromLeftMm: check.battenFromMm,
        toLeftMm: check.battenToMm,
        upMm: check.battenUpMm,
      });
      const [fewest = 0, most = 0] = accept.count ?? [];
      expect(layout.marks.length).toBeGreaterThanOrEqual(fewest);
      expect(layout.marks.length).toBeLessThanOrEqual(most);
    }
  },
);
