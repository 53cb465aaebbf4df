import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import type { Caution } from '../../../core/plan-shape.ts';
import { anyPlans, leavesOf, type Planned, plausiblePlans, spoken } from './random-plans.ts';

/** Three thousand jobs, half of them as people bring them. */
const PLANNED: readonly Planned[] = [...plausiblePlans(1500), ...anyPlans(1500)];
const STOPPED = PLANNED.filter(({ plan }) => plan.verdict === 'stop');
const DRILLED = PLANNED.filter(({ plan }) => plan.verdict !== 'stop');

const every = (check: (caution: Caution) => boolean): string[] =>
  PLANNED.flatMap(({ plan }) =>
    plan.cautions.filter((each) => !check(each)).map(({ id, text }) => `${id}: ${text}`),
  );

const idsOf = ({ plan }: Planned): Set<string> => new Set(plan.cautions.map(({ id }) => id));

test('the jobs are of every verdict, so that what follows is seen', () => {
  expect(STOPPED.length).toBeGreaterThan(500);
  expect(DRILLED.length).toBeGreaterThan(200);
});

test('every caution has words that end, and a stop has what clears it', () => {
  expect(every(({ text }) => /\S.*[.?)]$/s.test(text))).toEqual([]);
  expect(every(({ severity, clears }) => severity !== 'stop' || /\S.*\.$/s.test(clears ?? ''))).toEqual([]);
});

test('every caution cites a document with its place and standing, or says that it is ours', () => {
  expect(
    every(
      ({ basis }) =>
        basis.length > 0 && basis.every(({ title, at, standing }) => Boolean(title && at && standing)),
    ),
  ).toEqual([]);
});

test('a severity is always ours, and a plan says so of each caution of a rule', () => {
  const ruled = (id: string): boolean => !id.startsWith('C-FT-');
  expect(
    every(({ id, basis }) => !ruled(id) || basis.some(({ standing }) => standing === 'our-choice')),
  ).toEqual([]);
});

test('the stops come first, then what wants care, then notes, each id once', () => {
  for (const planned of PLANNED) {
    const order = planned.plan.cautions.map(({ severity }) => ['stop', 'warn', 'note'].indexOf(severity));
    expect(order).toEqual([...order].sort());
    expect(idsOf(planned).size).toBe(order.length);
  }
});

test('nothing says that a wall is safe', () => {
  expect(
    every(
      ({ text, clears }) => !/\b(?:is|be|are) safe\b|\bsafe to\b|\bsafely\b/i.test(`${text} ${clears ?? ''}`),
    ),
  ).toEqual([]);
});

test('a stop gives no step, tool, purchase, advice or check of the tape', () => {
  for (const { plan } of STOPPED) {
    const { marks, fixing, steps, tools, shopping, advice, crossChecks, alternatives } = plan;
    expect([marks, fixing, steps, tools, shopping, advice, crossChecks, alternatives]).toEqual([
      [],
      null,
      [],
      [],
      [],
      [],
      [],
      [],
    ]);
    expect(plan.batten).toBeUndefined();
  }
});

test('no string or number of a stop tells where a mark would have been', () => {
  let held = 0;
  for (const { job, plan } of STOPPED) {
    const layout = setOut(job);
    if (!layout.ok) continue;
    const places = layout.marks
      .flatMap(({ fromLeftMm, fromRightMm, upMm, downMm }) => [fromLeftMm, fromRightMm, upMm, downMm])
      .filter((each) => each !== undefined)
      .map((each) => Math.round(each * 10) / 10)
      // A round figure may be a height somebody gave, or a figure of a rule; a tenth is nobody's but the mark's.
      .filter((each) => Number.isFinite(each) && !Number.isInteger(each));
    const { frame: _, ...rest } = plan;
    const leaves = leavesOf(rest);
    const words = leaves.filter((each) => typeof each === 'string').join('\n');
    for (const place of places) {
      held += 1;
      expect(leaves).not.toContain(place);
      expect(words).not.toMatch(new RegExp(`(?<![\\d.])${String(place).replace('.', '\\.')}(?![\\d])`));
    }
  }
  expect(held).toBeGreaterThan(300);
});

test('no words of a stop tell how to drill', () => {
  const how =
    /\b\d[\d.]* mm (?:bit|deep|hole|pilot|plug)\b|\bstop at \d|(?<!n't )\bdrill (?:slowly|on|a|at|it (?:out|through))\b|\bvacuum the hole\b|\bmist the spot\b|\bhammer (?:only|drilling|action)\b|\brotary\b/i;
  // Words of no position that a fixing was refused with are no step, and are said only where nothing else stops.
  expect(STOPPED.filter(({ plan }) => how.test(spoken(plan))).map(({ plan }) => spoken(plan))).toEqual([]);
});
