import { expect, test } from 'vitest';
import { checkOf } from '../../../core/check.ts';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import { mm } from '../../../core/quantity.ts';
import { EXAMPLE_JOB } from '../../../src/schema/example-job.ts';
import { jobSchema } from '../../../src/schema/job.ts';

/** The job that the description shows: 840 x 1120, 24 kg, rings 95 in and 240 down, on 2700 of 110 mm brick. */
const example: Job = jobSchema.parse(EXAMPLE_JOB);
const withCores = (cores: 'solid' | 'perforated' | 'unknown'): Job => ({
  ...example,
  wall: { ...example.wall, cores },
});

test('the described job is planned with care, in the place its own figures give', () => {
  const { verdict, frame, marks, crossChecks, actions } = planOf(example);
  expect(verdict).toBe('care');
  // (2700 - 840) / 2 = 930; 930 + 840 = 1770; 140 + 1120 = 1260.
  expect(frame).toEqual({ leftMm: 930, rightMm: 1770, bottomMm: 140, topMm: 1260 });
  // 930 + 95 = 1025; 1770 - 95 = 1675; 1260 - 240 = 1020.
  expect(marks).toMatchObject([
    { id: 'A', fromLeftMm: 1025, fromRightMm: 1675, upMm: 1020 },
    { id: 'B', fromLeftMm: 1675, fromRightMm: 1025, upMm: 1020 },
  ]);
  expect(crossChecks[0]).toEqual({ text: 'A to B', expectMm: 650, toleranceMm: 2 });
  // 24 x 9.80665 = 235.36; half of it a ring; 235.36 x 30 / 880 / 2 = 4.01 outward.
  expect(actions?.weightN).toBe(235.4);
  expect(actions?.perMark.map(({ shearN, tensionN }) => [shearN, tensionN])).toEqual([
    [117.7, 4],
    [117.7, 4],
  ]);
});

test('not knowing whether brick has holes never stops a job that solid brick would bear: each hole has to prove it', () => {
  const plan = planOf(withCores('unknown'));
  // A hole of 12 + 80 + 5 for the shortest sleeve would leave 3 mm of a wall of 100.
  const perforated = withCores('perforated');
  expect(planOf({ ...perforated, wall: { ...perforated.wall, thicknessMm: mm(100) } }).verdict).toBe('stop');
  expect(plan.verdict).toBe('care');
  expect(plan.fixing?.bit.action).toBe('rotary-until-known');
  expect(plan.cautions).toContainEqual(expect.objectContaining({ id: 'C-WL-1', severity: 'warn' }));
  expect(plan.assumptions.filter(({ field }) => field === 'wall.cores')).toEqual([
    { field: 'wall.cores', value: 'solid', because: expect.stringContaining('every hole has proved solid') },
  ]);
  const known = planOf(withCores('solid'));
  expect(plan.alternatives).toEqual(known.alternatives);
  expect(plan.fixing).toEqual({
    ...known.fixing,
    bit: { ...known.fixing?.bit, action: 'rotary-until-known' },
  });
});

test('what the plan says of such a wall is in the hand and will do, once every hole has proved it', () => {
  const { fixing } = planOf(withCores('unknown'));
  const measured = { fixing: { plug: { diameterMm: mm(8), lengthMm: mm(50) }, screw: { gauge: 14 } } };
  expect(fixing?.plug).toEqual({ diameterMm: 8, lengthMm: 50 });
  const check = checkOf(withCores('unknown'), measured);
  expect([check.verdict, check.fixing?.holds]).toEqual(['go', true]);
  expect(check.text).toContain('one dust colour to full depth');
  expect(checkOf(withCores('solid'), measured).text).not.toContain('dust colour');
});
