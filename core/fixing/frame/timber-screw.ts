import { type Millimetres, mm, toTenth, weightOf } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { envelope, type PointLoad, type WorstCheck, worse } from '../acting/worst-check.ts';
import { splitBattenPoint } from '../batten/batten-actions.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { BATTEN } from '../stand-off.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { type StockedScrew, stockedScrew } from '../stocked-lengths.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { bareStudStrength, cleatStrength, type StudStrength } from '../timber/stud-strength.ts';
import { throughPanel } from '../timber/through-panel.ts';
import { LEAD_HOLE, pilotHole } from '../timber/timber-species.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { pickedWhys } from '../told/picked-whys.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import { TIMBER } from './timber-rules.ts';

/** A screw in solid wood wants this much in it; behind its point this much is left. */
const IN_WOOD_MM = 38;
const LEFT_MM = 3;
/** Below this nothing is reckoned in solid wood. */
const LEAST_MM = 20;

/** A wood screw at every mark: deep in solid timber, or right through a lining board. */
export function timberScrew(
  gauge: Gauge,
  thickMm: Millimetres,
  place: BoardPlace,
  how: 'solid' | 'right-through',
): Candidate | Unusable {
  const fastener = 'timber-screw';
  const solid = how === 'solid';
  const name = `${gauge} gauge wood screw ${solid ? 'in solid timber' : 'right through the board'}`;
  const no = (because: string): Unusable => ({ ok: false, fastener, name, because });
  const { job, setOut, load, batten, shelf } = place;
  const coatMm = mm(place.beyondMm - place.boardMm);
  const outsideMm = mm(place.outsideMm + coatMm);
  const wanted = solid ? Math.min(IN_WOOD_MM, thickMm - LEFT_MM) : thickMm;
  const head = batten ? 'countersunk' : job.piece.hanging.by === 'keyholes' ? 'pan-only' : 'pan-first';
  const longest = mm(outsideMm + thickMm);
  const next = (intoMm: number): StockedScrew | null =>
    stockedScrew(shelf, head, gauge, mm(outsideMm + intoMm), mm(0));
  let stocked = next(wanted);
  // The next length up may come out behind: then the longest that stays inside.
  for (let into = wanted - 1; solid && into >= LEAST_MM && (stocked?.screwMm ?? longest) > longest; into -= 1)
    stocked = next(into);
  if (stocked === null) return no('no screw of that gauge is stocked that long');
  const inWoodMm = mm(Math.min(stocked.screwMm - outsideMm, thickMm));
  if (solid && stocked.screwMm > longest) return no('every stocked screw would come out behind');

  const strength = strengthOf(gauge, inWoodMm, stocked.screwMm, coatMm, place, how);
  const cap = solid ? TIMBER.value.solid[gauge] : TIMBER.value.rightThroughKg;
  const points: readonly PointLoad[] = batten ? splitBattenPoint(job, setOut, load) : load.actions.perMark;
  let worst: WorstCheck | null = null;
  for (const each of points) worst = worse(worst, studCheck(each, strength, weightOf(cap)));
  if (worst === null) return no('there is no mark for it');
  const held = worst;
  const point = envelope(points);
  const diameterMm = mm(Math.round(pilotHole(WOOD_SCREW_ROOT.value[gauge], 'softwood') * 10) / 10);
  const depthMm = mm(Math.ceil(coatMm + inWoodMm));
  const route = timberRouteOf(job.building?.country);
  return {
    ok: true,
    fastener,
    name: `${name}, ${Math.round(stocked.screwMm)} long`,
    usualKg: solid ? TIMBER.value.usualSolidKg : TIMBER.value.usualThroughKg,
    point,
    worst: held,
    fixing: (): Fixing => ({
      fastener,
      count: setOut.marks.length,
      bit: { kind: place.tiled ? 'tile' : 'wood', action: 'rotary', diameterMm, depthMm },
      pilot: { diameterMm, depthMm },
      screw: {
        gauge,
        diameterMm: nominalOf(gauge).nominalMm,
        lengthMm: stocked.screwMm,
        head: batten ? 'countersunk' : head === 'pan-only' ? 'round' : stocked.washer ? 'washer' : 'pan',
      },
      note: [
        'Across the grain, never into end grain, a tongue or soft, dark or wormed wood. Wax the screw; stainless in green oak or damp. In hardwood the pilot is 90 % of the root.',
        ...(solid ? [] : ['Know what is behind the board: the point comes out there.']),
        ...hangerNote(job.piece.hanging.by, nominalOf(gauge).nominalMm),
      ].join(' '),
      governing: governingOf(held),
      utilisation: held.utilisation,
    }),
    why: () => [
      {
        of: 'timber route',
        formula: route.name,
        inputs: { country: job.building?.country ?? 'unknown' },
        result: route.id,
        basis: route.basis,
      },
      {
        of: 'hole depth',
        formula: 'coat + screw in the wood, drilled to its full depth',
        inputs: { coatMm: toTenth(coatMm), inWoodMm: toTenth(inWoodMm) },
        result: `${depthMm} mm`,
        basis: strength.basis,
        symbols: 'up(coatMm + inWoodMm)',
      },
      {
        of: 'pilot hole',
        formula: '70 % of the root in softwood',
        inputs: {
          rootMm: Math.round(WOOD_SCREW_ROOT.value[gauge].rootMm * 100) / 100,
          shareOfRoot: LEAD_HOLE.value.softwood,
        },
        result: `${diameterMm} mm`,
        basis: [basisOf(LEAD_HOLE)],
        symbols: 'shareOfRoot x rootMm',
      },
      {
        of: 'screw length',
        formula: 'outside part + coat + what goes in the wood, the next stocked length',
        inputs: {
          outsidePartMm: toTenth(outsideMm),
          wantedInWoodMm: toTenth(mm(Math.min(wanted, inWoodMm))),
          shelf,
        },
        result: `${Math.round(stocked.screwMm * 10) / 10} mm`,
        basis: [basisOf(TIMBER)],
        symbols: 'stocked(outsidePartMm + wantedInWoodMm)',
      },
      ...pickedWhys({ marks: setOut.marks.length, count: setOut.marks.length, gauge }, [basisOf(TIMBER)]),
      ...utilisationWhy(held, point),
    ],
    advice: [],
    taken: route.taken,
  };
}

function strengthOf(
  gauge: Gauge,
  inWoodMm: Millimetres,
  lengthMm: Millimetres,
  coatMm: Millimetres,
  { batten, standOffMm, job }: BoardPlace,
  how: 'solid' | 'right-through',
): StudStrength {
  const route = timberRouteOf(job.building?.country);
  const armMm = mm(coatMm + standOffMm);
  if (batten) return cleatStrength(route, gauge, inWoodMm, coatMm, BATTEN.value.thicknessMm, lengthMm);
  return how === 'solid'
    ? bareStudStrength(route, gauge, inWoodMm, armMm, lengthMm)
    : throughPanel(route, gauge, inWoodMm, armMm);
}
