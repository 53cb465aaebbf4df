import type { Fixing, Why } from '../../plan-shape.ts';
import { type Millimetres, mm, toTenth } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { knownStuds, landing } from '../../wall/studs.ts';
import { envelope, type WorstCheck, worse } from '../acting/worst-check.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { type HeadWanted, stockedScrew } from '../stocked-lengths.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { bareStudStrength } from '../timber/stud-strength.ts';
import { LEAD_HOLE, pilotHole } from '../timber/timber-species.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { oneAtEachMark } from '../told/why-it-fits.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';

/** A screw straight into the stud at every mark that carries. `intoMm` is what is wanted in the wood. */
export function studCandidate(gauge: Gauge, intoMm: number, place: BoardPlace): Candidate | Unusable {
  const name = `${gauge} gauge screw into the stud`;
  const no = (because: string): Unusable => ({ ok: false, fastener: 'stud-screw', name, because });
  const { job, setOut, load, beyondMm, standOffMm, shelf } = place;
  if (job.piece.hanging.by === 'batten') return no('the piece hangs on a batten');
  const studs = knownStuds(job.wall);
  if (!studs) return no('where the studs are is not known; find them first, it is the better fixing');
  const nominal = nominalOf(gauge);
  const carrying = setOut.marks.filter((_, at) => (load.actions.perMark[at]?.shearN ?? 0) > 0);
  const missing = carrying.filter((mark) => !landing(mark.fromLeftMm, studs, nominal.nominalMm).on);
  if (missing.length > 0)
    return no(
      `${missing.length === 1 ? 'mark' : 'marks'} ${missing.map((mark) => mark.id).join(' and ')} can’t take it: not enough timber round the screw`,
    );
  const keyholes = job.piece.hanging.by === 'keyholes';
  const head = keyholes ? 'pan-only' : 'pan-first';
  const fitted = fitStudScrew(gauge, intoMm, standOffMm, beyondMm, shelf, head);
  if (fitted === null)
    return no(`no ${keyholes ? 'pan or round head' : 'screw'} of that gauge is stocked that long`);

  const arm = mm(beyondMm + standOffMm);
  const route = timberRouteOf(job.building?.country);
  const strength = bareStudStrength(route, gauge, fitted.inWoodMm, arm, fitted.screwMm);
  const cap = place.studCapOf(gauge);
  let worst: WorstCheck | null = null;
  for (const each of load.actions.perMark) worst = worse(worst, studCheck(each, strength, cap));
  if (worst === null) return no('there is no mark for it');
  const held = worst;
  const point = envelope(load.actions.perMark);
  return {
    ok: true,
    fastener: 'stud-screw',
    name: `${name}, ${Math.round(fitted.screwMm)} long`,
    point,
    worst: held,
    fixing: () => studFixing(gauge, fitted, setOut.marks.length, held, place),
    why: () => [
      ...studWhys(gauge, fitted, place),
      oneAtEachMark(setOut.marks.length, held.basis),
      ...utilisationWhy(held, point),
    ],
    advice: ['Find both edges of each stud before drilling.'],
    taken: route.taken,
  };
}

export type FittedStudScrew = {
  readonly screwMm: Millimetres;
  readonly inWoodMm: Millimetres;
  readonly outsideMm: Millimetres;
  readonly longHead: boolean;
};

/** The stocked screw that puts at least `intoMm` in the wood; null when none is that long. */
export function fitStudScrew(
  gauge: Gauge,
  intoMm: number,
  outsideMm: Millimetres,
  beyondMm: Millimetres,
  shelf: BoardPlace['shelf'],
  head: HeadWanted,
): FittedStudScrew | null {
  const least = mm(outsideMm + beyondMm + intoMm);
  const stocked = stockedScrew(shelf, head, gauge, least, mm(0));
  if (stocked === null) return null;
  const { screwMm, washer } = stocked;
  return { screwMm, inWoodMm: mm(screwMm - outsideMm - beyondMm), outsideMm, longHead: washer };
}

function studFixing(
  gauge: Gauge,
  fitted: FittedStudScrew,
  count: number,
  worst: WorstCheck,
  place: BoardPlace,
): Fixing {
  const by = place.job.piece.hanging.by;
  return {
    fastener: 'stud-screw',
    count,
    ...pilotOf(gauge, fitted, place),
    screw: {
      gauge,
      diameterMm: nominalOf(gauge).nominalMm,
      lengthMm: fitted.screwMm,
      head: by === 'keyholes' ? 'round' : fitted.longHead ? 'washer' : 'pan',
    },
    note: [
      'A wood screw, never a board screw: those are brittle. Wax it, and drive it by hand or with the clutch low.',
      ...hangerNote(by, nominalOf(gauge).nominalMm),
    ].join(' '),
    governing: governingOf(worst),
    utilisation: worst.utilisation,
  };
}

/** Bit and pilot of a screw into a stud: the pilot runs its full depth. */
export function pilotOf(
  gauge: Gauge,
  fitted: FittedStudScrew,
  { beyondMm, throughSheet }: BoardPlace,
): Pick<Fixing, 'bit' | 'pilot'> {
  const diameterMm = mm(Math.round(pilotHole(WOOD_SCREW_ROOT.value[gauge], 'softwood') * 10) / 10);
  const depthMm = mm(Math.ceil(beyondMm + fitted.inWoodMm));
  const pilot = { diameterMm, depthMm };
  if (throughSheet)
    return { bit: { ...throughSheet, action: 'rotary', depthMm: mm(Math.ceil(beyondMm)) }, pilot };
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
    ...(place.throughSheet ? sheetWhys(place, place.throughSheet.diameterMm) : []),
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

/** The first bit, where plaster or a hard sheet needs its own. */
const sheetWhys = ({ beyondMm }: BoardPlace, diameterMm: Millimetres): Why[] => [
  {
    of: 'hole depth',
    formula: 'through the plaster or the sheet and no further',
    inputs: { beyondMm: toTenth(beyondMm) },
    result: `${Math.ceil(beyondMm)} mm`,
    basis: [basisOf(THROUGH_SHEET)],
    symbols: 'up(beyondMm)',
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
  'masonry 5 through plaster; carbide 5.5 to 7 in fibre cement',
  'common-practice',
);
