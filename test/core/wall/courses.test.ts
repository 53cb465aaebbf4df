import { expect, test } from 'vitest';
import type { Country } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import { driftAt, joints, placeInCourse, shiftOffJoints } from '../../../core/wall/courses.ts';
import { formatOf } from '../../../core/wall/formats.ts';
import type { BaseMaterial, Wall } from '../../../core/wall/wall.ts';
import { jobOf } from '../layout/a-job.ts';

// Gauge 86, joint 10, first bed joint from the floor: joints at 0-10, 86-96, 172-182 ...; clear from 25 to 71 in each course.
const courses = { gaugeMm: mm(86), firstBedMm: mm(0), jointMm: mm(10) };

test.each([
  ['in the middle of the 18th brick, 17 x 86 + 10 + 38', 1510, 'clear', 18, 0],
  ['in the joint under it, 17 x 86 + 5: 20 up to clear it', 1467, 'bed-joint', 18, 20],
  ['10 above that joint: 5 up', 1482, 'near-joint', 18, 5],
  ['8 below the next joint, 18 x 86 - 8: 7 down', 1540, 'near-joint', 18, -7],
])('a height %s (trade: 15 from a joint edge, common practice)', (_, height, where, joint, moveMm) => {
  expect(placeInCourse(mm(height), courses)).toEqual({ where, joint, moveMm });
});

test('in courses too thin to keep 15 from both joints the middle of the unit is the place', () => {
  expect(placeInCourse(mm(20), { gaugeMm: mm(40), firstBedMm: mm(0), jointMm: mm(10) })).toMatchObject({
    moveMm: 5,
  });
});

// Clear offsets above a joint are 25 to 71. An offset of 5 clears with 20 to 66 up or 20 to 66 down.
test.each<[string, number[], number | null]>([
  ['of one height in a joint go 20 up, the way a tie goes', [1467, 1467], 20],
  ['in a joint and 26 above its lower edge: 20 up keeps both', [1467, 1488], 20],
  ['60 apart: the upper one clears from 40 down to 6 up, so both go 20 down', [1467, 1527], -20],
  ['in units already stay', [1510, 1596], 0],
])('marks %s', (_, heights, shift) => {
  expect(shiftOffJoints(heights.map(mm), courses)).toBe(shift);
});

test('marks half a course apart in thin courses can’t all be clear', () => {
  expect(
    shiftOffJoints([mm(20), mm(40)], { gaugeMm: mm(40), firstBedMm: mm(0), jointMm: mm(10) }),
  ).toBeNull();
});

test.each<[string, Partial<Wall>]>([
  ['without a bed joint', { courses: { gaugeMm: mm(86) } }],
  ['with a joint as thick as its gauge', { courses: { ...courses, jointMm: mm(86) } }],
  ['behind board', { baseMaterial: 'plasterboard-on-dabs', courses }],
  ['of a format nobody told, in no country', { courses: { firstBedMm: mm(0) } }],
])('coursing %s says nothing', (_, wall) => {
  const layout = setOut(jobOf({ wall }));
  expect(layout.ok && layout.marks.some((mark) => 'on' in mark)).toBe(false);
});

test('a mark in a joint by the coursing is told, with how far to move and to feel for it', () => {
  // Marks 1680 up: 1680 - 19 x 86 = 46 is clear; with the first bed at 40, 1640 - 19 x 86 = 6 is in the joint.
  const layout = setOut(jobOf({ wall: { courses: { gaugeMm: mm(86), firstBedMm: mm(40) } } }));
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.marks.map((mark) => mark.on)).toEqual(
    Array(2).fill('in a bed joint by the coursing: feel for it'),
  );
  expect(layout.advice.join(' ')).toContain(
    'Moving the piece 19 mm up keeps every mark clear. Coursing drifts',
  );
});

test('a mark in a unit by the coursing is still to be felt for', () => {
  const layout = setOut(jobOf({ wall: { courses } }));
  expect(layout.ok && layout.advice.join(' ')).toContain('it never says where to drill');
});

test('over a mantel of unknown height the coursing, counted from the floor, says nothing', () => {
  const layout = setOut(jobOf({ wall: { courses, datum: { kind: 'mantel' } } }));
  expect(layout.ok && layout.marks.some((mark) => 'on' in mark)).toBe(false);
});

// fixing 8: AU 86 and 240 (read), UK 75 and 225 (read), US 3 in 8 in (read); blocks from memory.
test.each<[Country, BaseMaterial, number, number]>([
  ['AU', 'clay-brick', 86, 240],
  ['NZ', 'clay-brick', 86, 240],
  ['UK', 'clay-brick', 75, 225],
  ['US', 'clay-brick', 203.2 / 3, 203.2],
  ['AU', 'concrete-block', 200, 400],
  ['UK', 'concrete-block', 225, 450],
  ['US', 'concrete-block', 203.2, 406.4],
])(
  'in %s a course of %s is %s high and its unit %s long (fixing 8: bricks read, blocks from memory)',
  (country, base, gauge, length) => {
    const format = formatOf(base, country);
    expect(format?.gaugeMm).toBeCloseTo(gauge, 9);
    expect(format?.lengthMm).toBeCloseTo(length, 9);
  },
);

test.each<[Country, BaseMaterial]>([
  ['EU', 'clay-brick'],
  ['AU', 'aerated-concrete'],
  ['UK', 'natural-stone'],
])('in %s the country does not tell the format of %s', (country, base) => {
  expect(formatOf(base, country)).toBeNull();
});

/** Marks of the plain job are 1680 up, at 1025 and 1675 across. */
const of = (country: Country, wall: Partial<Wall>) => {
  const layout = setOut({ ...jobOf({ wall }), building: { country } });
  if (!layout.ok) throw new Error(layout.text);
  return { on: layout.marks.map((mark) => mark.on), advice: layout.advice.join(' ') };
};

test('a bed joint measured near the marks and the country’s format tell the clash: 1680 - 1590 - 86 = 4 into the next joint', () => {
  const told = of('AU', { courses: { firstBedMm: mm(1590) } });
  expect(told.on).toEqual(Array(2).fill('in a bed joint by the coursing: feel for it'));
  // Clear from 25 above its lower edge: 21 up; down to 86 - 15 = 71 of the course below is 19.
  expect(told.advice).toContain('Moving the piece 19 mm down keeps every mark clear.');
});

// AS/NZS 4455.1 DW1 (read): 20 units within 50, so 2.5 each; 15 is the clearance. 6 courses of 86 are 516, 7 are 602.
test.each([
  [1680 - 516, true],
  [1680 - 602, false],
])(
  'by the format a joint measured at %s tells of a mark 1680 up: %s (2.5 a unit, read)',
  (firstBed, tells) => {
    const told = of('AU', { courses: { firstBedMm: mm(firstBed) } });
    expect(told.on[0] !== undefined).toBe(tells);
    expect(
      told.advice.includes('7 units from A, where the coursing may be 17.5 mm out by the usual size'),
    ).toBe(!tells);
  },
);

test('a gauge that was measured tells for thirty courses: 30 x 0.5 = 15 (our choice)', () => {
  const known = joints(mm(86), mm(0));
  expect(known && driftAt(mm(30 * 86), known, 'measured').tells).toBe(true);
  expect(known && driftAt(mm(31 * 86), known, 'measured').tells).toBe(false);
});

test('in Germany two heights of brick are usual, so four courses are measured first (DIN 105, from memory)', () => {
  const told = of('EU', { courses: { firstBedMm: mm(1600) } });
  expect(told.on[0]).toBeUndefined();
  expect(told.advice).toContain('Bricks here may course at 83.3 mm or 62.5 mm: measure four courses');
});

// Perpends at 1020, 1260, 1500 ...: A at 1025 is 5 into one, B at 1675 is 175 into its brick.
test('a perpend measured in the marks’ course tells which mark falls in it, and how far to go sideways', () => {
  const told = of('AU', { courses: { perpendMm: mm(1020) } });
  expect(told.on).toEqual(['in a perpend by the coursing: feel for it', undefined]);
  expect(told.advice).toContain(
    'A falls in or close to a perpend. Moving the piece 20 mm to the right keeps every mark clear.',
  );
});

test('a mark clear of the beds and in a perpend is in the perpend', () => {
  // Bed at 1634 - 10: 1680 is 56 into its course of 86.
  const told = of('AU', { courses: { firstBedMm: mm(1624), perpendMm: mm(1020) } });
  expect(told.on).toEqual([
    'in a perpend by the coursing: feel for it',
    'a unit by the coursing: feel for it',
  ]);
});

test('a mark in another course stands in another bond, so its perpends are not told', () => {
  const hanging = {
    by: 'rings',
    points: [
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromRightMm: mm(95), fromTopMm: mm(300) },
    ],
  } as const;
  const wall = { courses: { perpendMm: mm(1670) } };
  const layout = setOut({
    ...jobOf({ wall, piece: { hanging: { ...hanging, points: [...hanging.points] } } }),
    building: { country: 'AU' },
  });
  expect(layout.ok && layout.marks.map((mark) => mark.on)).toEqual([undefined, undefined]);
});
