import type { Assumption } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Why } from '../../why.ts';
import type { WorstCheck } from '../acting/worst-check.ts';
import { governingOf } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { shankMm } from '../masonry/walk-row.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { oneAtEachMark } from '../told/why-it-fits.ts';
import { type BoardAnchor, SHEET } from './board-anchors.ts';
import type { BoardPlace } from './board-place.ts';

/** Past the board by this much, so that what opens behind it has thread to open on. */
const BEHIND = sourced(
  { screwMm: 20, boltMm: 45, stepMm: 5, suppliedMm: [32, 38] },
  'common-practice',
  'board anchors: screws 25 to 38, bolts 50 to 100',
  'common-practice',
);

/** An anchor in board as it is bought and drilled for, mm. */
export function anchorFixing(anchor: BoardAnchor, place: BoardPlace, worst: WorstCheck): Fixing {
  const lengthMm = lengthOf(anchor, place);
  const gauge = typeof anchor.shank === 'number' ? anchor.shank : undefined;
  return {
    fastener: anchor.fastener,
    count: place.setOut.marks.length,
    bit: {
      kind: place.tiled ? 'tile' : (place.throughSheet?.kind ?? 'wood'),
      action: anchor.action,
      diameterMm: mm(anchor.holeMm),
      depthMm: mm(Math.ceil(place.beyondMm)),
    },
    screw: {
      ...(gauge !== undefined && { gauge }),
      diameterMm: shankMm(anchor.shank),
      lengthMm,
      head: place.job.piece.hanging.by === 'keyholes' ? 'round' : gauge === undefined ? 'washer' : 'pan',
    },
    note: [
      ...hangerNote(place.job.piece.hanging.by, shankMm(anchor.shank)),
      anchor.note,
      `For a sheet ${tenth(place.boardMm)} mm thick with ${anchor.voidMm} mm clear behind it. The screw or bolt as supplied, if the packet’s differs.`,
    ].join(' '),
    governing: governingOf(worst),
    utilisation: worst.utilisation,
  };
}

/** The supplied screw that is long enough, or a bolt past the board by what opens behind it, mm. */
function lengthOf(anchor: BoardAnchor, { outsideMm, beyondMm }: BoardPlace): Millimetres {
  const through = outsideMm + beyondMm;
  const { screwMm, suppliedMm } = BEHIND.value;
  if (typeof anchor.shank !== 'number') return boltFor(mm(through));
  return mm(suppliedMm.find((each) => each >= through + screwMm) ?? Math.max(...suppliedMm));
}

/** Whether the screw that comes with an anchor is longer than what it goes through; a bolt is bought to length. */
export function suppliedReaches(anchor: BoardAnchor, { outsideMm, beyondMm }: BoardPlace): boolean {
  return typeof anchor.shank !== 'number' || outsideMm + beyondMm < Math.max(...BEHIND.value.suppliedMm);
}

/** The bolt of a toggle that goes through so much before it opens, the next step up, mm. */
export function boltFor(throughMm: Millimetres): Millimetres {
  const { boltMm, stepMm } = BEHIND.value;
  return mm(Math.ceil((throughMm + boltMm) / stepMm) * stepMm);
}

/** Room behind the sheet that nobody measured. */
export function roomBehind({ name, voidMm }: BoardAnchor): Assumption {
  return {
    field: 'wall.voidMm',
    value: voidMm,
    because: `the room behind the sheet was not measured, and the ${name} needs this much: feel with a bent wire in the first hole`,
  };
}

/** Why that hole, that size and that length. */
export function anchorWhys(anchor: BoardAnchor, place: BoardPlace): Why[] {
  const basis = [basisOf(anchor.cap)];
  return [
    {
      of: 'hole depth',
      formula: 'through finish and board',
      inputs: { beyondMm: tenth(place.beyondMm) },
      result: `${Math.ceil(place.beyondMm)} mm`,
      basis: [basisOf(SHEET)],
      symbols: 'up(beyondMm)',
    },
    {
      of: 'bit diameter',
      formula: 'the hole this anchor is sold for',
      inputs: { anchor: anchor.name },
      result: `${anchor.holeMm} mm`,
      basis,
    },
    {
      of: 'screw length',
      formula:
        'outside part + finish and board + what opens or bites behind, as supplied or the next step up',
      inputs: { outsideMm: tenth(place.outsideMm), beyondMm: tenth(place.beyondMm) },
      result: `${lengthOf(anchor, place)} mm`,
      basis: [basisOf(BEHIND)],
      symbols: 'stocked(outsideMm + beyondMm)',
    },
    {
      of: 'screw diameter',
      formula: 'the screw or bolt this anchor is sold with',
      inputs: { anchor: anchor.name },
      result: `${tenth(shankMm(anchor.shank))} mm`,
      basis,
    },
    oneAtEachMark(place.setOut.marks.length, basis),
  ];
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
