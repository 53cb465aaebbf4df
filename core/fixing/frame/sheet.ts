import type { Job } from '../../job.ts';
import type { Assumption } from '../../plan-shape.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { boardOf, coatOnBoard } from '../finish.ts';
import { LATH_MM } from './lath-screw.ts';
import { woodMm } from './timber-rules.ts';

/** What stands before the studs, or the wood itself: its thickness, and with its coat how far a screw goes before timber. */
export type Sheet = {
  readonly boardMm: Millimetres;
  readonly layers: number;
  readonly beyondMm: Millimetres;
  readonly tiled: boolean;
  readonly assumptions: readonly Assumption[];
};

/** Three coats on lath, where nobody measured them. */
const THREE_COATS = sourced(mm(22), 'common-practice', 'three coats on lath, about 22 mm', 'from-memory');

/** The sheet of a framed wall with what was taken for it, mm. */
export function sheetOf(job: Job): Sheet {
  if (job.wall.baseMaterial === 'lath-and-plaster') return lathAndPlaster(job);
  const coat = coatOnBoard(job.wall);
  const wood = job.wall.baseMaterial === 'timber' ? woodMm(job.wall) : null;
  const { boardMm, layers, assumptions } =
    wood === null ? boardOf(job) : { boardMm: mm(wood), layers: 1, assumptions: [] };
  return {
    boardMm,
    layers,
    beyondMm: mm(boardMm + coat.thicknessMm),
    tiled: coat.kind === 'tile',
    assumptions: [...assumptions, ...coat.assumptions],
  };
}

/** The plaster is its finish, and stands on the lath; a tile stands on both. */
function lathAndPlaster({ wall }: Job): Sheet {
  const tiled = wall.finish?.kind === 'tile';
  const said = tiled ? undefined : wall.finish?.thicknessMm;
  const plasterMm = said !== undefined && said > 0 ? said : THREE_COATS.value;
  const boardMm = mm(plasterMm + LATH_MM);
  const because =
    'not measured; three coats of plaster are about this thick. Measure it in the first hole: a thicker one bends the screw sooner';
  return {
    boardMm,
    layers: 1,
    beyondMm: boardMm,
    tiled,
    assumptions: plasterMm === said ? [] : [{ field: 'wall.finish.thicknessMm', value: plasterMm, because }],
  };
}
