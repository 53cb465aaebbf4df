import type { Basis } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { type Gauge, nominalOf } from '../steel/screw-sizes.ts';

/** What was picked for a fastening from its line of the walk: how many, which bit, which pilot, which screw. Millimetres. */
export type Picked = {
  readonly marks: number;
  readonly count: number;
  readonly bitMm?: number;
  readonly pilotMm?: number;
  readonly gauge?: Gauge;
  readonly diameterMm?: number;
};

/** Why each of those: the line of the walk that names it. */
export function pickedWhys(picked: Picked, basis: readonly Basis[]): Why[] {
  const { marks, count, bitMm, pilotMm, gauge, diameterMm } = picked;
  const whys: Why[] = [
    {
      of: 'number of fixings',
      formula: count === marks ? 'one at each mark' : 'as many as stand at each place',
      inputs: { marks },
      result: `${count}`,
      basis,
    },
  ];
  if (bitMm !== undefined)
    whys.push({
      of: 'bit diameter',
      formula: 'the hole this is sold for',
      inputs: { holeMm: bitMm },
      result: `${bitMm} mm`,
      basis,
      paths: ['fixing.bit.diameterMm'],
    });
  if (pilotMm !== undefined)
    whys.push({
      of: 'pilot hole',
      formula: 'the pilot its line names',
      inputs: { holeMm: pilotMm },
      result: `${pilotMm} mm`,
      basis,
      paths: ['fixing.pilot.diameterMm'],
    });
  if (gauge !== undefined)
    whys.push({
      of: 'screw gauge',
      formula: 'the gauge its line names: 0.060 + 0.013 x gauge, in inches',
      inputs: { gauge },
      result: `${gauge} gauge, ${Math.round(nominalOf(gauge).nominalMm * 10) / 10} mm`,
      basis,
    });
  else if (diameterMm !== undefined)
    whys.push({
      of: 'screw diameter',
      formula: 'the bolt it is sold with',
      inputs: { diameterMm },
      result: `${diameterMm} mm`,
      basis,
    });
  return whys;
}
