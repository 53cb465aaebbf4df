import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import { knownCourses, placeInCourse, shiftOffJoints } from '../../../core/wall/courses.ts';
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

test('coursing without a first bed joint, or behind board, says nothing', () => {
  expect(knownCourses({ baseMaterial: 'clay-brick', courses: { gaugeMm: mm(86) } })).toBeNull();
  expect(knownCourses({ baseMaterial: 'plasterboard-on-dabs', courses })).toBeNull();
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
