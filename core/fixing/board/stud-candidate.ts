import { mm } from '../../quantity.ts';
import { knownStuds, landing } from '../../wall/studs.ts';
import { envelope, type WorstCheck, worse } from '../acting/worst-check.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { type Gauge, nominalOf } from '../steel/screw-sizes.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { bareStudStrength } from '../timber/stud-strength.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { oneAtEachMark } from '../told/why-it-fits.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';
import { type FittedStudScrew, fitStudScrew } from './stud-fit.ts';
import { pilotOf, studWhys } from './stud-whys.ts';

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
      ...(place.tiled
        ? ['A sleeve or a soft washer between head and tile, never tight against the glaze.']
        : []),
      ...hangerNote(by, nominalOf(gauge).nominalMm),
    ].join(' '),
    governing: governingOf(worst),
    utilisation: worst.utilisation,
  };
}
