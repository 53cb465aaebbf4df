import { expect, test } from 'vitest';
import { kg } from '../../../../core/quantity.ts';
import { hear } from '../as-said.ts';
import { at, jobOf } from '../score.ts';

/** Invented by us. Pounds and an American place speak inches; a metric country is not overruled. Exact: 25.4 mm. */
test.each([
  ['24x36 framed print, 20 lbs, Texas', undefined, 24 * 25.4],
  ['mirror 900x1200, 45 lbs', undefined, 900],
  ['mirror 30x40, 20 lbs', 'AU', undefined],
] as const)('"%s" where the country known is %s: the width is %s', (say, country, want) => {
  const known = { piece: { massKg: kg(9) }, ...(country && { building: { country } }) };
  const width = at(jobOf(hear(say, null, { known })), 'piece.widthMm');
  if (want === undefined) expect(width).toBeUndefined();
  else expect(width).toBeCloseTo(want, 3);
});

test('bare inches in a metric country are confirmed before the plan', () => {
  const reading = hear('24x36', 'piece.size', { known: { building: { country: 'AU' } }, unit: 'in' });
  expect(reading.facts.map(({ inferred }) => inferred)).toEqual([true]);
});

test('"90x120" is offered in centimetres and inches, never as a stamp of 90 by 120 mm', () => {
  const labels = hear('90x120', 'piece.size').asks[0]?.readings.map(({ label }) => label) ?? [];
  expect(labels.length).toBe(2);
  expect(labels.some((label) => label.startsWith('90 mm'))).toBe(false);
});
