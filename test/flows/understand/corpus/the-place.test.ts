import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

/** Invented by us: places across and up, and fittings, as they are typed on site. Inches 25.4 mm, pounds 0.45359237 kg, stone 14 of them, exact by definition. */
const ROWS: Row[] = [
  ['place.across', 'bang on centre', { 'place.across.by': 'centre' }],
  ['place.across', 'dead centre please mate', { 'place.across.by': 'centre' }],
  [
    'place.across',
    '450 from the left to the edge',
    { 'place.across.by': 'left-edge', 'place.across.mm': 450 },
  ],
  [
    'place.across',
    'left edge 18 inches from the left wall',
    { 'place.across.by': 'left-edge', 'place.across.mm': 457.2 },
  ],
  ['place.across', 'a foot from the right', 'ask'],
  [
    'place.across',
    'right edge 200 from the right',
    { 'place.across.by': 'right-edge', 'place.across.mm': 200 },
  ],
  ['place.across', 'start 600 in', 'ask'],
  ['place.across', 'over the fireplace', { 'place.below': 'fireplace', 'place.across': undefined }],
  ['place.across', 'centre 1.35m from left', { 'place.across.by': 'centre-at', 'place.across.mm': 1350 }],
  ['place.across', 'in line with the sofa', 'reject'],
  ['place.across', 'left of centre', 'reject'],
  ['place.across', '600 either side', 'ask'],
  [
    'place.across',
    'between 500 and 1700',
    { 'place.across.by': 'between', 'place.across.fromMm': 500, 'place.across.toMm': 1700 },
  ],
  ['place.across', 'right in the corner', 'reject'],
  ['place.across', '1350', 'ask'],
  [
    'place.up',
    '5 foot to the centre',
    { 'place.up.by': 'centre-at', 'place.up.mm': 1524, 'wall.datum.kind': 'floor' },
  ],
  [
    'place.up',
    'bottom at 900',
    { 'place.up.by': 'bottom-above', 'place.up.mm': 900, 'wall.datum.kind': 'floor' },
  ],
  ['place.up', 'top 2100', { 'place.up.by': 'top-at', 'place.up.mm': 2100, 'wall.datum.kind': 'floor' }],
  [
    'place.up',
    '150 over the back of the sofa',
    { 'place.up.by': 'bottom-above', 'place.up.mm': 150, 'wall.datum.kind': 'furniture' },
  ],
  ['place.up', '57 inches centre', 'ask'],
  [
    'place.up',
    'six inches above the mantelpiece',
    { 'place.up.by': 'bottom-above', 'place.up.mm': 152.4, 'wall.datum.kind': 'mantel' },
  ],
  ['place.up', '1.5m', 'ask'],
  [
    'place.up',
    '300 from ceiling',
    { 'place.up.by': 'below-ceiling', 'place.up.mm': 300, 'wall.datum.kind': 'ceiling' },
  ],
  ['place.up', 'eye level', 'ask'],
  ['place.up', 'level with the door', 'ask'],
  ['place.up', 'a hand above the sofa', { 'place.up': undefined }],
  [
    'place.up',
    'top edge 8 inches below the ceiling',
    { 'place.up.by': 'below-ceiling', 'place.up.mm': 203.2, 'wall.datum.kind': 'ceiling' },
  ],
  [
    'place.up',
    'bottom of the frame 1m off the deck',
    { 'place.up.by': 'bottom-above', 'place.up.mm': 1000, 'wall.datum.kind': 'floor' },
  ],
  [
    'place.up',
    '20cm above the radiator',
    { 'place.up.by': 'bottom-above', 'place.up.mm': 200, 'wall.datum.kind': 'furniture' },
  ],
  [
    'wall.accessories',
    'one socket 50cm from left 30 cm up, havent looked behind',
    {
      'wall.accessories': [{ kind: 'socket', face: 'this', xMm: 500, yMm: 300 }],
      'wall.farSide': 'unknown',
    },
  ],
  [
    'wall.accessories',
    'nothing here, havent checked behind',
    { 'wall.accessories': [], 'wall.farSide': 'unknown' },
  ],
  [
    'wall.accessories',
    'nothing here, cant see behind it',
    { 'wall.accessories': [], 'wall.farSide': 'unknown' },
  ],
  [
    'wall.accessories',
    'nothing on this side, no idea whats next door',
    { 'wall.accessories': [], 'wall.farSide': 'unknown' },
  ],
  ['wall.accessories', 'nothing, and nothing behind', { 'wall.accessories': [], 'wall.farSide': 'seen' }],
  ['wall.accessories', 'none on this side, none on the other', { 'wall.accessories': [] }],
  ['wall.accessories', 'nothing on either side', { 'wall.accessories': [] }],
  [
    'wall.accessories',
    'double socket 300 up 600 from the left',
    { 'wall.accessories': [{ kind: 'socket', face: 'this', xMm: 600, yMm: 300 }] },
  ],
  [
    'wall.accessories',
    'light switch by the door, 1200 up and 150 from the left',
    { 'wall.accessories': [{ kind: 'switch', face: 'this', xMm: 150, yMm: 1200 }] },
  ],
  [
    'wall.accessories',
    "there's a socket but dunno where",
    { 'wall.accessories': undefined, 'wall.unplaced': [{ kind: 'socket', face: 'this' }] },
  ],
  [
    'wall.accessories',
    'two sockets, 400 and 2000 from the left, both 300 up, nothing behind',
    {
      'wall.accessories': [
        { kind: 'socket', face: 'this', xMm: 400, yMm: 300 },
        { kind: 'socket', face: 'this', xMm: 2000, yMm: 300 },
      ],
    },
  ],
  ['wall.accessories', 'havent looked at the other side', 'dont-know'],
  [
    'wall.accessories',
    'a gpo 300 off the floor 1.2m from the left corner',
    { 'wall.accessories': [{ kind: 'socket', face: 'this', xMm: 1200, yMm: 300 }] },
  ],
];

describe('the place, as typed on site', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
