import { expect, test } from 'vitest';
import { kg, mm, newtons, sum, toTenth, weightOf } from '../../core/quantity.ts';

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
