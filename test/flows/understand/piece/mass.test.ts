import { describe, expect, it } from 'vitest';
import type { DisplayUnit } from '../../../../flows/reading.ts';
import { hear, outcome } from '../hear.ts';

/** Exact by definition (international yard and pound, 1959). */
const LB = 0.45359237;

type Row = [say: string, kg: number | 'ask' | 'refused' | null, unit?: DisplayUnit];

/** Invented sayings, in the manner of sayings.json; the expected figure is what the words say. */
const ASKED: Row[] = [
  // plain figures
  ['24', 24],
  ['24kg', 24],
  ['24 kgs', 24],
  ['24KG', 24],
  ['24 kilos', 24],
  ['24 kilogrammes', 24],
  ['24.5', 24.5],
  ['24,5kg', 24.5],
  ['24.50 kg', 24.5],
  ['.9 kg', 0.9],
  ['9500 g', 9.5],
  ['9500 grams', 9.5],
  ['２４ｋｇ', 24],
  ['7 1/2 kg', 7.5],
  ['7½ kilos', 7.5],
  ['7 and a half kilo', 7.5],
  ['it weighs 31', 31],
  ['weighs in at 31 kilos', 31],
  ['its 18.2 on the scales', 18.2],
  ['m=17.3kg', 17.3],
  ['mass 17.3 kg', 17.3],
  ['17.3 kg incl glass', 17.3],
  ['prob 20', 20],
  ['around 20 kg', 20],
  ['20ish', 20],
  ['20 kg give or take', 20],
  ['circa 20kg', 20],
  ['~20 kg', 20],
  ['20kg approx.', 20],
  ['bout 20 mate', 20],
  ['roughly 20 kilo i reckon', 20],
  ['20 kg max', 20],
  ['20 at most', 20],
  ['no more than 20 kg', 20],
  ['not over 20 kg', 20],
  ['under 20 kilos', 20],
  ['less than 20', 20],
  ['just under 20', 20],
  ['up to 20 kg', 20],
  // number words
  ['twenty four kilos', 24],
  ['twenty-four', 24],
  ['fourty kilos', 40],
  ['a hundred kilos', 100],
  ['twelve and a half', 12.5],
  ['seven point five kilos', 7.5],
  ['a kilo and a half', 1.5],
  ['kilo 20', 20],
  ['half a kilo', 0.5],
  ['three quarters of a kilo', 0.75],
  ['ninteen kilos', 19],
  ['thirty one', 31],
  // pounds, ounces, stone
  ['53 lb', 53 * LB],
  ['53lbs', 53 * LB],
  ['53#', 53 * LB],
  ['53 pounds', 53 * LB],
  ['18 lbs 6 oz', (18 + 6 / 16) * LB],
  ['18lb6oz', (18 + 6 / 16) * LB],
  ['18 pounds and 6 ounces', (18 + 6 / 16) * LB],
  ['18 1/2 lb', 18.5 * LB],
  ['12 oz', (12 / 16) * LB],
  ['2 stone', 28 * LB],
  ['2st 4lb', 32 * LB],
  ['2 stone 4 pounds', 32 * LB],
  ['two and a half stone', 35 * LB],
  ['three stone ten', 52 * LB],
  ['45', 45 * LB, 'in'],
  ['forty five', 45 * LB, 'in'],
  ['20 kg', 20, 'in'],
  ['45 lb', 45 * LB, 'in'],
  ['twenty lbs', 20 * LB],
  ['a pound and a half', 1.5 * LB],
  // ranges, tolerances: the heavier end
  ['15 to 18', 18],
  ['15-18', 18],
  ['15 – 18 kg', 18],
  ['between 15 and 18 kilos', 18],
  ['15 or 18 kg', 18],
  ['15, maybe 18', 18],
  ['15kg to 18kg', 18],
  ['15/18 kg', 18],
  ['somewhere from 15 to 18 kilos', 18],
  ['15 +/- 1 kg', 16],
  ['15 ± 1', 16],
  ['15 plus or minus 1', 16],
  ['30 to 40 lbs', 40 * LB],
  ['15 give or take 2', 17],
  // corrections
  ['18 no 19', 19],
  ['18 sorry 19 kg', 19],
  ['18kg no wait 19', 19],
  ['18 lb no 19', 19 * LB],
  ['18.. i mean 19 kg', 19],
  ['18 scratch that 19', 19],
  ['19 not 18', 19],
  ['not 18, 19', 19],
  ['19 kg rather than 18', 19],
  ['about 30, call it 35', 35],
  ['no, 19', 19],
  ['oops 19', 19],
  // sums, totals, scales
  ['12 kg frame plus 8 kg glass', 20],
  ['12kg + 8kg', 20],
  ['12kg + 8kg = 20kg', 20],
  ['12 kg and the glass 8 kg, 20 kg total', 20],
  ['12 kg frame, 8 kg glass, 21 kg total', 'ask'],
  ['scale says 104 with me holding it and 80 without', 24],
  ['me 80 kg, me plus mirror 104 kg', 24],
  ['104 minus 80', 24],
  ['104 kg less 80 kg', 24],
  ['i weigh 80, holding it 104.5', 24.5],
  ['24 kg (53 lb)', 24],
  ['53 lb / 24 kg', 53 * LB],
  ['glass is 18 kilos, frame another 6', 24],
  ['i think 25kg but might be 30', 30],
  ['im 182 pounds and with it im 231', 49 * LB],
  ['231 lb with it and 182 lb without it', 49 * LB],
  ['24 kg +/- 10%', 26.4],
  ['24 kg plus 10 percent', 26.4],
  ['14 kg each', 14],
  ['there are two of them, 14 kg each', 14],
  ['14 kg for the pair', 'ask'],
  ['31 kg with the box', 31],
  ['240 N', 240 / 9.80665],
  // asked back
  ['over 50 kg', 'ask'],
  ['just over 20', 'ask'],
  ['more than 20 kg', 'ask'],
  ['20 kg plus', 'ask'],
  ['20+', 'ask'],
  ['>20 kg', 'ask'],
  ['at least 20', 'ask'],
  ['20 and a bit', 'ask'],
  ['20 odd', 'ask'],
  ['thirty something', 'ask'],
  ['mid 20s', 'ask'],
  ['24kg without the frame', 'ask'],
  ['i think 25kg but might be more like 30 or 35', 'ask'],
  ['24 . 5 kg', 'ask'],
  ['15 kg x 2', 'ask'],
  ['1,250 kg', 'ask'],
  ['200', 'ask'],
  ['2 x 12 kg', 'ask'],
  ['20 kg 30 kg', 'ask'],
  // refused, and nothing
  ['-5', 'refused'],
  ['minus 5 kg', 'refused'],
  ['0 kg', 'refused'],
  ['0.0', 'refused'],
  ['zero', 'refused'],
  ['900 t', 'refused'],
  ['10000 kg', 'refused'],
  ['300 mm', 'refused'],
  ['2 feet', 'refused'],
  ['heavy', 'refused'],
  ['1e5 kg', null],
  ['NaN', null],
  ['Infinity kg', null],
  ['99999999999999999999 kg', null],
  ['dunno', null],
  ['a big one', null],
  ['24/12/2024', null],
  ['50%', null],
  ['1.2.3', null],
  ['', null],
];

/** While another question is open, only what is plainly a mass counts. */
const IN_PASSING: Row[] = [
  ['24 kg mirror', 24],
  ['a mirror of about 24 kilos on brick', 24],
  ['mirror weighs 24, brick wall', 24],
  ['weight 24', 24],
  ['built in 1968, 24 kg mirror', 24],
  ['on a 12 foot wall, 24 kg', 24],
  ['size 500, 24 kg', 24],
  ['15-18 kg mirror', 18],
  ['900 x 1200, 24kg', 24],
  ['mirror 600x900 12 kg on brick', 12],
  ['picture 24 by 36 20 lb', 20 * LB],
  ['2 12 kg mirrors', 'ask'],
  ['3400', null],
  ['900 x 1200', null],
  ['two rings 95 in 240 down', null],
  ['the wall is 3.4 m', null],
  ['stone wall', null],
  ['2 stone walls', null],
  ['built 1968', null],
  ['two of us', null],
  ['bottom 140 above the mantel', null],
  ['14 gauge screws', null],
  ['53 lb picture', 53 * LB],
  ['switch 1250 from the left, 1100 up', null],
];

function check(got: ReturnType<typeof outcome>, kg: Row[1]): void {
  if (typeof kg !== 'number') expect(got).toBe(kg);
  else expect((got as Record<string, number>)['piece.massKg']).toBeCloseTo(kg, 9);
}

describe('a mass', () => {
  it.each(ASKED)('"%s" weighs %s when the mass is asked', (say, kg, unit) => {
    check(outcome(hear('piece.massKg', say, unit === undefined ? {} : { unit })), kg);
  });

  it.each(IN_PASSING)('"%s" says %s in passing', (say, kg) => {
    check(outcome(hear('piece.massKg', say, {}, 'piece.kind')), kg);
  });

  it.each([
    ['make it 28', 28],
    ['should be 28', 28],
    ['no, 28', 28],
    ['28 not 82', 28],
    ['900', null],
    ['900 x 1200', null],
    ['28 wide', null],
  ] satisfies Row[])('"%s" right after the mass, with the size open, makes it %s', (say, kg) => {
    check(outcome(hear('piece.massKg', say, { lastAnswered: 'piece.massKg' }, 'piece.size')), kg);
  });

  it('is to be confirmed when it was worked out or spelt in words', () => {
    const inferred = ['15-18 kg', 'twenty kilos', '104 minus 80'].map((say) => {
      const heard = hear('piece.massKg', say);
      return heard?.kind === 'facts' && heard.facts[0]?.inferred;
    });
    expect(inferred).toEqual([true, true, true]);
    const plain = hear('piece.massKg', '24 kg');
    expect(plain?.kind === 'facts' && plain.facts[0]?.inferred).toBe(undefined);
  });

  it('says what was expected and how to say it when refused', () => {
    const heard = hear('piece.massKg', '1200mm');
    expect(heard).toMatchObject({ kind: 'refused', refusal: { question: 'piece.massKg', example: '24 kg' } });
  });
});
