import { describe, expect, test } from 'vitest';
import { stopsSoFar } from '../../../../core/caution/rules.ts';
import { kg } from '../../../../core/quantity.ts';

const stops = (massKg: number, hanger: 'sawtooth' | 'ring') =>
  stopsSoFar({ piece: { massKg: kg(massKg), hanging: { by: 'rings', hanger } } }).map(({ id }) => id);

describe('weak hangers (safety-and-layout, C-HG-3, common practice)', () => {
  test.each([
    [5, 'sawtooth', false],
    [5.1, 'sawtooth', true],
    [8, 'sawtooth', true],
    [8, 'ring', false],
  ] as const)('%d kg on a %s: stopped is %s', (massKg, hanger, isStopped) => {
    expect(stops(massKg, hanger).includes('C-HG-3')).toBe(isStopped);
  });
});
