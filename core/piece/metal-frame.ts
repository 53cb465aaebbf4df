import { type Kilograms, kg, type Millimetres } from '../quantity.ts';
import { type Basis, basisOf, sourced } from '../sources.ts';
import { STEEL_DENSITY } from './densities.ts';

const MM_PER_M = 1000;
const MM3_PER_M3 = 1e9;

const ALUMINIUM_PER_METRE = sourced(
  0.8,
  'common-practice',
  'trade 4.2: hollow aluminium moulding 0.3 to 0.8 kg/m, the heavier end',
  'common-practice',
);
const STEEL_TUBE_WALL = sourced(
  1.5,
  'common-practice',
  'trade 4.2: steel tube 1.5 mm thick',
  'common-practice',
);

/**
 * Mass of a metal frame, which is hollow: aluminium by the metre, steel as a tube of
 * (2 (b + t) - 4 s) s. Millimetres in, kilograms out. Not for solid bars: those want a scale.
 */
export function metalFrameMass(
  material: 'aluminium' | 'steel',
  lengthMm: Millimetres,
  faceMm: Millimetres,
  thicknessMm: Millimetres,
): { name: string; massKg: Kilograms; basis: Basis } {
  if (material === 'aluminium') {
    const massKg = kg((Math.max(lengthMm, 0) / MM_PER_M) * ALUMINIUM_PER_METRE.value);
    return { name: 'frame', massKg, basis: basisOf(ALUMINIUM_PER_METRE) };
  }
  const wall = STEEL_TUBE_WALL.value;
  const section = Math.max(2 * (faceMm + thicknessMm) - 2 * 2 * wall, 0) * wall;
  const massKg = kg((section * Math.max(lengthMm, 0) * STEEL_DENSITY.value) / MM3_PER_M3);
  return { name: 'frame', massKg, basis: basisOf(STEEL_TUBE_WALL) };
}
