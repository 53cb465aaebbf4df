import { expect, test } from 'vitest';
import { rounded } from '../../core/tenth.ts';

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
