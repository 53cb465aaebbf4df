import { describe, expect, it } from 'vitest';
import type { DisplayUnit } from '../../../../flows/reading.ts';
import { hear, outcome } from '../hear.ts';

/** Exact by definition (international yard and pound, 1959). */
const IN = 25.4;

type Expected = [wide: number | undefined, high: number | undefined] | 'ask' | 'refused' | null;
type Row = [say: string, expected: Expected, unit?: DisplayUnit];

/** Invented sayings, in the manner of sayings.json; width first unless the words say otherwise. */
const ASKED: Row[] = [
  ['900x1200', [900, 1200]],
  ['900 X 1200', [900, 1200]],
  ['900×1200', [900, 1200]],
  ['900*1200mm', [900, 1200]],
  ['900mm x 1200mm', [900, 1200]],
  ['900mmx1200mm', [900, 1200]],
  ['900 by 1200', [900, 1200]],
  ['its 900 by 1200 mil', [900, 1200]],
  ['about 900 x 1200 ish', [900, 1200]],
  ['90 x 120 cm', [900, 1200]],
  ['90cm x 120cm', [900, 1200]],
  ['90cm by 1.2m', [900, 1200]],
  ['900 x 1.2m', [900, 1200]],
  ['0,9 x 1,2 m', [900, 1200]],
  ['1.1 x 0.8', [1100, 800]],
  ['1100x800', [1100, 800]],
  ['1,200 x 1,500', [1200, 1500]],
  ['1.200 mm x 1.500 mm', [1200, 1500]],
  ['nine hundred by twelve hundred', [900, 1200]],
  ['eight forty by eleven twenty', [840, 1120]],
  ['six hundred by nine hundred', [600, 900]],
  ['a metre by a metre twenty', [1000, 1200]],
  ['a metre by 700', [1000, 700]],
  ['one metre by one point five metres', [1000, 1500]],
  ['half a metre by a metre', [500, 1000]],
  ['900 wide 1200 high', [900, 1200]],
  ['900 wide by 1200 high', [900, 1200]],
  ['900w x 1200h', [900, 1200]],
  ['900W 1200H', [900, 1200]],
  ['w900 h1200', [900, 1200]],
  ['W: 900 H: 1200', [900, 1200]],
  ['w = 900, h = 1200', [900, 1200]],
  ['h=1200 w=900', [900, 1200]],
  ['width 900 height 1200', [900, 1200]],
  ['height 1200, width 900', [900, 1200]],
  ['width is 900 and height is 1200', [900, 1200]],
  ['1200 tall 900 wide', [900, 1200]],
  ['1200 tall by 900', [900, 1200]],
  ['1200 high x 900 wide', [900, 1200]],
  ['1200 high and 900 across', [900, 1200]],
  ['1200 hight 900 widht', [900, 1200]],
  ['900 in width and 1200 in height', [900, 1200]],
  ['1200 (h) x 900 (w)', [900, 1200]],
  ['900 and 1200', [900, 1200]],
  ['900, 1200', [900, 1200]],
  ['900 1200', [900, 1200]],
  ['900 x 1200 overall with frame', [900, 1200]],
  ['frame is 900 x 1200', [900, 1200]],
  ['1200 x 900 portrait', [900, 1200]],
  ['900 x 1200 landscape', [1200, 900]],
  ['1500 long 600 high', [1500, 600]],
  ['1200 x 900 (h x w)', [900, 1200]],
  ['HxW 1200x900', [900, 1200]],
  ['W900xH1200xD30', [900, 1200]],
  ['2m10 x 900', [2100, 900]],
  ['two metre ten by nine hundred', [2100, 900]],
  ['metre by metre and a half', [1000, 1500]],
  ['metre square', [1000, 1000]],
  ['900,1200', [900, 1200]],
  ['900 x 1200 each, two of them', [900, 1200]],
  ['oval 600 x 900', [600, 900]],
  ['900 x 1200 x 30', [900, 1200]],
  // round and square
  ['round, 700', [700, 700]],
  ['700 round', [700, 700]],
  ['700 diameter', [700, 700]],
  ['diameter 700', [700, 700]],
  ['ø700', [700, 700]],
  ['dia 70cm', [700, 700]],
  ['circular 28 inch', [28 * IN, 28 * IN]],
  ['radius 350', [700, 700]],
  ['w 36" h 48"', [36 * IN, 48 * IN]],
  ['600 square', [600, 600]],
  ['60cm square', [600, 600]],
  // feet and inches
  ['24x36"', [24 * IN, 36 * IN]],
  ['24" x 36"', [24 * IN, 36 * IN]],
  ["24'' x 36''", [24 * IN, 36 * IN]],
  ['24″ × 36″', [24 * IN, 36 * IN]],
  ['24in x 36in', [24 * IN, 36 * IN]],
  ['24 in by 36 in', [24 * IN, 36 * IN]],
  ['24 inches wide, 36 inches tall', [24 * IN, 36 * IN]],
  ['36 tall 24 wide in inches', [24 * IN, 36 * IN]],
  ['2ft x 3ft', [24 * IN, 36 * IN]],
  ["2' x 3'", [24 * IN, 36 * IN]],
  ['2 foot by 3 foot', [24 * IN, 36 * IN]],
  ['two foot by three foot', [24 * IN, 36 * IN]],
  ['2 by 3 feet', [24 * IN, 36 * IN]],
  ["2'6\" x 4'", [30 * IN, 48 * IN]],
  ['2\' 6" x 4\' 2 1/2"', [30 * IN, 50.5 * IN]],
  ['2 ft 6 x 4 ft', [30 * IN, 48 * IN]],
  ['35-1/2 x 47-1/4 in', [35.5 * IN, 47.25 * IN]],
  ['35 ½ x 47 ¼', [35.5 * IN, 47.25 * IN]],
  ['35½" x 47¼"', [35.5 * IN, 47.25 * IN]],
  ['24 x 36', [24 * IN, 36 * IN], 'in'],
  ['30 by 40', [30 * IN, 40 * IN], 'in'],
  ['900 x 1200', [900, 1200], 'in'],
  ['thirty by forty inches', [30 * IN, 40 * IN]],
  ['80 x 120', [800, 1200], 'cm'],
  // corrected while typing
  ['900 x 1200 no 1250', [900, 1250]],
  ['900 x 1200 sorry 950 x 1200', [950, 1200]],
  ['900 x 1200 mm, actually 950 x 1250 mm', [950, 1250]],
  ['900 wide 1200 high sorry 950 wide', [950, 1200]],
  ['900 x 1200 not 1300', [900, 1200]],
  // one side
  ['900 wide', [900, undefined]],
  ['1200 high', [undefined, 1200]],
  ['900mm', [900, undefined]],
  ['a metre twenty tall', [undefined, 1200]],
  // asked, refused, nothing
  ['40 x 60', 'ask'],
  ['2 by 3', 'ask'],
  ['2 x 1', 'ask'],
  ['9oo x 1200', 'ask'],
  ['24 x 36', 'ask'],
  ['60', 'ask'],
  ['100 x 150', 'ask'],
  ['0 x 1200', 'refused'],
  ['900 x -1200', 'refused'],
  ['900 x 0', 'refused'],
  ['9 km x 2 km', 'refused'],
  ['90000 x 120000', 'refused'],
  ['24 kg', 'refused'],
  ['big', null],
  ['A1', null],
  ['two', null],
  ['same as the other one', null],
  ['no tape on me', null],
];

const IN_PASSING: Row[] = [
  ['mirror 900 x 1200 on brick', [900, 1200]],
  ['24 kg mirror, 900 wide 1200 high', [900, 1200]],
  ['mirror 840x1120 rings 95 in 240 down brick wall 2700 wide', [840, 1120]],
  ['round mirror 80cm over a fireplace 1.5m wide', [800, 800]],
  ['picture for over the sofa, 900 wide 600 high', [900, 600]],
  ['fireplace 1.5m wide', null],
  ['wall is 4m by 2.4m', null],
  ['wall is 3.4 m wide', null],
  ['wall 3.4 m wide and 2.4 m high', null],
  ['8x50 plugs', null],
  ['2x4 studs', null],
  ['two rings 95 in 240 down', null],
  ['ceiling is 2400 high', null],
  ['13 mm plasterboard', null],
  ['30 mm deep', null],
  ['socket 600 from the left, 300 up', null],
  ['picture 24 x 36 inches', [24 * IN, 36 * IN]],
  ['frame is 950 wide not 900', [950, undefined]],
];

function check(got: ReturnType<typeof outcome>, expected: Expected): void {
  if (!Array.isArray(expected)) {
    expect(got).toBe(expected);
    return;
  }
  const { 'piece.widthMm': wide, 'piece.heightMm': high } = got as Record<string, number>;
  expect([wide, high].map((each) => (each === undefined ? undefined : Math.round(each * 1e6) / 1e6))).toEqual(
    expected.map((each) => (each === undefined ? undefined : Math.round(each * 1e6) / 1e6)),
  );
}

describe('a size', () => {
  it.each(ASKED)('"%s" is %j when the size is asked', (say, expected, unit) => {
    check(outcome(hear('piece.size', say, unit === undefined ? {} : { unit })), expected);
  });

  it.each(IN_PASSING)('"%s" is %j in passing', (say, expected) => {
    check(outcome(hear('piece.size', say, {}, 'piece.massKg')), expected);
  });

  it('leaves the other side to be asked when one is said', () => {
    const wide = hear('piece.size', '900 wide');
    const high = hear('piece.size', '1200 high');
    expect(wide?.kind === 'facts' && wide.facts[0]?.partial).toBe('piece.heightMm');
    expect(high?.kind === 'facts' && high.facts[0]?.partial).toBe('piece.widthMm');
  });

  it('takes a third figure as the depth', () => {
    expect(outcome(hear('piece.size', '900 x 1200 x 30'))).toMatchObject({ 'piece.depthMm': 30 });
  });

  it('names the readings when it asks for the unit', () => {
    const heard = hear('piece.size', '40 x 60');
    expect(heard?.kind === 'ask' && heard.ask.readings.map(({ label }) => label)).toEqual([
      '40 cm (400 mm) wide, 60 cm (600 mm) high',
      '40 in (1016 mm) wide, 60 in (1524 mm) high',
    ]);
  });
});
