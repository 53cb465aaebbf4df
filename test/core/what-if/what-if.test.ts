import { expect, test } from 'vitest';
import { explain } from '../../../core/explain/explain.ts';
import { pathIn } from '../../../core/explain/plan-path.ts';
import type { Job } from '../../../core/job.ts';
import { planOfAny } from '../../../core/plan-of-pieces.ts';
import { kg } from '../../../core/quantity.ts';
import { whatIf } from '../../../core/what-if/what-if.ts';
import { jobSchema } from '../../../src/schema/job.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };
import { numbersIn } from '../explain/every-number.ts';

/** The typical jobs, less what can be taken: the finish and the depth were not measured. */
const unmeasured = sanity.jobs.map(({ id, job }) => {
  const copy = jobSchema.parse(structuredClone(job)) as Job;
  if (copy.wall.finish) delete copy.wall.finish.thicknessMm;
  delete copy.piece.depthMm;
  return { id, job: copy };
});

/** The job with the field another value, by its own way of setting it. */
function changed(job: Job, field: string, value: unknown): Job {
  const copy = structuredClone(job) as unknown as Record<string, unknown>;
  const steps = field.split('.');
  const last = steps.pop() ?? '';
  let here = copy;
  for (const step of steps) {
    here[step] ??= {};
    here = here[step] as Record<string, unknown>;
  }
  here[last] = value;
  return copy as unknown as Job;
}

test.each(unmeasured)(
  '$id (common practice, no source): what an assumption would change is what the job comes to with that value',
  ({ job }) => {
    const plan = planOfAny(job);
    const told = whatIf(job, plan, planOfAny);
    const wrong = told.assumptions.filter((each) => each.ifWrong);
    expect(wrong.length).toBeLessThanOrEqual(3);
    for (const { field, value, ifWrong } of wrong) {
      if (!ifWrong) continue;
      expect(ifWrong.value).not.toBe(value);
      const would = planOfAny(changed(job, field, ifWrong.value));
      for (const { path, from, to } of ifWrong.changes.filter((each) => !each.path.startsWith('cautions.'))) {
        expect([path, pathIn(plan, path)?.value ?? null]).toEqual([path, from]);
        expect([path, pathIn(would, path)?.value ?? null]).toEqual([path, to]);
        expect(from).not.toBe(to);
      }
      expect(ifWrong.text).toMatch(/^If .+: .+\.$/s);
    }
    for (const path of numbersIn(JSON.parse(JSON.stringify(told))))
      expect([path, explain(told, path).ok]).toEqual([path, true]);
    // The rest of the plan is the very same, and the plan given is left as it was.
    expect(told.assumptions.map(({ ifWrong: _, ...rest }) => rest)).toEqual(plan.assumptions);
    expect({ ...told, assumptions: [] }).toEqual({ ...plan, assumptions: [] });
    expect(plan.assumptions.some((each) => each.ifWrong)).toBe(false);
  },
);

test('a deeper gap behind board on dabs needs the next long plug: 12.5 + 60 + the depth in the block, and 10 behind it [common-practice]', () => {
  const light = unmeasured.find(({ id }) => id === 'SJ-22')?.job;
  if (!light || !('piece' in light)) throw new Error('there is a typical job on dabs');
  // Too heavy for the board itself, so it goes through into the block.
  const job = { ...light, piece: { ...light.piece, massKg: kg(9) } };
  const gap = whatIf(job, planOfAny(job), planOfAny).assumptions.find(({ field }) => field === 'wall.voidMm');
  expect(gap?.ifWrong?.value).toBe(60);
  const plug = gap?.ifWrong?.changes.find(({ path }) => path === 'fixing.plug.lengthMm');
  const hole = gap?.ifWrong?.changes.find(({ path }) => path === 'fixing.bit.depthMm');
  expect(Number(hole?.to)).toBe(Number(plug?.to) + 10);
  expect(Number(plug?.to)).toBeGreaterThan(12.5 + 60);
});
