import { basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { SLEEVE_BEYOND } from './fit-hole.ts';
import type { Place } from './fixing-place.ts';
import { HOLE_BEYOND } from './hole.ts';
import type { Weighed } from './masonry-weigh.ts';
import { shankMm } from './walk-row.ts';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const BASIS = [basisOf(HOLE_BEYOND)];

/** Why a hole in masonry is that deep, and the screw that long. */
export function holeWhys(weighed: Weighed, place: Place): Why[] {
  const { row } = weighed;
  // Board on dabs, its coat and the gap are one thickness before the masonry.
  const before = place.job.wall.baseMaterial === 'plasterboard-on-dabs' ? 'boardAndGapMm' : 'finishMm';
  const inside = row.plugMm === undefined ? 'inBaseMm' : 'plugMm';
  const named = { before, inside, finishMm: tenth(place.finish.thicknessMm) };
  return [
    row.fastener === 'resin-stud' ? resinDepth(weighed, named) : depthWhy(weighed, named),
    lengthWhy(weighed, named, place),
  ];
}

type Named = { before: string; inside: string; finishMm: number };

function resinDepth({ hole, row }: Weighed, { before, finishMm }: Named): Why {
  return {
    of: 'hole depth',
    formula: 'finish + depth in the base material, and 5 more behind a sleeve',
    inputs: {
      [before]: finishMm,
      inBaseMm: hole.plugMm,
      behindSleeveMm: row.sleeve ? SLEEVE_BEYOND.value : 0,
    },
    result: `${hole.depthMm} mm`,
    basis: row.sleeve ? [...BASIS, basisOf(SLEEVE_BEYOND)] : BASIS,
    symbols: `up(${before} + inBaseMm + behindSleeveMm)`,
  };
}

function depthWhy({ hole, row }: Weighed, { before, inside, finishMm }: Named): Why {
  const { plugMm, screwMm } = HOLE_BEYOND.value;
  const inserted = row.spans ? inside : `${before} + ${inside}`;
  return {
    of: 'hole depth',
    formula: row.spans
      ? 'the larger of plug + 10 and screw - outside part + 5; the plug runs through what is before the masonry'
      : 'the larger of finish + plug + 10 and screw - outside part + 5',
    inputs: {
      [before]: finishMm,
      [inside]: hole.plugMm,
      screwMm: tenth(hole.screwMm),
      outsideMm: tenth(hole.outsideMm),
      beyondPlugMm: plugMm,
      beyondScrewMm: screwMm,
    },
    result: `${hole.depthMm} mm`,
    basis: BASIS,
    symbols: `up(max(${inserted} + beyondPlugMm, screwMm - outsideMm + beyondScrewMm))`,
  };
}

function lengthWhy({ hole, row }: Weighed, { before, inside, finishMm }: Named, { shelf }: Place): Why {
  const inWall = row.spans ? hole.plugMm : finishMm + hole.plugMm;
  const outside = hole.stocked ? 'outsideMm' : 'outsidePartMm';
  return {
    of: 'screw length',
    formula: hole.stocked
      ? 'outside part + finish + plug, one diameter more where stocked, then the next stocked length'
      : row.spans
        ? 'outside part + plug, whose own screw it is'
        : 'outside part (of a stud: with its nut and washers) + finish + depth in the base material',
    inputs: {
      [outside]: tenth(hole.stocked ? hole.outsideMm : hole.screwMm - inWall),
      [before]: finishMm,
      [inside]: hole.plugMm,
      diameterMm: tenth(shankMm(row.shank)),
      shelf,
    },
    result: `${tenth(hole.screwMm)} mm`,
    basis: BASIS,
    symbols: `${hole.stocked ? 'stocked' : ''}(${outside} + ${row.spans ? '' : `${before} + `}${inside})`,
  };
}
