import { describe, expect, test } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { hear } from '../as-said.ts';

const points = (say: string, known = {}) =>
  hear(say, 'piece.hanging', { known }).facts[0]?.value.piece?.hanging?.points;

/** Invented by us: so far apart is half of it either side of the middle, until the width is known. */
describe('hangers so far apart', () => {
  test.each([
    ['keyholes 400 apart, 50 down, centred', 200, 50],
    ['keyhole slots 400mm apart 50 down', 200, 50],
    ['rings 400 apart, 50 down, centred', 200, 50],
    ['keyholes at 400 centres, 30 down', 200, 30],
    ['two keyholes, 400 between centres, 30 from the top', 200, 30],
    ['cord, rings 640 apart and 200 down, one hook, rises 60', 320, 200],
  ])('"%s" are two, %d from the middle and %d down', (say, half, down) => {
    expect(points(say)).toEqual([
      { fromCentreMm: -half, fromTopMm: down },
      { fromCentreMm: half, fromTopMm: down },
    ]);
  });

  test('on a frame 600 wide, 400 apart is (600 - 400) / 2 = 100 in from each side', () => {
    expect(points('keyholes 400 apart, 50 down, centred', { piece: { widthMm: mm(600) } })).toEqual([
      { fromLeftMm: 100, fromTopMm: 50 },
      { fromRightMm: 100, fromTopMm: 50 },
    ]);
  });

  test('of three rings so far apart the places are asked', () => {
    const { facts, asks } = hear('three rings 300 apart, 50 down', 'piece.hanging');
    expect(facts).toEqual([]);
    expect(asks.map(({ question }) => question)).toEqual(['piece.hanging']);
  });

  test('the rings of a cord are not its hooks', () => {
    const reading = hear('cord, rings 640 apart and 200 down, one hook, rises 60', 'piece.hanging');
    expect(reading.facts[0]?.value.piece?.hanging?.hooksApartMm).toBe(0);
  });
});
