import { expect, test } from 'vitest';
import { kg, mm, newtons, settled, sum, toTenth, weightOf } from '../../core/quantity.ts';

test('ten kilograms weigh 98.0665 newtons by the definition of standard gravity (3rd CGPM 1901)', () => {
  expect(weightOf(kg(10))).toBeCloseTo(98.0665, 9);
});

test('lengths add up and round to a tenth once', () => {
  expect(toTenth(sum(mm(0.04), mm(0.04), mm(0.04)))).toBe(0.1);
});

test('the compiler keeps millimetres and newtons apart', () => {
  // @ts-expect-error a length and a force have no sum
  sum(mm(1), newtons(1));
  // @ts-expect-error a bare number is not a length
  sum(mm(1), 1);
  expect(sum(mm(1), mm(2))).toBe(3);
});

// In a computer 0.1 + 0.2 is 0.30000000000000004, and 1726.9 + 73 is a hair under 1799.9.
test('a sum of decimals that stands on a line is on it', () => {
  expect(settled(sum(mm(0.1), mm(0.2)))).toBe(0.3);
  expect(settled(mm(1799.9 - 73 - 1726.9))).toBe(0);
  expect(settled(mm(Number.NEGATIVE_INFINITY))).toBe(Number.NEGATIVE_INFINITY);
});
