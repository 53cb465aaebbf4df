import { expect, test } from 'vitest';
import { setOutGroup } from '../../../../core/layout/group/group-set-out.ts';
import { mm } from '../../../../core/quantity.ts';
import type { Accessory } from '../../../../core/wall/wall.ts';
import { framesOf, groupOf, misfitOf, pictureOf } from './a-group.ts';

const three = Array(3).fill(pictureOf(400, 500));
const door = (xMm: number): { wall: { accessories: Accessory[] } } => ({
  wall: {
    accessories: [
      { kind: 'door', face: 'this', xMm: mm(xMm), yMm: mm(1020), widthMm: mm(900), heightMm: mm(2040) },
    ],
  },
});
const window = (yMm: number): { wall: { accessories: Accessory[] } } => ({
  wall: {
    accessories: [
      { kind: 'window', face: 'this', xMm: mm(2000), yMm: mm(yMm), widthMm: mm(900), heightMm: mm(600) },
    ],
  },
});

test.each([
  // Free wall 0 to 1350 and 2250 to 4000: one and two. 950 / 2 = 475; (1750 - 800) / 3 = 316.7.
  ['ends', 4000, 1800, [475, 2566.6667, 3283.3333]],
  // The same with the ends flush: 950 / 1 beside the door, (1750 - 800) / 2 = 475 before each.
  ['flush', 4000, 1800, [0, 2725, 3600]],
  // Free 0 to 800 and 1700 to 4900: one before the door has gaps of 200, three after it (3200 - 1200) / 4 = 500.
  ['ends', 4900, 1250, [2200, 3100, 4000]],
] as const)(
  'a row spread with %s over %d parts at a door at %d (geometry, derived)',
  (spread, wallMm, doorMm, lefts) => {
    const frames = framesOf(groupOf(wallMm, three, { as: 'row', spread }, door(doorMm)));
    for (const [at, left] of lefts.entries()) expect(frames[at]?.leftMm).toBeCloseTo(left, 3);
  },
);

test('that a row was parted is an assumption, with each share and its gap', () => {
  const group = setOutGroup(groupOf(4000, three, { as: 'row', spread: 'ends' }, door(1800)));
  const [taken] = group.ok ? group.assumptions : [];
  expect(taken).toMatchObject({
    field: 'arrange.spread',
    because: expect.stringMatching(
      /part of the door.*1 between 0 mm and 1350 mm with gaps of 475 mm, 2 between 2250 mm and 4000 mm with gaps of 316.7 mm/,
    ),
  });
});

test('a row that misses the window in height is one even run', () => {
  // The window begins at 1900, the frames end at 1450 + 250 = 1700.
  const frames = framesOf(groupOf(4000, three, { as: 'row', spread: 'ends' }, window(2200)));
  expect(frames.map((frame) => frame.leftMm)).toEqual([700, 1800, 2900]);
});

test('a row whose gap happens to hold the door is left as it is', () => {
  // Four gaps of (6000 - 1200) / 4 = 1200: the door stands in the second, from 1750 to 2650.
  const frames = framesOf(groupOf(6000, three, { as: 'row', spread: 'ends' }, door(2200)));
  expect(frames.map((frame) => frame.leftMm)).toEqual([1200, 2800, 4400]);
});

test('a fixed gap is kept: the piece in the way is named, with the least move of all that frees it', () => {
  // The group of 1350 starts at 1825; piece 1 reaches 425 into a door that ends at 2250.
  const misfit = misfitOf(groupOf(5000, three, { as: 'row', gapMm: mm(75) }, door(1800)));
  expect(misfit).toMatchObject({
    id: 'C-FT-6',
    overByMm: 425,
    text: 'Piece 1 would cover part of the door, by 425 mm.',
    clears: expect.stringContaining('Move the whole group at least 425 mm right'),
  });
  const moved = groupOf(
    5000,
    three,
    { as: 'row', gapMm: mm(75) },
    {
      ...door(1800),
      place: { across: { by: 'left-edge', mm: mm(1825 + 425) } },
    },
  );
  expect(framesOf(moved)[0]?.leftMm).toBe(2250);
});

test('a grid with no room beside the door is told that no move clears it', () => {
  const six = Array(6).fill(pictureOf(400, 500));
  const misfit = misfitOf(groupOf(2700, six, { as: 'grid', columns: 3, gapMm: mm(60) }, door(1350)));
  expect(misfit).toMatchObject({
    id: 'C-FT-6',
    clears: expect.stringMatching(/^No move of the whole group/),
  });
});

test('what does not fit beside the door at all says so', () => {
  const misfit = misfitOf(groupOf(1700, three, { as: 'row', spread: 'ends' }, door(850)));
  expect(misfit).toMatchObject({ id: 'C-FT-6', text: expect.stringContaining('not room for all of them') });
});
