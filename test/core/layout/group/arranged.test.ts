import { expect, test } from 'vitest';
import type { Arrange } from '../../../../core/group-job.ts';
import type { Place } from '../../../../core/job.ts';
import { setOutGroup } from '../../../../core/layout/group/group-set-out.ts';
import { mm } from '../../../../core/quantity.ts';
import { framesOf, groupOf, misfitOf, pictureOf } from './a-group.ts';

/** A low one, a tall one with its rings far down, and a middling one. */
const uneven = [pictureOf(500, 400, 60), pictureOf(700, 900, 120), pictureOf(500, 600, 60)];

test.each([
  // Middles at 1450.
  ['centre', [1250, 1000, 1150]],
  // The row is 900 high about 1450: tops at 1900, bottoms at 1000.
  ['top', [1500, 1000, 1300]],
  ['bottom', [1000, 1000, 1000]],
  // Rings level: 120 above them at most, 780 below: the row from 1000 to 1900, rings at 1780.
  ['hangers', [1440, 1000, 1240]],
] as const)('a row aligned by %s has its bottoms at %j (geometry, derived)', (align, bottoms) => {
  const frames = framesOf(groupOf(4000, uneven, { as: 'row', gapMm: mm(75), align }));
  expect(frames.map((frame) => frame.bottomMm)).toEqual(bottoms);
});

const two = [pictureOf(400, 500), pictureOf(600, 500)];

test.each<[string, Partial<Place>, Arrange, number[][]]>([
  // 1075 high and 600 wide from 300 and 900: the narrow one 100 in.
  [
    'a column from a left edge and a bottom',
    { across: { by: 'left-edge', mm: mm(300) }, up: { by: 'bottom-above', mm: mm(900) } },
    { as: 'column', gapMm: mm(75) },
    [
      [400, 1475],
      [300, 900],
    ],
  ],
  [
    'a column under the ceiling',
    { up: { by: 'below-ceiling', mm: mm(300) } },
    { as: 'column', gapMm: mm(75) },
    // Top at 2400 of 2700.
    [
      [1800, 1900],
      [1700, 1325],
    ],
  ],
  // From 900 to the ceiling at 2700 are 1800: three gaps of 800 / 3.
  [
    'a column spread from a bottom to the ceiling',
    { up: { by: 'bottom-above', mm: mm(900) } },
    { as: 'column', spread: 'ends' },
    [
      [1800, 2700 - 800 / 3 - 500],
      [1700, 900 + 800 / 3],
    ],
  ],
  [
    'a row spread between two lines, ends flush',
    { across: { by: 'between', fromMm: mm(3500), toMm: mm(1000) } },
    { as: 'row', spread: 'flush' },
    [
      [1000, 1200],
      [2900, 1200],
    ],
  ],
  [
    'a row with one gap to a right edge',
    { across: { by: 'right-edge', mm: mm(200) } },
    { as: 'row', gapMm: mm(50) },
    [
      [2750, 1200],
      [3200, 1200],
    ],
  ],
  [
    'a row spread about a centre nearer the right end',
    { across: { by: 'centre-at', mm: mm(3200) } },
    { as: 'row', spread: 'flush' },
    // 800 either side of 3200.
    [
      [2400, 1200],
      [3400, 1200],
    ],
  ],
])('%s stands where its arithmetic has it (geometry, derived)', (_, place, arrange, places) => {
  const frames = framesOf(groupOf(4000, two, arrange, { place }));
  for (const [at, [left = 0, bottom = 0]] of places.entries()) {
    expect(frames[at]?.leftMm).toBeCloseTo(left, 6);
    expect(frames[at]?.bottomMm).toBeCloseTo(bottom, 6);
  }
});

test('a grid has columns and rows by the largest, its gaps as said, and a short last row under the first', () => {
  const five = [
    pictureOf(300, 400),
    pictureOf(500, 300),
    pictureOf(400, 400),
    pictureOf(400, 500),
    pictureOf(300, 300),
  ];
  const arrange: Arrange = { as: 'grid', columns: 2, gapMm: mm(50), rowGapMm: mm(80) };
  const frames = framesOf(groupOf(4000, five, arrange));
  // Columns 400 and 500 with 50: 950, from 1525 and 1975. Rows 400, 500, 300 with 80: 1360 about 1450, from 770.
  const middles = frames.map((each) => [(each.leftMm + each.rightMm) / 2, (each.bottomMm + each.topMm) / 2]);
  expect(middles).toEqual([
    [1725, 1930],
    [2225, 1930],
    [1725, 1400],
    [2225, 1400],
    [1725, 920],
  ]);
  const group = setOutGroup(groupOf(4000, five, arrange));
  expect(group.ok && group.advice.join(' ')).toContain('The last row has 1 of 2');
});

test('one piece with its ends flush stands in the middle, and that is said (safety and layout 12, derived)', () => {
  const group = setOutGroup(groupOf(4000, [pictureOf(400, 500)], { as: 'row', spread: 'flush' }));
  expect(group.ok && group.pieces[0]?.layout.frame.leftMm).toBe(1800);
  expect(group.ok && group.advice.join(' ')).toContain('One piece has no gap to share out');
});

test('on a floor that runs out, all heights are level with mark 1A, and a tape elsewhere reads less', () => {
  const wall = { datum: { kind: 'floor' as const, fallMm: mm(20) } };
  const group = setOutGroup(
    groupOf(3000, Array(3).fill(pictureOf(400, 500)), { as: 'row', spread: 'ends' }, { wall }),
  );
  const marks = group.ok ? group.pieces.flatMap(({ layout }) => layout.marks) : [];
  expect(marks.map((mark) => mark.upMm)).toEqual(Array(6).fill(1640));
  // 1A at 500: the floor under 3B, at 2500, is 20 x 2000 / 3000 higher.
  expect(marks[0]?.upHereMm).toBe(1640);
  expect(marks[5]?.upHereMm).toBeCloseTo(1640 - 40 / 3, 6);
});

test.each<[string, number, Partial<Place>, Arrange, string, number]>([
  ['three of 600 with 75 between on 1900', 1900, {}, { as: 'row', gapMm: mm(75) }, 'C-FT-1', 50],
  [
    'a row past the right end',
    4000,
    { across: { by: 'left-edge', mm: mm(2100) } },
    { as: 'row', gapMm: mm(75) },
    'C-FT-2',
    50,
  ],
  [
    'a row wider than the space',
    4000,
    { across: { by: 'between', fromMm: mm(1000), toMm: mm(2900) } },
    { as: 'row', gapMm: mm(75) },
    'C-FT-3',
    50,
  ],
  [
    'a column through the ceiling',
    4000,
    { up: { by: 'bottom-above', mm: mm(900) } },
    { as: 'column', gapMm: mm(200) },
    'C-FT-4',
    400,
  ],
  [
    'a column into the floor',
    4000,
    { up: { by: 'centre-at', mm: mm(900) } },
    { as: 'column', gapMm: mm(200) },
    'C-FT-5',
    200,
  ],
  [
    'a spread over too little',
    4000,
    { across: { by: 'right-edge', mm: mm(2300) } },
    { as: 'row', spread: 'ends' },
    'C-FT-11',
    100,
  ],
])('%s does not fit, and by how much is said (geometry, derived)', (_, wallMm, place, arrange, id, over) => {
  // Three of 600 x 600: 1800 together, 1950 with gaps of 75, 2200 with gaps of 200.
  const job = groupOf(wallMm, Array(3).fill(pictureOf(600, 600)), arrange, { place });
  const misfit = misfitOf(job);
  expect(misfit?.id).toBe(id);
  expect(misfit?.overByMm).toBeCloseTo(over, 6);
  expect(misfit?.text).toContain(`${over} mm`);
});

test('a column is not spread to a ceiling whose height nobody measured', () => {
  const { wall, ...rest } = groupOf(
    4000,
    two,
    { as: 'column', spread: 'ends' },
    { place: { up: { by: 'bottom-above', mm: mm(900) } } },
  );
  const { heightMm: _, ...unmeasured } = wall;
  expect(misfitOf({ ...rest, wall: unmeasured })).toMatchObject({ id: 'C-FT-9' });
});
