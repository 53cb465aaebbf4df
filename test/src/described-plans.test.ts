import { expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { checkOf } from '../../core/check.ts';
import { planOf } from '../../core/plan.ts';
import { checkSchema } from '../../src/schema/check.ts';
import { EXAMPLE_JOB } from '../../src/schema/example-job.ts';
import { jobSchema } from '../../src/schema/job.ts';
import { planSchema } from '../../src/schema/plan.ts';
import { cautionJson, type PlanJson, planJson } from '../../src/schema/plan-json.ts';
import sanity from '../fixtures/reference/sanity-jobs.json' with { type: 'json' };

/** As JSON has it: no brands, nothing that can't be written to. */
type Plain<T> = T extends number
  ? number
  : T extends readonly (infer Each)[]
    ? Plain<Each>[]
    : T extends object
      ? { -readonly [Field in keyof T]: Plain<T[Field]> }
      : T;

/** The published jobs, and the contract's own with what stops it. */
const JOBS: [string, unknown][] = [
  ...sanity.jobs.map(({ id, job }): [string, unknown] => [id, job]),
  ['the contract’s example', EXAMPLE_JOB],
  ['a wall nobody knows', { ...EXAMPLE_JOB, wall: { ...EXAMPLE_JOB.wall, baseMaterial: 'unknown' } }],
  ['a piece wider than the wall', { ...EXAMPLE_JOB, wall: { ...EXAMPLE_JOB.wall, widthMm: 700 } }],
];

const overTheWire = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

test('core’s plan has no shape that the description does not give', () => {
  expectTypeOf<Plain<PlanJson>>().toExtend<z.input<typeof planSchema>>();
});

test.each(JOBS)('the job of %s is taken at the door, and its plan is of the described shape', (_, sent) => {
  const plan = overTheWire(planJson(planOf(jobSchema.parse(sent))));
  expect(planSchema.safeParse(plan).error?.issues ?? []).toEqual([]);
});

test.each(JOBS)('the check of %s is of the described shape', (_, sent) => {
  const job = jobSchema.parse(sent);
  const marks = planOf(job).marks.flatMap(({ id, fromLeftMm, upMm }) =>
    upMm ? [{ id, fromLeftMm, upMm }] : [],
  );
  const check = checkOf(job, { marks });
  const said = overTheWire({ ...check, cautions: check.cautions.map(cautionJson) });
  expect(checkSchema.safeParse(said).error?.issues ?? []).toEqual([]);
});
