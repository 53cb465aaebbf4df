import { describe, test } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';

const up = (by: string, length: number, datum?: string) => ({
  'place.up.by': by,
  'place.up.mm': length,
  ...(datum === undefined ? {} : { 'wall.datum.kind': datum }),
});
const across = (by: string, length?: number) => ({
  'place.across.by': by,
  ...(length === undefined ? {} : { 'place.across.mm': length }),
});
const below = (what: string | undefined) => ({ 'place.below': what });

/** Invented by us. Inches are exact: 25.4 mm. */
const ROWS: Row[] = [
  ['place.up', 'bottom 140 above the mantel', up('bottom-above', 140, 'mantel')],
  ['place.up', '150 up from the mantelshelf', up('bottom-above', 150, 'mantel')],
  ['place.up', '200 over the sofa', up('bottom-above', 200, 'furniture')],
  ['place.up', '10 inches above the back of the couch', up('bottom-above', 254, 'furniture')],
  ['place.up', 'a foot above the sideboard', up('bottom-above', 304.8, 'furniture')],
  ['place.up', 'bottom edge 900 off the floor', up('bottom-above', 900, 'floor')],
  ['place.up', 'centre at 1500', up('centre-at', 1500)],
  ['place.up', 'center 57 inches off the floor', up('centre-at', 1447.8, 'floor')],
  ['place.up', 'middle of it 1.5 m above the floor', up('centre-at', 1500, 'floor')],
  ['place.up', '1550 to the centre', up('centre-at', 1550)],
  ['place.up', 'centre line 1480 above finished floor', up('centre-at', 1480, 'floor')],
  ['place.up', 'top at 2100 from the floor', up('top-at', 2100, 'floor')],
  ['place.up', '300 below the ceiling', up('below-ceiling', 300)],
  ['place.up', 'a foot down from the ceiling', up('below-ceiling', 304.8)],
  ['place.up', 'top of the frame 250 off the celing', up('below-ceiling', 250)],
  ['place.up', 'drop it 400 from the ceiling', up('below-ceiling', 400)],
  [
    'place.up',
    'top 260 below the ceiling, ceiling 2.42m',
    { ...up('below-ceiling', 260), 'wall.heightMm': 2420 },
  ],
  [
    'place.up',
    'mantel is 1100 high, bottom 150 above that',
    { ...up('bottom-above', 150), 'wall.datum.kind': 'mantel', 'wall.datum.aboveFloorMm': 1100 },
  ],
  ['place.up', '120 clear of the dado', up('bottom-above', 120, 'furniture')],
  ['place.up', 'top edge 150 below the soffit', up('below-ceiling', 150, 'ceiling')],
  [
    'place.up',
    'middle of picture on 1 meter 55',
    { ...up('centre-at', 1550, 'floor'), 'piece.kind': undefined },
  ],
  ['place.up', 'half a metre above the sofa', up('bottom-above', 500, 'furniture')],
  ['place.up', '-200 above the mantel', 'reject'],
  ['place.up', 'level with the top of the door', 'ask'],
  ['place.up', '1500', 'ask'],
  ['place.up', '1500 off the floor', 'ask'],
  ['place.up', 'eye level', 'ask'],
  ['place.up', 'usual height', 'ask'],
  ['place.up', 'up to you', 'ask'],
  ['place.up', 'high', 'reject'],
  ['place.up', 'about there', 'reject'],
  ['place.up', 'not decided, have to look', 'dont-know'],
  ['place.across', 'centre', across('centre')],
  ['place.across', 'in the middle', across('centre')],
  ['place.across', 'bang in the middle', across('centre')],
  ['place.across', 'cntr', across('centre')],
  ['place.across', 'halfway along', across('centre')],
  ['place.across', 'same gap both sides', across('centre')],
  ['place.across', 'equal gaps each side', across('centre')],
  ['place.across', '50/50', across('centre')],
  ['place.across', 'left edge 450 from the left end', across('left-edge', 450)],
  ['place.across', 'left side 2 ft from the left corner', across('left-edge', 609.6)],
  ['place.across', 'right edge 300 from the right corner', across('right-edge', 300)],
  ['place.across', 'rite edge 250 off the right hand wall', across('right-edge', 250)],
  ['place.across', 'centre 1350 from the left', across('centre-at', 1350)],
  ['place.across', 'middle of the frame 1.2 m in from the left wall', across('centre-at', 1200)],
  ['place.across', 'starts 600 from the left', across('left-edge', 600)],
  ['place.across', '600 from the left corner to its left edge', across('left-edge', 600)],
  [
    'place.across',
    'between 400 and 1600',
    { 'place.across.by': 'between', 'place.across.fromMm': 400, 'place.across.toMm': 1600 },
  ],
  ['place.across', 'left edge offset 600 mm from LH end', across('left-edge', 600)],
  ['place.across', 'centre it on the 3m wall', { ...across('centre'), 'wall.widthMm': 3000 }],
  ['place.across', 'centred between the two windows', 'ask'],
  ['place.across', '450', 'ask'],
  ['place.across', '450 from the left', 'ask'],
  ['place.across', '300 from the door', 'ask'],
  ['place.across', 'centred over the sofa', { 'place.across': undefined, ...below('sofa') }],
  ['place.across', 'centred over the mantel', 'ask'],
  ['place.across', 'a bit to the left', 'reject'],
  ['place.across', 'next to the window', 'reject'],
  [null, "12kg mirror 700x900 over the baby's cot", below('cot')],
  [null, "mirror above my daughter's bed", below('bed')],
  ['place.below', 'nothing either side', 'reject'],
  ['place.below', 'nothing below it on either side', below('nothing')],
  [null, 'want to hang a mirror over the fireplace', below('fireplace')],
  [null, 'picture above our old open fire, 9kg', below('fireplace')],
  [null, 'mirror over the bricked up fireplace', below('fireplace-unused')],
  [null, 'mirror above a fireplace, never used', below('fireplace-unused')],
  [null, 'mirror beside the fireplace', below(undefined)],
  ['place.up', '120 above the mantel', below(undefined)],
  ['place.below', 'nothing', below('nothing')],
  ['place.below', 'nowt', below('nothing')],
  ['place.below', 'just the floor', below('nothing')],
  ['place.below', "the baby's cot", below('cot')],
  ['place.below', 'a crib', below('cot')],
  ['place.below', 'our bed', below('bed')],
  ['place.below', 'double bed headboard', below('bed')],
  ['place.below', 'settee', below('sofa')],
  ['place.below', 'two armchairs', below('sofa')],
  ['place.below', 'the bathroom sink', below('basin')],
  ['place.below', 'log burner', below('fireplace')],
  ['place.below', 'fireplace, we light it in winter', below('fireplace')],
  ['place.below', 'a fireplace but its blocked up', below('fireplace-unused')],
  ['place.below', 'old fireplace not in use', below('fireplace-unused')],
  ['place.below', 'corridor, people walk past', below('walkway')],
  ['place.below', 'the landing', below('walkway')],
  ['place.below', 'a console table', below('nothing')],
  ['wall.datum', '1100', { 'wall.datum.aboveFloorMm': 1100 }],
  ['wall.datum', 'sofa back is 850 high', { 'wall.datum.kind': 'furniture', 'wall.datum.aboveFloorMm': 850 }],
  [
    'wall.datum',
    'mantle sits 43 in off the floor',
    { 'wall.datum.kind': 'mantel', 'wall.datum.aboveFloorMm': 1092.2 },
  ],
  ['wall.datum', 'did not measure', 'dont-know'],
  [null, 'mirror over the bed', below('bed')],
  [
    null,
    'mirror 30x40 in over the couch',
    { 'place.up': undefined, 'piece.widthMm': 762, 'piece.heightMm': 1016 },
  ],
  [null, 'a 900 by 1200 mirror', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  [
    null,
    '600 wide 900 high over the sofa',
    { 'place.up': undefined, 'piece.widthMm': 600, 'piece.heightMm': 900 },
  ],
  [null, "mirror, wall's 11 ft wide, ceiling 8 ft", { 'wall.widthMm': 3352.8, 'wall.heightMm': 2438.4 }],
  [
    null,
    '900x1200 tiles, 3.1m wall',
    { 'wall.finish.kind': 'tile', 'wall.finish.thicknessMm': undefined, 'wall.widthMm': 3100 },
  ],
  [
    null,
    'picture, bottom 200 above the sofa, centred',
    { ...up('bottom-above', 200, 'furniture'), ...across('centre'), ...below('sofa') },
  ],
];

describe('places, as said', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });

  test('from the far end counts once the width is known: 2700 - 900 = 1800', () => {
    const known = { wall: { widthMm: mm(2700) } };
    expectHeard(hear('centre 900 from the right', 'place.across', { known }), across('centre-at', 1800));
    expectHeard(hear('centre 900 from the right', 'place.across'), 'reject');
  });

  test('"100 higher" counts from where it was said to go: 1500 + 100 = 1600; from a ceiling 260 - 100 = 160', () => {
    const centre = { place: { up: { by: 'centre-at' as const, mm: mm(1500) } } };
    const hung = { place: { up: { by: 'below-ceiling' as const, mm: mm(260) } } };
    expectHeard(hear('put it 100 higher', 'confirm', { known: centre }), up('centre-at', 1600));
    expectHeard(hear('move it up 100', 'confirm', { known: hung }), up('below-ceiling', 160));
    expectHeard(hear('put it 100 higher', 'confirm'), 'not-understood');
  });

  test('"above it" is the datum known', () => {
    const known = { wall: { datum: { kind: 'mantel' as const } } };
    expectHeard(hear('150 above it', 'place.up', { known }), up('bottom-above', 150));
  });
});
