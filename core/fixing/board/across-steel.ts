import type { Assumption } from '../../plan-shape.ts';
import { type Millimetres, mm, toTenth } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { type Shank, shankMm } from '../masonry/walk-row.ts';
import { cappedCheck } from '../proof/capped-check.ts';
import { type HoldingCap, practiceCap } from '../proof/holding-cap.ts';
import { BATTEN } from '../stand-off.ts';
import { stockedScrew } from '../stocked-lengths.ts';
import { pickedWhys } from '../told/picked-whys.ts';
import { strengthWhys } from '../told/why-it-holds.ts';
import { boltFor } from './board-anchor-fixing.ts';
import { STRAP_TOGGLE } from './board-anchors.ts';
import type { BoardPlace } from './board-place.ts';
import { battenRow, boardRow } from './board-row.ts';
import { hangersInBoard, withHangers } from './hangers-in-board.ts';
import { rowAdvice, STUDS_TAKEN } from './row-advice.ts';
import { ACROSS_STEEL, FLANGE_MM, FLANGE_TOGGLE, THIN_STEEL_SCREW } from './steel-stud-rules.ts';
import { studLoad } from './stud-load.ts';
import { flangeDepthWhy, thinSteelCap } from './thin-steel-screw.ts';

type Into = 'strap-toggle' | 'steel-stud-screw';
type Held = {
  readonly shank: Shank;
  readonly cap: HoldingCap;
  readonly perStud: number;
  readonly holeMm: Millimetres;
  readonly lengthMm: Millimetres | null;
  readonly how: string;
  readonly taken: readonly Assumption[];
};

/** A board, or the wall half of a split batten, on two strap toggles or four thin-steel screws at each steel stud. */
export function acrossSteel(into: Into, place: BoardPlace): Candidate | Unusable {
  const { batten, load } = place;
  const fastener = batten ? 'batten-screws' : 'board-across-studs';
  const rule = ACROSS_STEEL.value;
  const held = into === 'strap-toggle' ? onToggles(place) : onScrews(place);
  const name = `${batten ? 'batten' : 'board'} across steel studs, ${held.how} at each`;
  const no = (because: string): Unusable => ({ ok: false, fastener, name, because });
  if (load.massKg > rule.wholeKg) return no(`${rule.wholeKg} kg is the most for it`);
  const row = batten ? battenRow(place, 10) : boardRow(place, rule);
  if (typeof row === 'string') return no(row);
  const { lengthMm } = held;
  if (lengthMm === null) return no('no screw of that gauge is stocked that long');
  const side = BATTEN.value.thicknessMm;
  const offWall = batten ? side : mm(side + place.standOffMm);
  // Two rows, one above the other: the upper one takes the prying.
  const point = studLoad(place, row, offWall, { perStud: held.perStud, inUpperRow: held.perStud / 2 });
  const toStuds = cappedCheck(point, held.cap, held.shank, place.beyondMm);
  const hangers = batten ? null : hangersInBoard(place, side);
  const { worst, advice } = withHangers(toStuds, hangers);
  const count = row.studs * held.perStud;
  return {
    ok: true,
    fastener,
    name,
    point,
    worst,
    fixing: (): Fixing => ({
      fastener,
      count,
      heldBy: into,
      bit: {
        kind: 'metal',
        action: 'rotary',
        diameterMm: held.holeMm,
        depthMm: mm(Math.ceil(place.beyondMm + FLANGE_MM.value)),
      },
      screw: {
        ...(typeof held.shank === 'number' && { gauge: held.shank }),
        diameterMm: shankMm(held.shank),
        lengthMm,
        head: 'countersunk',
      },
      note: `${batten ? 'The batten' : 'A level board 18 to 25 mm thick, behind the frame,'} on ${held.how} at each stud, in two rows, through board and flange, away from the web.${hangers ? ` ${hangers.note}` : ''}`,
      ...(hangers && { hangerScrews: hangers.screws }),
      governing: governingOf(worst),
      utilisation: worst.utilisation,
    }),
    why: () => [
      ...strengthWhys(worst, point, held.shank, place.beyondMm, held.cap),
      ...(hangers?.why() ?? []),
      flangeDepthWhy(place),
      {
        of: 'number of fixings',
        formula: 'studs the board crosses x what goes in each',
        inputs: { studs: row.studs, 'screws in each': held.perStud },
        result: `${count}`,
        basis: [basisOf(ACROSS_STEEL)],
      },
      {
        of: 'screw length',
        formula: 'board + finish and sheet + what opens or bites behind the flange, the next that is sold',
        inputs: { outsidePartMm: toTenth(side), beyondMm: toTenth(place.beyondMm) },
        result: `${Math.round(lengthMm * 10) / 10} mm`,
        basis: [basisOf(ACROSS_STEEL)],
        symbols: 'stocked(outsidePartMm + beyondMm)',
      },
      ...pickedWhys(
        {
          marks: count,
          count,
          bitMm: held.holeMm,
          ...(typeof held.shank === 'number' ? { gauge: held.shank } : { diameterMm: shankMm(held.shank) }),
        },
        [basisOf(ACROSS_STEEL)],
      ).slice(1),
    ],
    advice: [
      ...rowAdvice(row, batten),
      ...advice,
      ...(load.massKg > rule.usualKg
        ? [`${rule.usualKg} kg is the usual for a board across steel studs; this is over it, within its cap.`]
        : []),
    ],
    taken: [...held.taken, ...(row.found ? [] : [STUDS_TAKEN])],
  };
}

function onToggles(place: BoardPlace): Held {
  return {
    shank: STRAP_TOGGLE.shank,
    cap: place.proven ?? practiceCap(FLANGE_TOGGLE.cap, 'anchor-cap'),
    perStud: ACROSS_STEEL.value.toggles,
    holeMm: mm(STRAP_TOGGLE.holeMm),
    lengthMm: boltFor(mm(BATTEN.value.thicknessMm + place.beyondMm)),
    how: 'two strap toggles',
    taken: [],
  };
}

function onScrews(place: BoardPlace): Held {
  const least = mm(BATTEN.value.thicknessMm + place.beyondMm + FLANGE_MM.value);
  const stocked = stockedScrew(place.shelf, 'countersunk', 10, least, shankMm(10));
  return {
    shank: 10,
    ...thinSteelCap(place),
    perStud: ACROSS_STEEL.value.screws,
    holeMm: mm(THIN_STEEL_SCREW.value.pilotMm),
    lengthMm: stocked?.screwMm ?? null,
    how: 'four 10 gauge thin-steel screws',
  };
}
