import { BOARD, USUAL_FINISH } from '../fixing/finish.ts';
import { BATTEN, STAND_OFF } from '../fixing/stand-off.ts';
import { UNKNOWN_STUD_G } from '../fixing/timber/timber-species.ts';
import { USUAL_DEPTH } from '../piece/centre-of-mass.ts';
import { type Basis, basisOf, type Sourced, sourced } from '../sources.ts';
import { THIN_WALL } from '../wall/zones.ts';

/** What the contract says absent means, on the careful side. */
const ABSENT_MEANS = sourced(0, 'our-choice', 'contract 4: what absent means', 'our-choice');

const RECORDS: Readonly<Record<string, Omit<Sourced<unknown>, 'value'>>> = {
  'wall.finish.thicknessMm': USUAL_FINISH,
  'wall.boardMm': BOARD,
  'wall.thicknessMm': THIN_WALL,
  'wall.studs.density': UNKNOWN_STUD_G,
  'piece.hanging.standOffMm': STAND_OFF,
  'piece.depthMm': USUAL_DEPTH,
  batten: BATTEN,
};

/** Where the value comes from that is taken for a field nobody gave. */
export function assumedBasis(field: string): Basis {
  return basisOf(RECORDS[field] ?? ABSENT_MEANS);
}
