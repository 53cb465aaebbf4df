import { convert } from 'convert';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { feetAndInches, sixteenthsText, toSixteenths } from '../../../core/layout/inch.ts';
import { mm } from '../../../core/quantity.ts';

/** Second opinion: `convert` 8.0.2, a units library. */
const inMm = (inches: number): number => convert(inches, 'inches').to('millimeters');

const hundredths = fc.integer({ min: 0, max: 1_000_000 }).map((each) => each / 100);

test('no length is further than half a sixteenth from its inches, and the error told is the true one', () => {
  fc.assert(
    fc.property(hundredths, (length) => {
      const tape = toSixteenths(mm(length));
      const back = inMm(tape.inches);
      expect(Math.abs(back - length)).toBeLessThanOrEqual(inMm(1 / 32) + 1e-9);
      expect(tape.errorMm).toBeCloseTo(back - length, 9);
    }),
  );
});

test('whole sixteenths come back as they are', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 4000 }), (parts) => {
      expect(toSixteenths(mm(inMm(parts / 16))).sixteenths).toBe(parts);
    }),
  );
});

test('the words, read back by hand, are the inches', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 4000 }), (parts) => {
      const text = sixteenthsText(parts);
      const [whole, fraction] = text.includes('/') && !text.includes('-') ? ['0', text] : text.split('-');
      const [top = 0, bottom = 1] = (fraction ?? '0/1').split('/').map(Number);
      expect(Number(whole) + top / bottom).toBe(parts / 16);
      if (fraction) expect([2, 4, 8, 16]).toContain(bottom);
      if (fraction) expect(top % 2).toBe(1);
    }),
  );
});

// From the set-out notes, derived: 1450 = 57-1/16, 2030 = 79-15/16, 735 = 28-15/16.
test.each([
  [2030, '79-15/16'],
  [735, '28-15/16'],
  [25.4, '1'],
  [12.7, '1/2'],
  [0, '0'],
  [-12.7, '-1/2'],
  // Half a sixteenth is 0.79375 mm and goes up; a hair less goes down.
  [0.79375, '1/16'],
  [0.79374, '0'],
])('%s mm is %s in on a tape', (length, text) => {
  expect(toSixteenths(mm(length)).text).toBe(text);
});

test('feet and inches are what the units library says', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 191 }), (feet, parts) => {
      const expected = convert(feet, 'feet').to('millimeters') + inMm(parts / 16);
      expect(feetAndInches(feet, parts / 16)).toBeCloseTo(expected, 9);
    }),
  );
});
