import { expect, it, test } from 'vitest';
import { mm } from '../../core/quantity.ts';
import { fromBothEnds, rounded } from '../../core/tenth.ts';

test('lengths and forces leave to a tenth, other numbers as they are', () => {
  const raw = { upMm: 1020.04, shearN: 117.678, massKg: 24.04, count: 2, marks: [{ fromLeftMm: 1 / 3 }] };
  expect(rounded(raw)).toEqual({
    upMm: 1020,
    shearN: 117.7,
    massKg: 24.04,
    count: 2,
    marks: [{ fromLeftMm: 0.3 }],
  });
});

test('utilisation and tilt leave to a hundredth, and a negative zero is a zero', () => {
  expect(rounded({ utilisation: 0.92637, tiltDeg: -0.00001 })).toEqual({ utilisation: 0.93, tiltDeg: 0 });
});

test('rounding keeps nulls, words and empty lists', () => {
  expect(rounded({ frame: null, text: '1.26', marks: [] })).toEqual({ frame: null, text: '1.26', marks: [] });
});

// 574.05 and 1449.85 both round up by themselves, to 574.1 and 1449.9: a tenth more than the wall of 2023.9.
it.each([
  [574.05, 1449.85, 574.1, 1449.8],
  [1184.45, 1184.45, 1184.5, 1184.4],
  [1057.75, 1049.25, 1057.8, 1049.2],
  [1025, 1675, 1025, 1675],
  [333.3333, 666.6667, 333.3, 666.7],
])(
  'a mark %d from the left and %d from the right is told as %d and %d, which make up the wall',
  (fromLeft, fromRight, left, right) => {
    const told = fromBothEnds({ id: 'A', fromLeftMm: mm(fromLeft), fromRightMm: mm(fromRight) });
    expect([told.fromLeftMm, told.fromRightMm]).toEqual([left, right]);
  },
);

// Under a ceiling at 2400: 1845.05 up is 554.95 down, and 1845.1 up leaves 554.9.
test('a mark told up from the floor and down from the ceiling makes up the height', () => {
  const told = fromBothEnds({
    id: 'A',
    fromLeftMm: mm(1),
    fromRightMm: mm(2),
    upMm: mm(1845.05),
    downMm: mm(554.95),
  });
  expect([told.upMm, told.downMm]).toEqual([1845.1, 554.9]);
});
