import { expect, test } from 'vitest';
import type { Frame, Mark } from '../../../core/plan-shape.ts';
import { mm } from '../../../core/quantity.ts';
import { drawn, FRAME, frame, MARKS, mark, rings, said, type Wall } from './drawn.ts';

test('of a long wall only the stretch about the frame is drawn, and its chain still reads the whole', () => {
  const pair = [mark('A', 360, 8640, { upMm: 1550 }), mark('B', 640, 8360, { upMm: 1550 })];
  const drawing = drawn(pair, frame(300, 700, 1350, 1650));
  expect(drawing?.isCut).toBe(true);
  expect(drawing?.shapes.filter((shape) => shape.class === 'cut')).toHaveLength(1);
  expect(said(drawing, 'figure')).toEqual(['360', '280', '8360', '1550']);
  const [a, b] = rings(drawing);
  // 24 units apart at least, or nobody can tell the marks apart
  expect((b?.[0] ?? 0) - (a?.[0] ?? 0)).toBeGreaterThanOrEqual(24);
  expect(drawn(MARKS, FRAME)?.isCut).toBe(false);
});

/** [what it is, marks, frame, what of the wall is known] */
const CROWDED: [string, Mark[], Frame, Partial<Wall>][] = [
  ['a mirror over a mantel', MARKS, FRAME, { datum: { kind: 'mantel' } }],
  [
    'two hooks side by side under one cord',
    [mark('A', 1310, 1390, { upMm: 1600 }), mark('B', 1390, 1310, { upMm: 1600 })],
    frame(1100, 1600, 1300, 1700),
    {},
  ],
  [
    'clips at the foot of a frame',
    [mark('A', 1025, 1675, { upMm: 800 }), mark('B', 1350, 1350, { upMm: 800 })],
    frame(930, 1770, 800, 1920),
    {},
  ],
  [
    'a small picture in the corner of a long wall',
    [mark('A', 360, 8640, { upMm: 1550 }), mark('B', 640, 8360, { upMm: 1550 })],
    frame(300, 700, 1350, 1650),
    {},
  ],
  [
    'a picture low over a sideboard',
    [mark('A', 1025, 1675, { upMm: 610 }), mark('B', 1675, 1025, { upMm: 610 })],
    frame(930, 1770, 150, 850),
    { datum: { kind: 'furniture', aboveFloorMm: mm(850) }, heightMm: mm(2400) },
  ],
];

test.each(CROWDED)('no figure or letter of %s lies on another', (_, marks, of, wall) => {
  const letters = (drawn(marks, of, wall)?.shapes ?? []).filter((shape) => shape.text !== undefined);
  const boxes = letters.map(({ class: name, at: { x = 0, y = 0 }, text = '' }) => {
    const long = text.length * 7;
    const left = name.includes('end') ? x - long : name.includes('start') ? x : x - long / 2;
    return { text, left, right: left + long, top: y - 10, bottom: y };
  });
  const over = boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter((two) => one.left < two.right && two.left < one.right)
      .filter((two) => one.top < two.bottom && two.top < one.bottom)
      .map((two) => `${one.text} on ${two.text}`),
  );
  expect(over).toEqual([]);
});
