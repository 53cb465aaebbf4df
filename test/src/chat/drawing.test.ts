import { expect, test } from 'vitest';
import { mm } from '../../../core/quantity.ts';
import { boxOf, drawn, FRAME, frame, MARKS, mark, rings, said, type Wall } from './drawn.ts';

test('the wall, the frame and the marks are drawn to one scale', () => {
  const drawing = drawn(MARKS, FRAME, {
    heightMm: mm(2400),
    datum: { kind: 'mantel', aboveFloorMm: mm(1100) },
  });
  const perMm = drawing?.perMm ?? 0;
  const [wall, box] = [boxOf(drawing, 'wall'), boxOf(drawing, 'frame')];
  // 2400 - 1100 = 1300 of wall above the mantel
  expect([wall?.width, wall?.height].map((side) => Math.round((side ?? 0) / perMm))).toEqual([2700, 1300]);
  expect([box?.width, box?.height].map((side) => Math.round((side ?? 0) / perMm))).toEqual([840, 1120]);
  const [a, b] = rings(drawing);
  expect(((a?.[0] ?? 0) - (wall?.x ?? 0)) / perMm).toBeCloseTo(1025);
  expect(((b?.[0] ?? 0) - (a?.[0] ?? 0)) / perMm).toBeCloseTo(650);
  // 1260 - 1020 = 240 under the frame's top
  expect(((a?.[1] ?? 0) - (box?.y ?? 0)) / perMm).toBeCloseTo(240);
});

test('the chain over the wall is what a tape reads, from the left end, between the marks, to the right end', () => {
  expect(said(drawn(MARKS, FRAME), 'figure')).toEqual(['1025', '650', '1025', '1020']);
});

test('marks of two heights are each measured up', () => {
  const uneven = [mark('A', 1025, 1675, { upMm: 1020 }), mark('B', 1675, 1025, { upMm: 1012.5 })];
  expect(said(drawn(uneven, FRAME), 'figure')?.slice(3)).toEqual(['1020', '1012.5']);
});

test.each([
  [
    'of a known height',
    [mark('A', 600, 900, { upMm: 2010, downMm: 390 })],
    frame(300, 1200, 1350, 2250),
    ['600', '900', '390'],
  ],
  [
    'of an unknown height',
    [mark('A', 600, 900, { downMm: 390 })],
    frame(300, 1200, -1050, -150),
    ['600', '900', '390'],
  ],
])(
  'under a ceiling %s heights are measured down from it, at the top of the drawing',
  (_, marks, of, figures) => {
    const drawing = drawn(marks, of, { datum: { kind: 'ceiling' } });
    expect(said(drawing, 'figure')).toEqual(figures);
    expect(said(drawing, 'datum-name')).toEqual(['ceiling']);
    const perMm = drawing?.perMm ?? 1;
    expect(((boxOf(drawing, 'frame')?.y ?? 0) - (boxOf(drawing, 'wall')?.y ?? 0)) / perMm).toBeCloseTo(150);
  },
);

test('plates on this face are drawn where they are, those on the far face are not', () => {
  const accessories: Wall['accessories'] = [
    { kind: 'socket', face: 'this', xMm: mm(600), yMm: mm(300) },
    { kind: 'socket', face: 'far', xMm: mm(900), yMm: mm(300) },
  ];
  const drawing = drawn(MARKS, FRAME, { datum: { kind: 'floor' }, accessories });
  const plates = drawing?.shapes.filter((shape) => shape.class === 'plate') ?? [];
  expect(plates).toHaveLength(1);
  const middle = (plates[0]?.at.x ?? 0) + (plates[0]?.at.width ?? 0) / 2;
  expect((middle - (boxOf(drawing, 'wall')?.x ?? 0)) / (drawing?.perMm ?? 1)).toBeCloseTo(600);
});

test('a plan that stops draws nothing', () => {
  expect(drawn([], null)).toBeNull();
  expect(drawn([], FRAME)).toBeNull();
});

test.each([400, 1200, 2700, 9000])('a wall of %i mm stays within the drawing', (width) => {
  const third = Math.round(width / 3);
  const drawing = drawn(
    [mark('A', third, width - third, { upMm: 1500 })],
    frame(third - 100, third + 100, 1200, 1600),
  );
  for (const { at, text } of drawing?.shapes ?? []) {
    if (text !== undefined) continue;
    for (const x of [at.x, at.x1, at.x2, at.cx])
      if (x !== undefined) expect(x >= 0 && x <= (drawing?.width ?? 0)).toBe(true);
    for (const y of [at.y, at.y1, at.y2, at.cy])
      if (y !== undefined) expect(y >= 0 && y <= (drawing?.height ?? 0)).toBe(true);
  }
});

test('clips one above the other are one stop of the chain, and each height is measured up', () => {
  const clips = [
    mark('A', 1025, 1675, { upMm: 1920 }),
    mark('B', 1025, 1675, { upMm: 800 }),
    mark('C', 1675, 1025, { upMm: 1920 }),
    mark('D', 1675, 1025, { upMm: 800 }),
  ];
  expect(said(drawn(clips, frame(930, 1770, 800, 1920)), 'figure')).toEqual([
    '1025',
    '650',
    '1025',
    '1920',
    '800',
  ]);
});
