import { mm, toTenth } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Why } from '../../why.ts';
import type { Fixing } from '../fixing-shape.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { timberRouteOf } from '../timber/route.ts';
import { LEAD_HOLE, pilotHole } from '../timber/timber-species.ts';
import type { BoardPlace } from './board-place.ts';
import type { FittedStudScrew } from './stud-fit.ts';

/** Bit and pilot of a screw into a stud: the pilot runs its full depth. */
export function pilotOf(
  gauge: Gauge,
  fitted: FittedStudScrew,
  { beyondMm, throughSheet }: BoardPlace,
): Pick<Fixing, 'bit' | 'pilot'> {
  const diameterMm = mm(Math.round(pilotHole(WOOD_SCREW_ROOT.value[gauge], 'softwood') * 10) / 10);
  const depthMm = mm(Math.ceil(beyondMm + fitted.inWoodMm));
  const pilot = { diameterMm, depthMm };
  if (throughSheet) return { bit: { ...throughSheet, action: 'rotary' }, pilot };
  return { bit: { kind: 'wood', action: 'rotary', ...pilot }, pilot };
}

/** Why that pilot and that length. */
export function studWhys(gauge: Gauge, fitted: FittedStudScrew, place: BoardPlace): Why[] {
  const { beyondMm, shelf } = place;
  const country = place.job.building?.country ?? 'unknown';
  const { basis, name, id } = timberRouteOf(country);
  const rootMm = Math.round(WOOD_SCREW_ROOT.value[gauge].rootMm * 100) / 100;
  return [
    { of: 'timber route', formula: name, inputs: { country }, result: id, basis },
    {
      of: 'hole depth',
      formula: 'board and finish + screw in the wood, drilled to its full depth',
      inputs: { beyondMm: toTenth(beyondMm), inWoodMm: toTenth(fitted.inWoodMm) },
      result: `${Math.ceil(beyondMm + fitted.inWoodMm)} mm`,
      basis,
      symbols: 'up(beyondMm + inWoodMm)',
      ...(place.throughSheet && { paths: ['fixing.pilot.depthMm'] }),
    },
    ...(place.throughSheet ? sheetWhys(place.throughSheet) : []),
    {
      of: 'screw gauge',
      formula: 'the thinnest of the walk that holds: 0.060 + 0.013 x gauge, in inches',
      inputs: { gauge },
      result: `${gauge} gauge, ${Math.round(nominalOf(gauge).nominalMm * 10) / 10} mm`,
      basis,
    },
    {
      of: 'pilot hole',
      formula: '70 % of the root in softwood',
      inputs: { rootMm, shareOfRoot: LEAD_HOLE.value.softwood },
      result: `${Math.round(LEAD_HOLE.value.softwood * rootMm * 10) / 10} mm`,
      basis: [basisOf(LEAD_HOLE)],
      symbols: 'shareOfRoot x rootMm',
      ...(place.throughSheet && { paths: ['fixing.pilot.diameterMm'] }),
    },
    {
      of: 'screw length',
      formula: 'outside part + board and finish + what goes in the wood, the next stocked length',
      inputs: { outsideMm: toTenth(fitted.outsideMm), beyondMm: toTenth(beyondMm), shelf },
      result: `${Math.round(fitted.screwMm * 10) / 10} mm, ${Math.round(fitted.inWoodMm * 10) / 10} in the wood`,
      basis,
      symbols: 'stocked(outsideMm + beyondMm)',
    },
  ];
}

/** The first bit, where tile, plaster or a hard sheet needs its own. */
const sheetWhys = ({ diameterMm, depthMm }: NonNullable<BoardPlace['throughSheet']>): Why[] => [
  {
    of: 'hole depth',
    formula: 'through the tile, the plaster or the sheet and no further',
    inputs: { openedMm: depthMm },
    result: `${depthMm} mm`,
    basis: [basisOf(THROUGH_SHEET)],
    symbols: 'openedMm',
    paths: ['fixing.bit.depthMm'],
  },
  {
    of: 'bit diameter',
    formula: 'clear of the screw, as the walk names it',
    inputs: { holeMm: diameterMm },
    result: `${diameterMm} mm`,
    basis: [basisOf(THROUGH_SHEET)],
    paths: ['fixing.bit.diameterMm'],
  },
];

const THROUGH_SHEET = sourced(
  0,
  'common-practice',
  'masonry 5 through plaster; carbide 5.5 to 7 in fibre cement; an oversize hole in a tile',
  'common-practice',
);
