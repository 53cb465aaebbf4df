import { describe, expect, test } from 'vitest';
import { chooseFixing } from '../../../core/fixing/choose.ts';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

type Range = [number, number];
type Accept = {
  verdicts: string[];
  fasteners: string[];
  never?: string[];
  count?: Range;
  bitMm?: Range;
  plugMm?: Range[];
  screwGauge?: Range;
};

const rows = sanity.jobs
  // What stops before a fixing is asked for, is not a matter of fixing.
  .filter((each) => each.accept.fasteners.length > 0)
  .map((each) => ({
    id: each.id,
    title: each.title,
    job: each.job as unknown as Job,
    accept: each.accept as unknown as Accept,
  }));

const within = (value: number, [low, high]: Range) => value >= low && value <= high;

describe('a good tradesperson accepts the fixing chosen (common practice, no source)', () => {
  test.each(rows)('$id $title [common-practice]', ({ job, accept }) => {
    const layout = setOut(job);
    if (!layout.ok) throw new Error(layout.text);
    const result = chooseFixing(job, layout);
    expect(result).toMatchObject({ ok: true });
    if (!result.ok) return;
    const { fixing } = result;
    expect(accept.fasteners.some((root) => fixing.fastener.includes(root))).toBe(true);
    expect((accept.never ?? []).filter((root) => fixing.fastener.includes(root))).toEqual([]);
    expect(fixing.utilisation).toBeLessThanOrEqual(1);
    if (accept.count) expect(fixing.count).toSatisfy((n: number) => within(n, accept.count as Range));
    if (accept.bitMm)
      expect(fixing.bit.diameterMm).toSatisfy((d: number) => within(d, accept.bitMm as Range));
    if (accept.screwGauge && fixing.screw?.gauge !== undefined) {
      expect(fixing.screw.gauge).toSatisfy((g: number) => within(g, accept.screwGauge as Range));
    }
    if (accept.plugMm && fixing.plug) {
      const diameters = accept.plugMm.map(([d]) => d);
      const lengths = accept.plugMm.map(([, l]) => l);
      const span = (of: number[]): Range => [Math.min(...of), Math.max(...of)];
      expect(fixing.plug.diameterMm).toSatisfy((d: number) => within(d, span(diameters)));
      expect(fixing.plug.lengthMm).toSatisfy((l: number) => within(l, span(lengths)));
    }
    expect(result.alternatives.length + result.rejected.length).toBeGreaterThanOrEqual(2);
  });
});
