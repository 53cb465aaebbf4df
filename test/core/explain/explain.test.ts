import fc from 'fast-check';
import { expect, test } from 'vitest';
import { explain } from '../../../core/explain/explain.ts';
import { unknownOrigins } from '../../../core/explain/origins.ts';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { jobSchema } from '../../../src/schema/job.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };
import { sweep } from '../../sweep/swept.ts';
import { anyJob as anyCautionJob } from '../caution/any-job.ts';
import { anyJob as anyFixingJob } from '../fixing/any-job.ts';
import { readableJob } from '../layout/any-job.ts';
import { workedOut } from './arithmetic.ts';
import { at, numbersIn } from './every-number.ts';

const typical = sanity.jobs.map(({ id, job }) => ({ id, job: jobSchema.parse(job) as Job }));

/** Numbers that are picked from a table, a shelf or a walk, or come of a limit analysis: no arithmetic of a few inputs. */
const PICKED =
  /^fixing\.(?:count|bit\.diameterMm|plug|screw\.(?:gauge|diameterMm)|pilot\.diameterMm)|^alternatives|^chain\[\d+\]\.resistanceN|^assumptions|toleranceMm$/;
const OF_LIMIT_ANALYSIS = /^(?:timber-|concrete-cone|masonry)/;

/** Inputs are told to a tenth or finer; what is made of them is as near as that. */
const near = (value: number): number => 0.16 + Math.abs(value) * 0.01;

function faultsOf(job: Job, plan: Plan): string[] {
  const cited = new Set(plan.basis.map(({ id, at: place }) => `${id} ${place}`));
  return numbersIn(JSON.parse(JSON.stringify(plan))).flatMap((path) => {
    const told = explain(plan, path);
    if (!told.ok) return [`${path}: nothing explains it; give a why its path in core/explain`];
    const faults: string[] = [];
    const value = at(plan, path) as number;
    if (told.value !== value) faults.push(`${path}: ${value} is told as ${told.value}`);
    if (told.formula === '' || told.basis.length === 0) faults.push(`${path}: no formula or no basis`);
    for (const { id, at: place } of told.basis)
      if (!cited.has(`${id} ${place}`)) faults.push(`${path}: ${id}, ${place} is not in the plan's basis`);
    const again = workedOut(told.formula.replace(/^stocked/, ''), told.inputs);
    if (told.formula.startsWith('stocked')) {
      if (again === null || again > value + 1e-6)
        faults.push(`${path}: ${told.formula} is ${again}, over ${value}`);
    } else if (again !== null) {
      if (!isTooClose(path, plan) && !(Math.abs(again - value) <= near(value)))
        faults.push(`${path}: ${told.formula} is ${again}, not ${value} (${JSON.stringify(told.inputs)})`);
    } else if (!PICKED.test(path) && !isOfLimitAnalysis(path, plan)) {
      faults.push(
        `${path}: "${told.formula}" can't be worked out from ${told.inputs.map(({ name }) => name)}`,
      );
    }
    for (const { name, value: given, from, of } of told.inputs) {
      const said = at(job, of);
      if (from === 'said' && typeof said === 'number' && !(Math.abs(said - Number(given)) <= 0.11))
        faults.push(`${path}: ${name} is said to be ${given}, and ${of} was ${said}`);
    }
    return faults;
  });
}

/** Marks this close share the load by figures finer than the tenth they are told to. */
const isTooClose = (path: string, { marks }: Plan): boolean =>
  path.startsWith('actions.perMark') &&
  marks.some((mark, nth) => nth > 0 && Math.abs(mark.fromLeftMm - (marks[nth - 1]?.fromLeftMm ?? 0)) < 20);

const isOfLimitAnalysis = (path: string, { fixing }: Plan): boolean =>
  path === 'fixing.governing.resistanceN' && OF_LIMIT_ANALYSIS.test(fixing?.governing.mode ?? '');

test.each(typical)(
  '$id (common practice, no source): every number is explained, and its formula gives it again',
  ({ job }) => {
    expect(faultsOf(job, planOf(job))).toEqual([]);
  },
);

test.each([
  ['set-out', readableJob],
  ['fixing', anyFixingJob],
  ['caution', anyCautionJob],
] as const)('every number of any plan is explained (%s jobs)', (_, jobs) => {
  let numbers = 0;
  fc.assert(
    fc.property(jobs as fc.Arbitrary<Job>, (job) => {
      const plan = planOf(job);
      numbers += numbersIn(plan).length;
      expect(faultsOf(job, plan)).toEqual([]);
    }),
    { numRuns: 300 },
  );
  expect(numbers).toBeGreaterThan(300);
});

test('every number of a plan for any wall is explained (the sweep’s invented jobs)', () => {
  const planned = [...sweep(3000, 5)].filter(({ plan }) => plan.verdict !== 'stop');
  const faults = planned.flatMap(({ nth, job, plan }) =>
    faultsOf(job, plan).map((fault) => `job ${nth}, ${job.wall.baseMaterial}: ${fault}`),
  );
  expect(faults.slice(0, 10)).toEqual([]);
  expect(new Set(planned.map(({ job }) => job.wall.baseMaterial)).size).toBe(11);
});

test('every input of a why says where it comes from', () => {
  const unknown = typical.flatMap(({ job }) =>
    planOf(job).why.flatMap((why) => unknownOrigins(why).map((name) => `${why.of}: ${name}`)),
  );
  expect([...new Set(unknown)]).toEqual([]);
});
