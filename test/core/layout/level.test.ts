import { expect, test } from 'vitest';
import { spanAgrees } from '../../../core/layout/cross-checks.ts';
import { heightOfTilt, tiltOf, tiltSeen } from '../../../core/layout/level.ts';
import { markName } from '../../../core/layout/mark-names.ts';
import { degrees, mm } from '../../../core/quantity.ts';

test.each([
  [0.19, 'level'],
  [0.2, 'may-be-noticed'],
  [-0.59, 'may-be-noticed'],
  [0.6, 'crooked'],
  [-0.6, 'crooked'],
] as const)(
  'a tilt of %s degrees is %s (0.6 seen: Vision Res. 1990, read; 0.2 aimed for: our choice)',
  (tilt, seen) => {
    expect(tiltSeen(degrees(tilt))).toBe(seen);
  },
);

// Layout notes, derived: 2 over 400 = 0.286 degrees; 0.2 degrees over 600 = 2.1 mm.
test('2 mm over 400 is 0.286 degrees, right side high positive', () => {
  expect(tiltOf(mm(2), mm(400))).toBeCloseTo(0.2865, 4);
  expect(tiltOf(mm(-2), mm(400))).toBeCloseTo(-0.2865, 4);
});

test('the height of a tilt and the tilt of a height undo each other', () => {
  expect(tiltOf(heightOfTilt(degrees(0.37), mm(735)), mm(735))).toBeCloseTo(0.37, 9);
});

test.each([
  [652, true, 2],
  [648, true, -2],
  [652.5, false, 2.5],
])('a span of 650 measured as %s agrees: %s', (measured, agrees, offByMm) => {
  expect(spanAgrees(mm(measured), mm(650))).toEqual({ agrees, offByMm });
});

test.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [27, 'AB'],
  [52, 'BA'],
])('mark %s from the left is called %s', (nth, name) => {
  expect(markName(nth)).toBe(name);
});
