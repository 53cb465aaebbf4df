import { type Basis, basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import type { Place } from '../masonry/fixing-place.ts';
import type { Weighed } from '../masonry/masonry-weigh.ts';
import { shankMm } from '../masonry/walk-row.ts';
import { walkOf } from '../masonry/walks.ts';
import { nominalOf } from '../steel/screw-sizes.ts';

/** Why that bit, that plug, that gauge and that many: pairings of common practice, which no standard gives. */
export function pairingWhys({ row, count, hole }: Weighed, { job, setOut }: Place): Why[] {
  const walk = walkOf(job.wall);
  const basis = walk ? [basisOf(walk)] : [];
  const whys: Why[] = [
    {
      of: 'bit diameter',
      formula: row.plugMm === undefined ? 'as the anchor is sold for' : 'the plug’s own diameter',
      inputs: { holeMm: row.holeMm },
      result: `${row.holeMm} mm`,
      basis,
    },
    row.onBattenWholeKg === undefined
      ? oneAtEachMark(count, basis)
      : {
          of: 'number of fixings',
          formula: 'as many as the batten takes at the spacing of plugs',
          inputs: { marks: setOut.marks.length },
          result: `${count}`,
          basis,
        },
  ];
  if (row.plugMm !== undefined) {
    whys.push({
      of: 'plug',
      formula: 'the lightest of the walk for this wall whose screw and cap hold',
      inputs: { wall: job.wall.baseMaterial, diameterMm: row.holeMm, lengthMm: hole.plugMm },
      result: `${row.holeMm} x ${hole.plugMm} mm`,
      basis,
    });
  }
  if (typeof row.shank !== 'number') {
    whys.push({
      of: 'screw diameter',
      formula: 'the shank this fixing is sold with',
      inputs: { shank: row.shank },
      result: `${shankMm(row.shank)} mm`,
      basis,
    });
  } else {
    whys.push({
      of: 'screw gauge',
      formula: 'the thinnest that opens this plug and does not bend: 0.060 + 0.013 x gauge, in inches',
      inputs: { gauge: row.shank },
      result: `${row.shank} gauge, ${Math.round(nominalOf(row.shank).nominalMm * 10) / 10} mm`,
      basis,
    });
  }
  return whys;
}

/** How many, where each mark takes one. */
export function oneAtEachMark(marks: number, basis: readonly Basis[]): Why {
  return {
    of: 'number of fixings',
    formula: 'one at each mark',
    inputs: { marks },
    result: `${marks}`,
    basis,
    symbols: 'marks',
  };
}
