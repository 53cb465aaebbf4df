import { describe, expect, test } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';

const wall = (widthMm: number, heightMm: number) => ({ 'wall.widthMm': widthMm, 'wall.heightMm': heightMm });
const piece = (widthMm: number, heightMm: number) => ({
  'piece.widthMm': widthMm,
  'piece.heightMm': heightMm,
});

/** Invented by us. Feet are exact: 304.8 mm. No room is under 1800 high, so a lower pair is the piece's. */
const ROWS: Row[] = [
  [null, 'mirror 900x1200, brick, wall 3.4 x 2.4', { ...wall(3400, 2400), ...piece(900, 1200) }],
  [null, 'wall 3.4 x 2.4', wall(3400, 2400)],
  [null, 'mirror on a wall 3.4m x 2.4m', { ...wall(3400, 2400), 'piece.kind': 'mirror' }],
  [null, 'wall is 3.4 by 2.4 metres, picture 800x600', { ...wall(3400, 2400), ...piece(800, 600) }],
  [null, 'on a 3.4m by 2.4m brick wall', { ...wall(3400, 2400), 'wall.baseMaterial': 'clay-brick' }],
  [null, 'wall 3400 x 2400, mirror 900 x 1200', { ...wall(3400, 2400), ...piece(900, 1200) }],
  [null, "wall 11' x 8'", wall(11 * 304.8, 8 * 304.8)],
  ['piece.size', 'wall 3.4 x 2.4', { ...wall(3400, 2400), 'piece.widthMm': undefined }],
  ['wall.widthMm', '3.4 x 2.4', wall(3400, 2400)],
  ['wall.widthMm', '4m wide 2.4m high', wall(4000, 2400)],
  [null, 'brick wall 900x1200 mirror', { ...piece(900, 1200), 'wall.widthMm': undefined }],
  [null, 'mirror 900x1200 brick wall', { ...piece(900, 1200), 'wall.thicknessMm': undefined }],
  [null, 'big mirror 1500 x 2000 brick wall 4m wide', { ...piece(1500, 2000), 'wall.widthMm': 4000 }],
  [null, '900 x 1200 in the hall, 24kg', { ...piece(900, 1200), 'piece.massKg': 24 }],
  [null, 'mirror 900 by 1200 in my hallway', piece(900, 1200)],
];

describe('two figures for a wall', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });

  const known = { piece: { widthMm: mm(900), heightMm: mm(1200) } };
  test.each([null, 'piece.massKg', 'piece.hanging', 'wall.accessories'] as const)(
    '"3.4m" alone to %s, once the piece is measured: width or height of the wall is asked',
    (awaiting) => {
      const { facts, asks } = hear('3.4m', awaiting, { known });
      expect(facts).toEqual([]);
      const readings = asks.find(({ question }) => question === 'wall.widthMm')?.readings ?? [];
      expect(readings.map(({ fact }) => fact?.value)).toEqual([
        { wall: { widthMm: 3400 } },
        { wall: { heightMm: 3400 } },
      ]);
    },
  );

  test('"30x40 in the hall" names a hall, and the unit is asked', () => {
    const { asks } = hear('mirror 30x40 in the hall', null);
    expect(asks.map(({ question }) => question)).toEqual(['piece.size']);
  });
});
