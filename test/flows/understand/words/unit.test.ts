import { convert } from 'convert';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthsIn } from '../../../../flows/understand/lengths/length.ts';
import { massesIn } from '../../../../flows/understand/piece/mass.ts';
import { tokens } from '../../../../flows/understand/words/token.ts';
import { KG_IN } from '../../../../flows/understand/words/unit.ts';

const length = (say: string) => lengthsIn(tokens(say), { unit: 'mm' })[0]?.valueMm ?? Number.NaN;
const sixteenths = fc.integer({ min: 1, max: 15 });
const feet = fc.integer({ min: 1, max: 60 });
const inches = fc.integer({ min: 0, max: 11 });
/** The package works in floating point. */
const DIGITS = 8;

describe('units against the package "convert"', () => {
  it('agree on feet, inches and sixteenths in every spelling', () => {
    fc.assert(
      fc.property(feet, inches, sixteenths, (ft, inch, part) => {
        const exact = convert(ft, 'feet').to('mm') + convert(inch + part / 16, 'inches').to('mm');
        const whole = convert(ft, 'feet').to('mm') + convert(inch, 'inches').to('mm');
        expect(length(`${ft}' ${inch} ${part}/16"`)).toBeCloseTo(exact, DIGITS);
        expect(length(`${ft} ft ${inch}-${part}/16 in`)).toBeCloseTo(exact, DIGITS);
        expect(length(`${ft}'${inch}"`)).toBeCloseTo(whole, DIGITS);
        expect(length(`${ft} foot ${inch} inches wide`)).toBeCloseTo(whole, DIGITS);
        expect(length(`${ft} feet and ${inch} inches`)).toBeCloseTo(whole, DIGITS);
      }),
      { numRuns: 200 },
    );
  });

  it.each(['mm', 'cm', 'm', 'in', 'ft', 'yd'] as const)('agree on decimals of %s', (unit) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (hundredths) => {
        const figure = hundredths / 100;
        fc.pre(convert(figure, unit).to('mm') >= 1 && convert(figure, unit).to('mm') <= 20_000);
        expect(length(`${figure} ${unit}`)).toBeCloseTo(convert(figure, unit).to('mm'), DIGITS);
      }),
      { numRuns: 100 },
    );
  });

  it.each([
    ['kg', 'kg'],
    ['g', 'g'],
    ['lb', 'lb'],
    ['oz', 'oz'],
    ['stone', 'stone'],
  ] as const)('agree on masses in %s', (said, unit) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (tenths) => {
        const [mass] = massesIn(tokens(`${tenths / 10} ${said}`));
        const inKg = mass?.unit ? mass.value.mul(KG_IN[mass.unit]).valueOf() : Number.NaN;
        expect(inKg).toBeCloseTo(convert(tenths / 10, unit).to('kg'), DIGITS);
      }),
      { numRuns: 100 },
    );
  });
});
