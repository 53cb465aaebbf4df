import { expect, test } from 'vitest';
import type { Plan } from '../../../core/plan-shape.ts';
import { anyPlans, leavesOf, type Planned, plausiblePlans, spoken } from './random-plans.ts';

const PLANNED: readonly Planned[] = [...plausiblePlans(1200), ...anyPlans(300)];

const everything = (plan: Plan): string =>
  leavesOf(plan)
    .filter((each) => typeof each === 'string')
    .join('\n');
const fastener = ({ fixing }: Plan): string => fixing?.fastener ?? '';
const drilled = ({ fixing }: Plan): boolean => fixing !== null && fixing.bit.kind !== 'none';

const IN_TIMBER =
  /^(?:stud-screw|steel-stud-screw|timber-screw|lath-screw|batten-screws|board-across-studs|picture-rail-hook|pin-hook)$/;

/** What is asked for, and what may not stand in the same plan. */
const PAIRS: readonly [asked: string, when: (plan: Plan) => boolean, never: (plan: Plan) => boolean][] = [
  [
    'no hammer, and a hammer in the steps, the bit or the bag',
    (plan) => /\bno hammer\b|\brotary only\b/i.test(spoken(plan)),
    (plan) =>
      plan.fixing?.bit.action === 'hammer-after-finish' ||
      /hammer only|hammer action|hammer drilling/.test(everything(plan)),
  ],
  [
    'ear protection for a hammer, and none in the plan',
    (plan) => /hammer drilling/.test(spoken(plan)),
    (plan) => plan.fixing?.bit.action !== 'hammer-after-finish',
  ],
  [
    'only timber counts, and a fastener that misses it',
    (plan) => /only the timber counts|screws into studs only/.test(spoken(plan)) && plan.fixing !== null,
    (plan) => !IN_TIMBER.test(fastener(plan)),
  ],
  [
    'no hole at all, and a mark to drill',
    (plan) => /don't drill it|before anyone makes a hole|nobody drills|no hole is placed/i.test(spoken(plan)),
    (plan) => plan.marks.length > 0 && drilled(plan),
  ],
  [
    'go deeper, and a depth to stop at',
    (plan) => /go deeper/i.test(spoken(plan)),
    (plan) => /stop at \d/i.test(everything(plan)),
  ],
  [
    'two hooks wanted, and two marks given',
    (plan) => /: use two hooks/.test(spoken(plan)),
    (plan) => plan.marks.length > 1,
  ],
  [
    'lower it, and raise it',
    (plan) => /\blower (?:the whole piece|its bottom|it)\b/i.test(spoken(plan)),
    (plan) => /\braise (?:the whole piece|it)\b/i.test(spoken(plan)),
  ],
  [
    'to the left, and to the right',
    (plan) => /Move the whole piece at least [\d.]+ mm to the left/.test(spoken(plan)),
    (plan) => /Move the whole piece at least [\d.]+ mm to the right/.test(spoken(plan)),
  ],
  [
    'through into the block, and a fastener that stays in the board',
    (plan) => /fix through into the block/.test(spoken(plan)) && plan.fixing !== null,
    (plan) => /toggle|winged|screw-in|sleeve/.test(fastener(plan)),
  ],
  [
    'do not blow the hole out, and blow it out',
    (plan) => /n[o']t blow/.test(everything(plan)),
    (plan) => /(?<!n[o']t )\bblow (?:it|the hole)\b/.test(everything(plan)),
  ],
  [
    'nothing wider than a screw in a shared wall, and a toggle through it',
    (plan) => plan.cautions.some(({ id }) => id === 'C-GT-5') && plan.marks.length > 0,
    (plan) => /toggle|winged|sleeve|screw-in/.test(fastener(plan)) && !/plug/.test(fastener(plan)),
  ],
];

test.each(PAIRS)('one plan never says both: %s (our choice)', (_, asked, never) => {
  const both = PLANNED.filter(({ plan }) => asked(plan) && never(plan));
  expect(both.slice(0, 3).map(({ job, plan }) => [job, spoken(plan)])).toEqual([]);
});

/** Rows that answer the same thing differently. */
const APART = [
  ['C-SI-1', 'C-SI-2'],
  ['C-PB-1', 'C-PB-2'],
  ['C-MH-1', 'C-MH-2'],
  ['C-AB-1', 'C-AB-4'],
  ['C-AB-3', 'C-AB-4'],
  ['C-AB-1', 'C-AB-3'],
] as const;

test.each(APART)('%s and %s are never said of one job', (one, other) => {
  const both = PLANNED.filter(({ plan }) =>
    [one, other].every((id) => plan.cautions.some((each) => each.id === id)),
  );
  expect(both).toEqual([]);
});
