import { type Millimetres, newtons } from '../../quantity.ts';
import { aboveBottom } from '../acting/actions.ts';
import { outwardPull } from '../acting/outward-pull.ts';
import type { PointLoad } from '../acting/worst-check.ts';
import { pryingPull } from '../batten/prying.ts';
import { BATTEN } from '../stand-off.ts';
import type { BoardPlace } from './board-place.ts';
import type { BoardRow } from './board-row.ts';

/**
 * What each fastening of a board bears at the worst stud, N: the stud's share over `perStud`, `inUpperRow` of
 * which take the prying of a load standing `offWallMm` off the wall; all take the piece's own pull outward.
 */
export function studLoad(
  { load, job, setOut }: BoardPlace,
  { worstShare }: BoardRow,
  offWallMm: Millimetres,
  { perStud, inUpperRow }: { perStud: number; inUpperRow: number },
): PointLoad {
  const atStud = newtons(load.actions.weightN * worstShare);
  const prying = pryingPull(atStud, offWallMm, BATTEN.value.screwToLowerEdgeMm, inUpperRow);
  const pull = outwardPull(atStud, load.comFromWallMm, aboveBottom(job, setOut, setOut.marks[0]));
  return { shearN: newtons(atStud / perStud), tensionN: newtons(prying + pull / perStud) };
}
