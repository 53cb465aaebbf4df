import { describe, expect, test } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';
import { at, jobOf } from '../score.ts';

const wide = { wall: { widthMm: mm(3000) } };
const high = { wall: { heightMm: mm(2400) } };

/** Invented by us. A part of a wall is a figure only once the wall is known, and then the line is asked. */
const ASKED: Row[] = [
  ['place.across', 'a third along', 'ask'],
  ['place.across', 'a third of the way along', 'ask'],
  ['place.across', 'two thirds along from the left', 'ask'],
  ['place.across', 'quarter of the way in from the right', 'ask'],
  ['place.across', '1/3 from the left', 'ask'],
  ['place.across', 'half way between the window and the corner', 'ask'],
  ['place.across', 'midway between the door and the window', 'ask'],
  ['place.up', 'a third of the way down', 'ask'],
  ['place.up', 'two thirds up', 'ask'],
  ['place.up', 'halfway up', 'ask'],
  ['place.up', 'halfway between the mantel and the ceiling', 'ask'],
];

/** Invented by us. "Centre it" is along the wall; what follows is a height. Inches exact: 25.4 mm. */
const CENTRED: Row[] = [
  ...(['place.across', 'place.up', null] as const).flatMap((awaiting): Row[] => [
    [
      awaiting,
      'dead centre, 57 inches on center',
      { 'place.across.by': 'centre', 'place.up.by': 'centre-at', 'place.up.mm': 1447.8 },
    ],
    [
      awaiting,
      'centre it, 150 above the mantel',
      { 'place.across.by': 'centre', 'place.up.by': 'bottom-above', 'place.up.mm': 150 },
    ],
    [
      awaiting,
      'bang in the middle and bottom 900 off the floor',
      { 'place.across.by': 'centre', 'place.up.by': 'bottom-above', 'place.up.mm': 900 },
    ],
    [awaiting, 'centre it, 140 off the floor', { 'place.across.by': 'centre', 'place.up': undefined }],
  ]),
  ['place.across', 'centred, 1500 to centre', { 'place.across.by': 'centre', 'place.up.mm': 1500 }],
  ['place.across', 'half way between the ends', { 'place.across.by': 'centre' }],
  ['place.across', 'half way along', { 'place.across.by': 'centre' }],
  [
    'place.up',
    'centre, 1500',
    { 'place.up.by': 'centre-at', 'place.up.mm': 1500, 'place.across': undefined },
  ],
  ['place.across', 'left edge half a metre from the left', { 'place.across.mm': 500 }],
  ['place.across', 'left edge 3/4 in from the left', { 'place.across.mm': 19.05 }],
  ['place.up', 'quarter of a metre above the mantel', { 'place.up.mm': 250 }],
  ['piece.depthMm', 'quarter inch', { 'piece.depthMm': 6.35 }],
];

describe('shares of a wall, and centres', () => {
  test.each([...ASKED, ...CENTRED])('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });

  test.each([
    ['a third along', 'left-edge', 1000],
    ['two thirds along', 'left-edge', 2000],
    ['quarter of the way in from the right', 'right-edge', 750],
  ])('"%s" of a wall 3000 wide offers its %s at %d', (say, by, far) => {
    const [edge] = hear(say, 'place.across', { known: wide }).asks[0]?.readings ?? [];
    expect(edge?.fact?.value.place?.across).toEqual({ by, mm: far });
  });

  test.each([
    ['a third of the way down', 1600],
    ['halfway up', 1200],
    ['two thirds up', 1600],
  ])('"%s" of a wall 2400 high offers %d above the floor', (say, far) => {
    const readings = hear(say, 'place.up', { known: high }).asks[0]?.readings ?? [];
    expect(readings.map(({ fact }) => fact?.value.place?.up?.mm)).toEqual([far, far, far]);
  });

  test('of a height alone beside a place, which line is asked: bottom, centre or top', () => {
    const reading = hear('centre 1200 from left, 1500 up', 'place.across');
    expect(at(jobOf(reading), 'place.across')).toEqual({ by: 'centre-at', mm: 1200 });
    expect(reading.asks.map(({ question }) => question)).toEqual(['place.up']);
  });
});
