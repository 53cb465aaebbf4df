import { describe, expect, it } from 'vitest';
import type { QuestionName } from '../../../../flows/question.ts';
import type { DisplayUnit } from '../../../../flows/reading.ts';
import { hear, outcome } from '../hear.ts';

/** Exact by definition (international yard and pound, 1959). */
const IN = 25.4;
const FT = 304.8;

type Expected = number | 'ask' | 'refused' | null;
type Row = [say: string, mm: Expected, unit?: DisplayUnit];

/** Invented sayings, in the manner of sayings.json; the expected figure is what the words say. */
const WALL_WIDTH: Row[] = [
  ['2700', 2700],
  ['2700mm', 2700],
  ['2700 mil', 2700],
  ['2700 mill', 2700],
  ['2700mim', 2700],
  ['2700 millimeters', 2700],
  ['2,700', 2700],
  ['2.700 mm', 2700],
  ['2 700 mm', 2700],
  ['270cm', 2700],
  ['270 cms', 2700],
  ['270,5 cm', 2705],
  ['2.7', 2700],
  ['2,7', 2700],
  ['2,70 m', 2700],
  ['2.7m', 2700],
  ['2.7 mtr', 2700],
  ['2.7 mtrs wide', 2700],
  ['2.70 metres', 2700],
  ['2m70', 2700],
  ['2 m 70', 2700],
  ['2m 70cm', 2700],
  ['2 metres 70', 2700],
  ['2 meters and 70 centimeters', 2700],
  ['2m700', 2700],
  ['2m05', 2050],
  ['3m', 3000],
  ['3 metres', 3000],
  ['three metres', 3000],
  ['three metre', 3000],
  ['three metres forty', 3400],
  ['two metre seventy', 2700],
  ['two point seven metres', 2700],
  ['2 point 7 metres', 2700],
  ['two and a half metres', 2500],
  ['2 1/2 m', 2500],
  ['2½m', 2500],
  ['a metre and a half', 1500],
  ['one metre fifty', 1500],
  ['a metre twenty', 1200],
  ['three and a quarter metres', 3250],
  ['two metres and a half', 2500],
  ['twenty seven hundred', 2700],
  ['27 hundred', 2700],
  ['two thousand seven hundred', 2700],
  ['two thousand seven hundred and fifty', 2750],
  ['twenty seven fifty', 2750],
  ['twelve hundred', 1200],
  ['twelve hundred and fifty', 1250],
  ['wall is 2.7', 2700],
  ['the wall is about 2700 wide', 2700],
  ['its 2700 across', 2700],
  ['width 2700', 2700],
  ['2700 corner to corner', 2700],
  ['2700 wall to wall', 2700],
  ['from the corner to the door 2700', 2700],
  ['bout 2700 ish', 2700],
  ['call it 2700', 2700],
  ['2.7 or so', 2700],
  ['4.2 metres long', 4200],
  ['the chimney breast is 1450 wide', 1450],
  ['alcove, 980', 980],
  ['just over 3 metres', 3000],
  ['3.4 metres (about 11 feet)', 3400],
  ['34 hundred', 3400],
  ['3 point 4', 3400],
  ['3,40', 3400],
  ['wall 3400, ceiling 2400', 3400],
  // feet and inches
  ["12'", 12 * FT],
  ['12 ft', 12 * FT],
  ['12ft', 12 * FT],
  ['12 feet', 12 * FT],
  ['twelve foot', 12 * FT],
  ['12 foot wide', 12 * FT],
  ['12\'6"', 12 * FT + 6 * IN],
  ['12\' 6"', 12 * FT + 6 * IN],
  ["12'6", 12 * FT + 6 * IN],
  ["12' 6''", 12 * FT + 6 * IN],
  ['12’ 6”', 12 * FT + 6 * IN],
  ['12′6″', 12 * FT + 6 * IN],
  ['12\'-6"', 12 * FT + 6 * IN],
  ['12\'-6 1/2"', 12 * FT + 6.5 * IN],
  ['12ft 6in', 12 * FT + 6 * IN],
  ['12 ft, 6 in', 12 * FT + 6 * IN],
  ['12 feet 6 inches', 12 * FT + 6 * IN],
  ['12 feet and 6 inches', 12 * FT + 6 * IN],
  ['12 foot 6', 12 * FT + 6 * IN],
  ['twelve foot six', 12 * FT + 6 * IN],
  ['twelve and a half feet', 12.5 * FT],
  ['12 foot and a half', 12.5 * FT],
  ['12 1/2 ft', 12.5 * FT],
  ['12 ft 3 1/4 in', 12 * FT + 3.25 * IN],
  ['12\' 3¼"', 12 * FT + 3.25 * IN],
  ['150 inches', 150 * IN],
  ['150"', 150 * IN],
  ['150 in', 150 * IN],
  ['150 1/2"', 150.5 * IN],
  ['149 15/16"', (149 + 15 / 16) * IN],
  ['4 yards', 12 * FT],
  ['150', 150 * IN, 'in'],
  ['150 1/2', 150.5 * IN, 'in'],
  ['3400 mm', 3400, 'in'],
  ['3400', 3400, 'in'],
  ['340', 3400, 'cm'],
  // corrections and tolerances
  ['2700 no 2750', 2750],
  ['2700 sorry 2750', 2750],
  ['2.7 no wait 2.75', 2750],
  ['2750 not 2700', 2750],
  ['2700, actually 2750', 2750],
  ['12 foot no 13', 13 * FT],
  ['2700 give or take 5', 2700],
  ['2700 +/- 5', 2700],
  ['2700 plus or minus 5mm', 2700],
  ['2.7 m (8 ft 10 1/4)', 2700],
  // asked back
  ['12', 'ask'],
  ['9', 'ask'],
  ['340', 'ask'],
  ['12-6', 'ask'],
  ['2m7', 'ask'],
  ['2700 or 2750', 'ask'],
  ['11-2', 'ask'],
  ['twice 1.7 m', 'ask'],
  ['2 times 1.7 m', 'ask'],
  ['3 metres less 20 mm', 'ask'],
  ['1.2m to the door then 2.2m', 'ask'],
  ['3.4', 'ask', 'in'],
  ['11', 'ask', 'in'],
  ['between 2.7 and 2.8 m', 'ask'],
  ['2.7 to 2.8', 'ask'],
  ['12', 'ask', 'in'],
  // refused
  ['-2700', 'refused'],
  ['minus 2700', 'refused'],
  ['0', 'refused'],
  ['0 mm', 'refused'],
  ['24 kg', 'refused'],
  ['53 lb', 'refused'],
  ['10 km', 'refused'],
  ['3 miles', 'refused'],
  ['2 mm', 'refused'],
  ['999999', 'refused'],
  // nothing
  ['wide', null],
  ['dunno', null],
  ['1e9', null],
  ['NaN', null],
  ['12/05/2020', null],
  ['999999999999999999999999', null],
  ['the whole wall', null],
  ['one', null],
];

const OTHERS: [question: QuestionName, path: string, ...row: Row][] = [
  ['wall.heightMm', 'wall.heightMm', '2400', 2400],
  ['wall.heightMm', 'wall.heightMm', '2.4', 2400],
  ['wall.heightMm', 'wall.heightMm', '240', 2400],
  ['wall.heightMm', 'wall.heightMm', '8 ft', 8 * FT],
  ['wall.heightMm', 'wall.heightMm', 'eight foot', 8 * FT],
  ['wall.heightMm', 'wall.heightMm', '8\' 1/2"', 8 * FT + 0.5 * IN],
  ['wall.heightMm', 'wall.heightMm', 'ceiling at 2420', 2420],
  ['wall.heightMm', 'wall.heightMm', 'standard 2.4', 2400],
  ['wall.heightMm', 'wall.heightMm', '8', 8 * FT],
  ['wall.heightMm', 'wall.heightMm', '8', 8 * FT, 'in'],
  ['wall.thicknessMm', 'wall.thicknessMm', '110', 110],
  ['wall.thicknessMm', 'wall.thicknessMm', '230 thick', 230],
  ['wall.thicknessMm', 'wall.thicknessMm', '11cm', 110],
  ['wall.thicknessMm', 'wall.thicknessMm', 'about 4 1/2 in', 4.5 * IN],
  ['wall.thicknessMm', 'wall.thicknessMm', 'nine inch', 9 * IN],
  ['wall.thicknessMm', 'wall.thicknessMm', 'a foot', FT],
  ['wall.thicknessMm', 'wall.thicknessMm', 'two foot thick', 2 * FT],
  ['wall.thicknessMm', 'wall.thicknessMm', '9', 'ask'],
  ['wall.boardMm', 'wall.boardMm', '13', 13],
  ['wall.boardMm', 'wall.boardMm', '12.5', 12.5],
  ['wall.boardMm', 'wall.boardMm', '12,5 mm', 12.5],
  ['wall.boardMm', 'wall.boardMm', 'ten mil', 10],
  ['wall.boardMm', 'wall.boardMm', 'half inch', 0.5 * IN],
  ['wall.boardMm', 'wall.boardMm', '1/2"', 0.5 * IN],
  ['wall.boardMm', 'wall.boardMm', '1/2', 0.5 * IN],
  ['wall.boardMm', 'wall.boardMm', '5/8 in drywall', 0.625 * IN],
  ['wall.boardMm', 'wall.boardMm', 'five eighths', 0.625 * IN],
  ['wall.boardMm', 'wall.boardMm', 'three eighths of an inch', 0.375 * IN],
  ['piece.depthMm', 'piece.depthMm', '30', 30],
  ['piece.depthMm', 'piece.depthMm', '30mm deep', 30],
  ['piece.depthMm', 'piece.depthMm', 'sticks out 45', 45],
  ['piece.depthMm', 'piece.depthMm', '4 cm', 40],
  ['piece.depthMm', 'piece.depthMm', 'an inch', IN],
  ['piece.depthMm', 'piece.depthMm', 'inch and a half', 1.5 * IN],
  ['piece.depthMm', 'piece.depthMm', 'an inch and a quarter', 1.25 * IN],
  ['piece.depthMm', 'piece.depthMm', '1 1/4"', 1.25 * IN],
  ['piece.depthMm', 'piece.depthMm', '3/4 of an inch', 0.75 * IN],
  ['piece.depthMm', 'piece.depthMm', 'three quarter inch', 0.75 * IN],
  ['piece.depthMm', 'piece.depthMm', 'seven eighths of an inch', 0.875 * IN],
  ['piece.depthMm', 'piece.depthMm', '2', 2 * IN, 'in'],
  ['piece.depthMm', 'piece.depthMm', '30', 30, 'in'],
  ['wall.thicknessMm', 'wall.thicknessMm', '110', 110, 'in'],
  ['wall.datum', 'wall.datum.aboveFloorMm', '50', 50 * IN, 'in'],
  ['piece.depthMm', 'piece.depthMm', '3', 'ask'],
  ['piece.depthMm', 'piece.depthMm', '3 m', 'refused'],
  ['wall.datum', 'wall.datum.aboveFloorMm', '1100', 1100],
  ['wall.datum', 'wall.datum.aboveFloorMm', 'the mantel is 1100 off the floor', 1100],
  ['wall.datum', 'wall.datum.aboveFloorMm', '1.1 m', 1100],
  ['wall.datum', 'wall.datum.aboveFloorMm', '4 ft 2', 4 * FT + 2 * IN],
  ['wall.voidMm', 'wall.voidMm', '50', 50],
  ['wall.voidMm', 'wall.voidMm', '2 in', 2 * IN],
];

const IN_PASSING: [question: QuestionName, path: string, ...row: Row][] = [
  ['wall.widthMm', 'wall.widthMm', 'mirror on a brick wall 2.7m wide', 2700],
  ['wall.widthMm', 'wall.widthMm', 'on a 2.9 m wall', 2900],
  ['wall.widthMm', 'wall.widthMm', 'the wall is 2960 not 2690', 2960],
  ['wall.widthMm', 'wall.widthMm', 'wall 3050', 3050],
  ['wall.widthMm', 'wall.widthMm', 'a ten foot wide wall', 10 * FT],
  ['wall.widthMm', 'wall.widthMm', '900 x 1200', null],
  ['wall.widthMm', 'wall.widthMm', 'mirror 900 wide', null],
  ['wall.widthMm', 'wall.widthMm', 'centre 1500 up the wall', null],
  ['wall.widthMm', 'wall.widthMm', 'brick wall 230 thick', null],
  ['wall.widthMm', 'wall.widthMm', '300 down from the ceiling', null],
  ['wall.widthMm', 'wall.widthMm', 'left edge 450 from the wall corner', null],
  ['wall.widthMm', 'wall.widthMm', 'wall with 13 mm plasterboard', null],
  ['wall.heightMm', 'wall.heightMm', '2.4m ceilings', 2400],
  ['wall.heightMm', 'wall.heightMm', 'ceiling is 2420 high', 2420],
  ['wall.heightMm', 'wall.heightMm', 'wall is 3 m wide 2.5 m high', 2500],
  ['wall.heightMm', 'wall.heightMm', '300 below the ceiling', null],
  ['wall.heightMm', 'wall.heightMm', 'picture 1200 high', null],
  ['wall.thicknessMm', 'wall.thicknessMm', 'brick wall 230 thick', 230],
  ['wall.thicknessMm', 'wall.thicknessMm', 'stone, about 2 foot thick', 2 * FT],
  ['wall.thicknessMm', 'wall.thicknessMm', '12 mm thick plaster', null],
  ['piece.depthMm', 'piece.depthMm', 'frame is 30 deep', 30],
  ['piece.depthMm', 'piece.depthMm', 'wall 230 thick', null],
];

function check(got: ReturnType<typeof outcome>, path: string, expected: Expected): void {
  if (typeof expected !== 'number') expect(got).toBe(expected);
  else expect((got as Record<string, number>)[path]).toBeCloseTo(expected, 6);
}

describe('a length', () => {
  it.each(WALL_WIDTH)('"%s" is a wall %s mm wide', (say, expected, unit) => {
    check(outcome(hear('wall.widthMm', say, unit === undefined ? {} : { unit })), 'wall.widthMm', expected);
  });

  it.each(OTHERS)('%s: %s of "%s" is %s', (question, path, say, expected, unit) => {
    check(outcome(hear(question, say, unit === undefined ? {} : { unit })), path, expected);
  });

  it.each(IN_PASSING)('%s in passing: %s of "%s" is %s', (question, path, say, expected) => {
    check(outcome(hear(question, say, {}, 'piece.kind')), path, expected);
  });

  it.each([
    ['3.2m wide 2.4m high', 3200, 2400],
    ['2.4 high 3.2 wide', 3200, 2400],
    ['3.2 x 2.4', 3200, 2400],
    ['3200 by 2400', 3200, 2400],
    ['10 foot by 8 foot', 10 * FT, 8 * FT],
    ['3.2 m wide and 2400 high', 3200, 2400],
  ])('"%s" is a wall %s wide and %s high', (say, wide, high) => {
    const got = outcome(hear('wall.widthMm', say)) as Record<string, number>;
    expect(got['wall.widthMm']).toBeCloseTo(wide, 6);
    expect(got['wall.heightMm']).toBeCloseTo(high, 6);
  });

  it('is to be confirmed when its unit was judged or it is vague', () => {
    for (const say of ['3.4', '3.450 mm', 'just over 3 metres', '3 m and a bit']) {
      const heard = hear('wall.widthMm', say);
      expect(heard?.kind === 'facts' && heard.facts[0]?.inferred, say).toBe(true);
    }
  });

  it('is asked with both units named when two are sensible', () => {
    const heard = hear('wall.widthMm', '12');
    expect(heard?.kind === 'ask' && heard.ask.readings.map(({ label }) => label)).toEqual([
      '12 m (12000 mm)',
      '12 ft (3657.6 mm)',
    ]);
  });
});
