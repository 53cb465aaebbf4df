import { expect, test } from 'vitest';
import { mm } from '../../../core/quantity.ts';
import { length } from '../../../flows/wording/length.ts';
import { tapeChecks } from '../../../src/chat/browser/marks.js';
import { tapeIn } from '../../../src/chat/browser/tape.js';

// 1025 / 25.4 = 40.354 in, and 0.354 x 16 = 5.7, so 6/16; 650 / 25.4 = 25.59, 9.4, so 9/16; 4.7625 = 3/16 in exactly
test.each([
  [1025, '1025', '102.5', '1.025', '40-3/8'],
  [650, '650', '65', '0.65', '25-9/16'],
  [25.4, '25.4', '2.5', '0.025', '1'],
  [4.7625, '4.8', '0.5', '0.005', '3/16'],
  [0, '0', '0', '0', '0'],
])('a tape reads %d mm as the person measures, and as the conversation words it', (value, ...read) => {
  const units = ['mm', 'cm', 'm', 'in'] as const;
  expect(units.map((unit) => tapeIn(unit)(value))).toEqual(read);
  expect(units.map((unit) => length(mm(value), unit))).toEqual(
    read.map((figure, at) => `${figure} ${units[at]}`),
  );
});

test('the page and the conversation never differ by a sixteenth', () => {
  for (let tenths = 0; tenths <= 40_000; tenths += 7)
    expect(`${tapeIn('in')(tenths / 10)} in`).toBe(length(mm(tenths / 10), 'in'));
});

test('a check and how far it may be off are read off one tape', () => {
  const checks = [{ text: 'A to B', expectMm: mm(457.2), toleranceMm: mm(2) }];
  const said = (unit: 'mm' | 'in') => tapeChecks({ crossChecks: checks } as never, unit);
  expect(said('mm')).toEqual(['A to B: 457.2 mm, within 2 mm']);
  // 457.2 / 25.4 = 18; 2 mm is 1.26 sixteenths.
  expect(said('in')).toEqual(['A to B: 18 in, within 1/16 in']);
});
