import { expect, it } from 'vitest';
import { checkOf } from '../../core/check.ts';
import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import { kg, mm } from '../../core/quantity.ts';
import { fixingJob, rings } from './fixing/a-fixing-job.ts';

/** 600 mm from mark to mark. */
const base = fixingJob({ kg: 12 });
const job = (wall: Partial<Job['wall']>, place: Partial<Job['place']> = {}): Job => ({
  ...base,
  wall: { ...base.wall, ...wall },
  place: { ...base.place, ...place },
});
const planned = planOf(base).marks;
const [a, b] = planned;
if (!a || !b) throw new Error('two rings give two marks');
const at = (id: string, across: number, up: number) => ({
  id,
  fromLeftMm: mm((id.toUpperCase() === 'A' ? a : b).fromLeftMm + across),
  upMm: mm((a.upMm ?? 0) + up),
});

/** What is measured, mm off, right and up positive; what the check says. */
const rows: [string, ReturnType<typeof at>[], 'go' | 'care' | 'stop', RegExp][] = [
  ['both marks right', [at('A', 0, 0), at('B', 0, 0)], 'go', /agree/],
  ['2 mm off is tape reading', [at('A', 2, 0), at('B', -2, 0)], 'go', /agree/],
  ['2.1 mm off is more', [at('A', 2.1, 0), at('B', 0, 0)], 'care', /A is 2.1 mm too far right/],
  ['left and low', [at('A', -5, -4), at('B', 0, -4)], 'care', /5 mm too far left and 4 mm too low/],
  ['small letters', [at('a', 0, 0), at('b', 0, 0)], 'go', /agree/],
  ['one mark only', [at('A', 0, 0)], 'care', /Not measured yet: B/],
  [
    'a mark that is not planned',
    [at('A', 0, 0), at('B', 0, 0), { ...at('B', 0, 0), id: 'C' }],
    'care',
    /no mark C/,
  ],
  ['nothing', [], 'care', /Nothing was measured/],
];

it.each(rows)('checks the marks: %s [contract 6]', (_, marks, verdict, says) => {
  const check = checkOf(base, { marks });
  expect(check.verdict).toBe(verdict);
  expect(check.text).toMatch(says);
});

// atan(2 / 600) = 0.191 degrees, atan(2.2 / 600) = 0.210, atan(6.5 / 600) = 0.621.
it.each([
  [2, null],
  [2.2, 'C-LV-1'],
  [6.5, 'C-LV-2'],
  [-6.5, 'C-LV-2'],
])('warns of a right mark %d mm high over 600: %s (safety 8)', (high, id) => {
  const check = checkOf(base, { marks: [at('A', 0, 0), at('B', 0, high)] });
  expect(check.cautions.map((each) => each.id)).toEqual(id === null ? [] : [id]);
  expect(Math.sign(check.tiltDeg ?? 0)).toBe(Math.sign(high));
});

it('stops where a measured hole has wandered in line with a socket, and warns where it is near one', () => {
  // The plate is 146 wide: its strip ends 73 from its middle; 150 right of the strip is clear, 40 is not.
  const near = job({
    accessories: [{ kind: 'socket', face: 'this', xMm: mm(a.fromLeftMm - 73 - 150), yMm: mm(300) }],
  });
  const wandered = (by: number) => checkOf(near, { marks: [at('A', by, 0), at('B', 0, 0)] });
  expect(wandered(-155)).toMatchObject({ verdict: 'stop', cautions: [{ id: 'C-SV-1' }] });
  // The piece is where it should be; only the hole is not.
  expect(wandered(-155).text).toContain('put the hole where the plan has it');
  expect(wandered(-155).text).not.toContain('whole piece');
  expect(wandered(-110).cautions.map(({ id }) => id)).toContain('C-SV-2');
});

it('holds heights against the first mark under a ceiling of unknown height', () => {
  const { heightMm: _, ...wall } = base.wall;
  const under = {
    ...job({}, { up: { by: 'below-ceiling', mm: mm(300) } }),
    wall: { ...wall, datum: { kind: 'ceiling' as const } },
  };
  const check = checkOf(under, { marks: [at('A', 0, 0), at('B', 0, 9)] });
  expect(check.marks.map(({ offByMm }) => offByMm.up)).toEqual([0, 9]);
  // atan(9 / 600) = 0.859 degrees.
  expect(check.tiltDeg).toBeCloseTo(0.86, 2);
});

it('says that a tape below the right mark reads what the floor makes of it', () => {
  // The floor rises 27 over 3000: 5.4 over the 600 between the marks.
  const sloping = job({ datum: { kind: 'floor', aboveFloorMm: mm(0), fallMm: mm(27) } });
  const check = checkOf(sloping, { marks: [at('A', 0, 0), at('B', 0, -5.4)] });
  expect(check.text).toMatch(/measured up from straight below it, it is right/);
});

const WALLS: [string, Partial<Job['wall']>][] = [
  ['solid brick', {}],
  ['perforated brick', { cores: 'perforated' }],
  ['tensioned steel ruled out in concrete', { baseMaterial: 'concrete', tensioned: 'no' }],
  ['board with studs not found', { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'bare' } }],
  ['tile on brick', { finish: { kind: 'tile', thicknessMm: mm(15) } }],
];

it.each(WALLS.flatMap(([name, wall]) => [4, 12, 24, 34].map((mass) => [mass, name, wall] as const)))(
  'a plan read back as it stands is go: %d kg, %s [contract 6]',
  (mass, _, wall) => {
    const given = { ...base, piece: { ...base.piece, massKg: kg(mass) }, wall: { ...base.wall, ...wall } };
    const plan = planOf(given);
    const { fixing } = plan;
    const marks = plan.marks.map((mark) => ({ ...mark, upMm: mark.upMm ?? mm(0) }));
    const check = fixing && checkOf(given, { marks, fixing });
    expect(check === null || check.verdict).toBe(check === null ? true : 'go');
    expect(plan.verdict === 'stop').toBe(fixing === null);
  },
);

it('holds the plan’s own fixing good, an added batten’s too, whose screws stand out of the wall by the batten', () => {
  const wide = fixingJob({ kg: 42, widthMm: 1200, hanging: rings(2, 1200) });
  const { fixing } = planOf(wide);
  if (!fixing?.plug || !fixing.screw) throw new Error('plugs and screws');
  expect(fixing.fastener).toBe('batten-screws');
  const { fastener, bit, plug, screw } = fixing;
  const { verdict, fixing: hand } = checkOf(wide, { fixing: { fastener, bit, plug, screw } });
  expect([verdict, hand?.holds, hand?.utilisation]).toEqual(['go', true, fixing.utilisation]);
});

it.each([
  // 600 apart: 600 tan 0.2 deg = 2.094; 2.06 is 0.1967, given out as 0.2; 2.04 is 0.1948, given out as 0.19.
  [2.06, 'care', 0.2],
  [2.04, 'go', 0.19],
] as const)(
  'a right mark %d mm high over 600 counts as %s, as the tilt that is given out',
  (up, verdict, tilt) => {
    const half = up / 2;
    const check = checkOf(base, { marks: [at('A', 0, -half), at('B', 0, half)] });
    expect([check.verdict, check.tiltDeg]).toEqual([verdict, tilt]);
    expect(checkOf(base, { marks: [at('A', 0, half), at('B', 0, -half)] }).tiltDeg).toBe(-tilt);
  },
);

it('gives out what a mark is off by to the tenth', () => {
  const { marks } = checkOf(base, { marks: [at('A', 2.1, -0.3), at('B', 0, 0)] });
  expect(marks[0]?.offByMm).toEqual({ across: 2.1, up: -0.3 });
});
