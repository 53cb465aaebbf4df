import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import { jobSchema } from '../../../src/schema/job.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

const jobs = sanity.jobs.map(({ job }) => job as unknown as Record<string, unknown>);
const strange = fc.oneof(
  fc.integer(),
  fc.double(),
  fc.string(),
  fc.constantFrom(null, true, [], {}, -1, 0, 1e12, 'unknown', Number.NaN),
);

/** Sets one leaf, chosen by number, to something strange. */
function disturbed(job: unknown, at: number, value: unknown): unknown {
  const copy = structuredClone(job);
  const leaves: [Record<string, unknown>, string][] = [];
  const walk = (node: unknown): void => {
    if (node === null || typeof node !== 'object') return;
    for (const [key, child] of Object.entries(node)) {
      leaves.push([node as Record<string, unknown>, key]);
      walk(child);
    }
  };
  walk(copy);
  const leaf = leaves[at % leaves.length];
  if (leaf) leaf[0][leaf[1]] = value;
  return copy;
}

test('a typical job with any fields made strange is refused by the schema or planned, and never throws', () => {
  fc.assert(
    fc.property(
      fc.nat(jobs.length - 1),
      fc.array(fc.tuple(fc.nat(200), strange), { minLength: 1, maxLength: 4 }),
      (which, changes) => {
        const job = changes.reduce<unknown>((so, [at, value]) => disturbed(so, at, value), jobs[which]);
        const read = jobSchema.safeParse(job);
        if (!read.success) return;
        const plan = planOf(read.data as Job);
        expect(['go', 'care', 'stop']).toContain(plan.verdict);
        if (plan.verdict === 'stop') expect([plan.marks, plan.fixing, plan.steps]).toEqual([[], null, []]);
        else expect(JSON.stringify(plan)).not.toMatch(/NaN|Infinity|:null,"fromRightMm/);
      },
    ),
    { numRuns: 1500 },
  );
});
