import { expect, test } from 'vitest';
import type { GroupJob } from '../../core/group-job.ts';
import { planOf } from '../../core/plan.ts';
import { planOfAny } from '../../core/plan-of-pieces.ts';
import { mm } from '../../core/quantity.ts';
import { groupOf, pictureOf } from './layout/group/a-group.ts';

const light = pictureOf(400, 500);
const heavy = pictureOf(700, 900, 120, 24);
const row = (pieces = [light, heavy, light], change = {}): GroupJob =>
  groupOf(4000, pieces, { as: 'row', gapMm: mm(75), align: 'centre' }, change);

test('several pieces have one plan: no frame, a frame and a fixing for each, marks by number and letter (contract 5)', () => {
  const plan = planOfAny(row());
  expect(plan.verdict).toBe('care');
  expect(plan.frame).toBeNull();
  expect(plan.frames).toHaveLength(3);
  expect(plan.fixings).toHaveLength(3);
  expect(plan.marks.map((mark) => mark.id)).toEqual(['1A', '1B', '2A', '2B', '3A', '3B']);
  expect(plan.actions?.perMark.map((each) => each.id)).toEqual(['1A', '1B', '2A', '2B', '3A', '3B']);
  // 34 kg x 9.80665.
  expect(plan.actions?.weightN).toBe(333.4);
});

test('each piece has the fixing it would have alone in its place, and the plan names the strongest of them', () => {
  const plan = planOfAny(row());
  const { pieces, arrange: _, ...rest } = row();
  for (const [at, piece] of pieces.entries()) {
    const frame = plan.frames?.[at];
    const across = { by: 'left-edge' as const, mm: frame?.leftMm ?? mm(0) };
    const up = { by: 'bottom-above' as const, mm: frame?.bottomMm ?? mm(0) };
    const alone = planOf({ ...rest, piece, place: { ...rest.place, across, up } });
    expect(plan.fixings?.[at]).toEqual(alone.fixing);
    expect(plan.frames?.[at]).toEqual(alone.frame);
  }
  expect(plan.fixing).toEqual(plan.fixings?.[1]);
});

test('what is bought is added up over the pieces, and one bit of a size serves all', () => {
  const plan = planOfAny(row([light, light, light]));
  const { shopping } = plan;
  expect(shopping.filter(({ item }) => /plug/.test(item)).map(({ count }) => count)).toEqual([6]);
  expect(shopping.filter(({ item }) => / bit /.test(item)).map(({ count }) => count)).toEqual([1]);
  expect(new Set(shopping.map(({ item }) => item)).size).toBe(shopping.length);
});

test('a caution of one piece names it, one of all is said once, and no id is said twice', () => {
  const { cautions } = planOfAny(row());
  const ids = cautions.map((each) => each.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(cautions.find(({ id }) => id === 'C-MH-1')?.text).toMatch(/^Piece 2: Lifting 24 kg/);
  expect(cautions.find(({ id }) => id === 'C-PP-1')?.text).toMatch(/^Glasses on/);
});

test('a stop of one piece stops the group: no mark, no fixing, no step, no word of where to drill', () => {
  const over = pictureOf(400, 500, 60, 60);
  const plan = planOfAny(row([light, over, light]));
  expect(plan.verdict).toBe('stop');
  expect(plan).toMatchObject({
    marks: [],
    crossChecks: [],
    fixing: null,
    fixings: [],
    steps: [],
    shopping: [],
  });
  expect(plan.clear.join(' ')).toMatch(/^Piece 2: Someone who can design and sign for it/);
  expect(JSON.stringify(plan)).not.toMatch(/fromLeftMm|bit"/);
});

test('a mark over a socket moves the whole group, since one piece alone would spoil the gaps', () => {
  // Piece 1 from 1350: its second mark at 1700 is straight above the socket, 73 either side.
  const accessories = [{ kind: 'socket' as const, face: 'this' as const, xMm: mm(1700), yMm: mm(300) }];
  const job = row([light, light, light], { wall: { accessories } });
  const stop = planOfAny(job).cautions[0];
  expect(stop?.text).toMatch(
    /^Piece 1: Mark 1B .*Move the whole group at least (\d+) mm to the (left|right)/,
  );
  const [, by = '0', way = ''] = /at least (\d+) mm to the (left|right)/.exec(stop?.text ?? '') ?? [];
  const left = 1325 + (way === 'left' ? -1 : 1) * Number(by);
  const moved = planOfAny({ ...job, place: { ...job.place, across: { by: 'left-edge', mm: mm(left) } } });
  expect(moved.verdict).not.toBe('stop');
});

test('the gaps between pieces are checked edge to edge, and mark to mark before anything hangs', () => {
  const { crossChecks } = planOfAny(row());
  const lengths = Object.fromEntries(crossChecks.map((each) => [each.text, each.expectMm]));
  expect(lengths['gap between piece 1 and piece 2, edge to edge']).toBe(75);
  // Rings 50 in from each edge; heights 1450 + 250 - 60 and 1450 + 450 - 120.
  expect(lengths['1B to 2A']).toBe(Math.round(Math.hypot(175, 140) * 10) / 10);
});

test('each number of each piece can be asked about, and what differs bears the piece’s number', () => {
  const names = planOfAny(row()).why.map((each) => each.of);
  expect(names).toEqual(
    expect.arrayContaining(['mark 1A across', 'mark 3B up', 'frame 2 left edge', 'group bottom edge']),
  );
  expect(names.some((name) => /^piece 2 hole depth$/.test(name) || name === 'hole depth')).toBe(true);
  expect(new Set(names).size).toBe(names.length);
});

test('the steps measure from one end, mark every piece, check each gap and drill before anything hangs', () => {
  const { steps } = planOfAny(row());
  const at = (form: RegExp): number => steps.findIndex((step) => form.test(step));
  const order = [
    at(/left end of the wall/),
    at(/^Piece 3, from the left end/),
    at(/^Check between/),
    at(/every hole before/),
    at(/^Hang piece 1/),
  ];
  expect(order).toEqual([...order].sort((one, other) => one - other));
  expect(order).not.toContain(-1);
});
