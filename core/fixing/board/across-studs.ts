import { mm } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { aboveBottom } from '../acting/actions.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { BATTEN } from '../stand-off.ts';
import { type Gauge, nominalOf } from '../steel/screw-sizes.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { cleatStrength } from '../timber/stud-strength.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';
import { battenRow, boardRow } from './board-row.ts';
import { hangersInBoard, withHangers } from './hangers-in-board.ts';
import { rowAdvice, STUDS_TAKEN } from './row-advice.ts';
import { fitStudScrew } from './stud-fit.ts';
import { studLoad } from './stud-load.ts';
import { pilotOf, studWhys } from './stud-whys.ts';

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
  const wholeKg = place.acrossKg ?? rule.wholeKg;
  if (load.massKg > wholeKg) return no(`${wholeKg} kg is the most for it`);
  const row = batten ? battenRow(place, gauge) : boardRow(place, rule);
  if (typeof row === 'string') return no(row);
  const side = BATTEN.value.thicknessMm;
  const fitted = fitStudScrew(gauge, rule.inWoodMm, side, place.beyondMm, place.shelf, 'countersunk');
  if (fitted === null) return no('no countersunk screw of that gauge is stocked that long');

  const point = studLoad(place, row, batten ? side : mm(side + place.standOffMm), {
    perStud: rule.perStud,
    // One above the other: the upper of the two takes all the prying.
    inUpperRow: 1,
  });
  const route = timberRouteOf(job.building?.country);
  const strength = cleatStrength(route, gauge, fitted.inWoodMm, place.beyondMm, side, fitted.screwMm);
  const hangers = batten ? null : hangersInBoard(place, side);
  const { worst, advice } = withHangers(studCheck(point, strength, null), hangers);
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
      note: batten
        ? 'Two screws in each stud the batten crosses, one above the other.'
        : `${ON_BOARD} ${hangers?.note ?? ''}`.trim(),
      ...(hangers && { hangerScrews: hangers.screws }),
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
      ...(hangers?.why() ?? []),
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
    advice: [...rowAdvice(row, batten), ...advice],
    taken: row.found ? route.taken : [...route.taken, STUDS_TAKEN],
  };
}

const ON_BOARD =
  'A level board 18 to 25 mm thick, behind the frame, two screws in each stud, one above the other.';
