import { expect, test } from 'vitest';
import type { Across, Up } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { HangerPoint } from '../../../core/piece/piece.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf, pairs } from './a-job.ts';

// The plain job: 840 x 1120 on a 2700 wall, rings 95 in and 240 down, bottom 800 up.
test.each<[string, Across, number, number]>([
  ['in the centre: (2700 - 840) / 2 + 95 and - 95', { by: 'centre' }, 1025, 1675],
  ['left edge at 300: 300 + 95, 300 + 840 - 95', { by: 'left-edge', mm: mm(300) }, 395, 1045],
  [
    'right edge 300 from the right end: 2700 - 300 - 840 + 95, 2700 - 300 - 95',
    { by: 'right-edge', mm: mm(300) },
    1655,
    2305,
  ],
  ['centre at 1000: 1000 - 420 + 95, 1000 + 420 - 95', { by: 'centre-at', mm: mm(1000) }, 675, 1325],
  [
    'between 600 and 1800: 1200 - 325, 1200 + 325',
    { by: 'between', fromMm: mm(600), toMm: mm(1800) },
    875,
    1525,
  ],
  ['between, said the other way round', { by: 'between', fromMm: mm(1800), toMm: mm(600) }, 875, 1525],
])('across %s', (_, across, left, right) => {
  const layout = setOut(jobOf({ place: { across } }));
  expect(layout.ok && layout.marks.map((mark) => mark.fromLeftMm)).toEqual([left, right]);
  expect(layout.ok && layout.marks.map((mark) => mark.fromRightMm)).toEqual([2700 - left, 2700 - right]);
});

test.each<[string, Up, Partial<Wall>, number]>([
  ['bottom 800 up: 800 + 1120 - 240', { by: 'bottom-above', mm: mm(800) }, {}, 1680],
  ['centre at 1500: 1500 + 560 - 240', { by: 'centre-at', mm: mm(1500) }, {}, 1820],
  ['top at 2000: 2000 - 240', { by: 'top-at', mm: mm(2000) }, {}, 1760],
  [
    '300 below a ceiling 2400 high: 2400 - 300 - 240',
    { by: 'below-ceiling', mm: mm(300) },
    { heightMm: mm(2400) },
    1860,
  ],
  [
    '300 below a ceiling 2400 high, from a mantel 700 high: 1860 - 700',
    { by: 'below-ceiling', mm: mm(300) },
    { heightMm: mm(2400), datum: { kind: 'mantel', aboveFloorMm: mm(700) } },
    1160,
  ],
])('up %s', (_, up, wall, height) => {
  const layout = setOut(jobOf({ place: { up }, wall }));
  expect(layout.ok && layout.marks.map((mark) => mark.upMm)).toEqual([height, height]);
});

test.each<[string, HangerPoint[], number[][]]>([
  [
    'from the right and from the centre',
    [
      { fromRightMm: mm(100), fromTopMm: mm(240) },
      { fromCentreMm: mm(-320), fromTopMm: mm(240) },
    ],
    [
      [930 + 100, 1680],
      [930 + 740, 1680],
    ],
  ],
  [
    'with an old figure from the left beside one from the right, which follows the width',
    [
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromLeftMm: mm(605), fromRightMm: mm(95), fromTopMm: mm(240) },
    ],
    [
      [1025, 1680],
      [1675, 1680],
    ],
  ],
  [
    'three in a row, all kept, from the left',
    [
      { fromCentreMm: mm(0), fromTopMm: mm(240) },
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromRightMm: mm(95), fromTopMm: mm(240) },
    ],
    [
      [1025, 1680],
      [1350, 1680],
      [1675, 1680],
    ],
  ],
  [
    'uneven by 7: uneven marks, level frame',
    [
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromRightMm: mm(95), fromTopMm: mm(247) },
    ],
    [
      [1025, 1680],
      [1675, 1673],
    ],
  ],
])('rings %s', (_, points, marks) => {
  const layout = setOut(jobOf({ piece: { hanging: { by: 'rings', points } } }));
  expect(layout.ok && pairs(layout.marks)).toEqual(marks);
  expect(layout).toMatchObject({ frame: { leftMm: 930, rightMm: 1770, bottomMm: 800, topMm: 1920 } });
});

test('the way from seat to screw is added once: 28 above the seat is 28 higher', () => {
  const plain = jobOf();
  const layout = setOut({
    ...plain,
    piece: { ...plain.piece, hanging: { ...plain.piece.hanging, seatToScrewMm: mm(28) } },
  });
  expect(layout.ok && layout.marks.map((mark) => mark.upMm)).toEqual([1708, 1708]);
});

test('the tape has lengths to check: mark to mark, both ends of the wall, both edges of the frame', () => {
  const layout = setOut(jobOf());
  expect(layout.ok && layout.crossChecks).toEqual(
    [
      ['A to B', 650],
      ['hanger to hanger on the piece', 650],
      ['A from the left plus A from the right', 2700],
      ['B from the left plus B from the right', 2700],
      ['A up to the top of the frame', 240],
      ['A down to the bottom of the frame', 880],
    ].map(([text, expectMm]) => ({ text, expectMm, toleranceMm: 2 })),
  );
});

test('each mark can be asked about: what went in, across and up', () => {
  const layout = setOut(jobOf());
  const whys = layout.ok ? layout.why : [];
  expect(whys.map((why) => why.of)).toEqual([
    'frame left edge',
    'frame bottom edge',
    'mark A across',
    'mark A up',
    'mark B across',
    'mark B up',
    'tilt',
    'lean',
  ]);
  expect(whys[2]).toMatchObject({
    inputs: { 'frame left edge': 930, 'hanger from the piece’s left edge': 95 },
    result: '1025 mm',
  });
  expect(whys[3]).toMatchObject({
    inputs: { 'frame bottom edge': 800, 'piece height': 1120, drop: 240, 'seat to screw': 0 },
    result: '1680 mm',
  });
});
