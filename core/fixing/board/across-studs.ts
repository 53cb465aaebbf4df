import type { Assumption, Fixing } from '../../plan-shape.ts';
import { type Millimetres, mm, newtons } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { knownStuds, landing } from '../../wall/studs.ts';
import { aboveBottom } from '../acting/actions.ts';
import { outwardPull } from '../acting/outward-pull.ts';
import type { PointLoad } from '../acting/worst-check.ts';
import { pryingPull } from '../batten/prying.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import { BATTEN } from '../stand-off.ts';
import { type Gauge, nominalOf } from '../steel/screw-sizes.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { cleatStrength } from '../timber/stud-strength.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';
import { type BoardRow, boardRow, worstShare } from './board-row.ts';
import { fitStudScrew, pilotOf, studWhys } from './stud-candidate.ts';

const LINE_3 = sourced(
  { wholeKg: 50, perStud: 2, inWoodMm: 40, endMm: 50, most: 3 },
  'common-practice',
  'plasterboard on timber studs, line 3: board or batten across two or three studs, two screws in each',
  'common-practice',
);

/** The wall half of a split batten, or a board that the hangers go onto, screwed to the studs it crosses. */
export function acrossStuds(gauge: Gauge, place: BoardPlace): Candidate | Unusable {
  const { batten, job, load, setOut } = place;
  const fastener = batten ? 'batten-screws' : 'board-across-studs';
  const name = `${batten ? 'batten' : 'board'} across studs, two ${gauge} gauge screws in each`;
  const no = (because: string): Unusable => ({ ok: false, fastener, name, because });
  const rule = LINE_3.value;
  if (load.massKg > rule.wholeKg) return no(`${rule.wholeKg} kg is the most for it`);
  const row = batten ? battenRow(place, gauge) : boardRow(place, rule);
  if (typeof row === 'string') return no(row);
  const side = BATTEN.value.thicknessMm;
  const fitted = fitStudScrew(gauge, rule.inWoodMm, side, place.beyondMm, place.shelf, 'countersunk');
  if (fitted === null) return no('no countersunk screw of that gauge is stocked that long');

  const point = pointOf(place, row, batten ? side : mm(side + place.standOffMm));
  const route = timberRouteOf(job.building?.country);
  const strength = cleatStrength(route, gauge, fitted.inWoodMm, place.beyondMm, side, fitted.screwMm);
  const worst = studCheck(point, strength, null);
  const count = row.studs * rule.perStud;
  const above = aboveBottom(job, setOut, setOut.marks[0]);
  return {
    ok: true,
    fastener,
    name,
    point,
    worst,
    fixing: (): Fixing => ({
      fastener,
      count,
      ...pilotOf(gauge, fitted, place),
      screw: { gauge, diameterMm: nominalOf(gauge).nominalMm, lengthMm: fitted.screwMm, head: 'countersunk' },
      note: batten ? 'Two screws in each stud the batten crosses, one above the other.' : ON_BOARD,
      governing: governingOf(worst),
      utilisation: worst.utilisation,
    }),
    why: () => [
      ...studWhys(gauge, fitted, place),
      {
        of: 'number of fixings',
        formula: 'studs x screws in each',
        inputs: { studs: row.studs, 'screws in each': rule.perStud },
        result: `${count}`,
        basis: [basisOf(LINE_3)],
      },
      ...utilisationWhy(worst, point),
      {
        of: 'pull on the board’s screws',
        formula: 'W a / (z n) from the load standing off the wall, and W e / h of the piece',
        inputs: {
          offWallMm: batten ? side : side + place.standOffMm,
          screwToLowerEdgeMm: BATTEN.value.screwToLowerEdgeMm,
          screws: count,
          aboveBottomMm: Math.round(above),
        },
        result: `${Math.round(point.tensionN * 10) / 10} N each`,
        basis: [basisOf(BATTEN), basisOf(LINE_3)],
      },
    ],
    advice: adviceOf(row, batten),
    taken: row.found ? route.taken : [...route.taken, STUDS_TAKEN],
  };
}

const STUDS_TAKEN: Assumption = {
  field: 'wall.studs',
  value: 'unknown',
  because:
    'two studs at the closest usual spacing are reckoned with, lying as badly behind the frame as they can',
};

const ON_BOARD =
  'A level board 18 to 25 mm thick, behind the frame, two screws in each stud, one above the other; the hangers go on 10 gauge screws through the whole thickness of the board, at the marks. A spacer of its thickness goes near the bottom of the frame.';

function adviceOf(row: BoardRow, batten: boolean): string[] {
  if (!row.found)
    return [
      'Find two studs first, both edges of each, neither of them straight above or below a socket, switch or pipe: this stands on them. The marks are where the hangers bear on the board, not where it is screwed to the wall.',
    ];
  return batten
    ? ['Find both edges of each stud before drilling.']
    : [
        'The marks are where the hangers bear on the board, not where it is screwed to the studs; find both edges of each stud.',
      ];
}

/** A batten's marks are its screws: each must be in a stud. */
function battenRow({ job, setOut }: BoardPlace, gauge: Gauge): BoardRow | string {
  const studs = knownStuds(job.wall);
  if (!studs) return 'where the studs are is not known; find two that the batten crosses';
  const { nominalMm } = nominalOf(gauge);
  if (
    setOut.marks.length < 2 ||
    !setOut.marks.every((mark) => landing(mark.fromLeftMm, studs, nominalMm).on)
  ) {
    return 'the batten does not cross two studs';
  }
  return {
    studs: setOut.marks.length,
    worstShare: worstShare(
      setOut.marks.map((mark) => mark.fromLeftMm),
      job,
      setOut,
    ),
    found: true,
  };
}

function pointOf({ load, job, setOut }: BoardPlace, row: BoardRow, offWallMm: Millimetres): PointLoad {
  const { weightN } = load.actions;
  const { perStud } = LINE_3.value;
  const atStud = newtons(weightN * row.worstShare);
  // One above the other: the upper of the two takes all the prying, both take the outward pull.
  const prying = pryingPull(atStud, offWallMm, BATTEN.value.screwToLowerEdgeMm, 1);
  const pull = outwardPull(atStud, load.comFromWallMm, aboveBottom(job, setOut, setOut.marks[0]));
  return { shearN: newtons(atStud / perStud), tensionN: newtons(prying + pull / perStud) };
}
