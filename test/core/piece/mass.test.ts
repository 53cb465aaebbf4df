import { expect, test } from 'vitest';
import { comOf } from '../../../core/piece/centre-of-mass.ts';
import { massOf } from '../../../core/piece/mass.ts';
import type { Build } from '../../../core/piece/piece.ts';
import { kg, mm } from '../../../core/quantity.ts';

const size = { widthMm: mm(1020), heightMm: mm(720) };
const glass: Build = { glazing: { material: 'glass', thicknessMm: mm(4) } };

test('a mass that was weighed is taken as it is', () => {
  expect(massOf({ ...size, massKg: kg(24), build: glass })).toMatchObject({ massKg: 24, estimated: false });
});

test.each<[string, Build, number]>([
  ['glass alone, 1.02 x 0.72 x 4 x 2.5', glass, 7.344],
  [
    'MASS-03 (from memory): 4 mm glass, 60 x 20 hardwood, 3 mm fibreboard, 9.3366',
    {
      ...glass,
      frame: { material: 'hardwood', widthMm: mm(60), thicknessMm: mm(20) },
      backing: { material: 'mdf', thicknessMm: mm(3) },
    },
    9.3366,
  ],
  [
    'hollow aluminium at 0.8 kg/m round 3.48 - 4 x 0.02 = 3.4 m (trade 4.2, common practice)',
    { frame: { material: 'aluminium', widthMm: mm(20), thicknessMm: mm(30) } },
    2.72,
  ],
  [
    '20 x 20 x 1.5 steel tube, (80 - 6) x 1.5 = 111 mm2 at 7850 round 3.4 m (trade 4.2: 0.85 kg/m)',
    { frame: { material: 'steel', widthMm: mm(20), thicknessMm: mm(20) } },
    2.96259,
  ],
])('an estimate is the sum of the layers and a tenth more: %s', (_, build, bare) => {
  const mass = massOf({ ...size, build });
  expect(mass.estimated).toBe(true);
  expect(mass.massKg).toBeCloseTo(bare * 1.1, 4);
  expect(mass.basis.length).toBeGreaterThan(1);
});

test('a piece of unknown mass weighs more than anything can be said to hold', () => {
  expect(massOf(size).massKg).toBe(Number.POSITIVE_INFINITY);
  expect(massOf({ ...size, build: {} }).massKg).toBe(Number.POSITIVE_INFINITY);
});

test('a frame wider than half the piece leaves no glass, not less than none', () => {
  const build: Build = { ...glass, frame: { material: 'oak', widthMm: mm(600), thicknessMm: mm(20) } };
  expect(massOf({ ...size, build }).massKg).toBeGreaterThanOrEqual(0);
});

test.each([
  ['its depth from the wall and at mid-width', { depthMm: mm(30) }, 30, 510, 0],
  ['where it was said to be', { depthMm: mm(30), comFromWallMm: mm(22), comFromLeftMm: mm(480) }, 22, 480, 0],
  ['40 from the wall when no depth was given, and that is said', {}, 40, 510, 1],
])('the centre of mass lies %s (contract 4)', (_, given, fromWallMm, fromLeftMm, assumed) => {
  const com = comOf({ ...size, ...given });
  expect(com).toMatchObject({ fromWallMm, fromLeftMm });
  expect(com.assumptions).toHaveLength(assumed);
});
