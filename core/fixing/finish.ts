import type { Job } from '../job.ts';
import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Finish } from '../wall/wall.ts';

/** Thickness reckoned where none was given: within what is usual, on the thick side. */
export const USUAL_FINISH = sourced(
  {
    bare: mm(0),
    plaster: mm(13),
    render: mm(15),
    tile: mm(15),
    board: mm(43),
    unknown: mm(15),
  } satisfies Record<Finish['kind'], Millimetres>,
  'common-practice',
  'two-coat plaster 13, render 10 to 20, tile 6 to 12 on 3 to 10 of bed, board 13 on 30 of air',
  'common-practice',
);

export type TakenFinish = {
  readonly kind: Finish['kind'];
  readonly thicknessMm: Millimetres;
  readonly assumptions: readonly Assumption[];
};

/** The finish a hole goes through, with what was taken for it where nothing was said, mm. */
export function finishOf(wall: Job['wall']): TakenFinish {
  const kind = wall.finish?.kind ?? 'unknown';
  const given = wall.finish?.thicknessMm;
  if (given !== undefined && given >= 0) return { kind, thicknessMm: given, assumptions: [] };
  const thicknessMm = USUAL_FINISH.value[kind];
  if (kind === 'bare') return { kind, thicknessMm, assumptions: [] };
  const because =
    'not measured; this is on the thick side, and a thicker finish bends the screw sooner. Measure it in the first hole.';
  return {
    kind,
    thicknessMm,
    assumptions: [{ field: 'wall.finish.thicknessMm', value: thicknessMm, because }],
  };
}

/** Air behind board that is stuck on or battened out, where nobody measured it. */
const GAP = sourced(
  mm(25),
  'common-practice',
  'board on dabs: 10 to 25 of air is usual, up to 40 found',
  'common-practice',
);

/** What a hole crosses before masonry that carries: the finish, or board with its coat and the gap behind it, mm. */
export function beforeMasonry(job: Job): TakenFinish {
  if (job.wall.baseMaterial !== 'plasterboard-on-dabs') return finishOf(job.wall);
  const { boardMm, assumptions } = boardOf(job);
  const coat = coatOnBoard(job.wall);
  const gap = gapOf(job.wall);
  return {
    kind: coat.kind === 'tile' ? 'tile' : 'board',
    thicknessMm: mm(boardMm + coat.thicknessMm + gap.gapMm),
    assumptions: [...assumptions, ...coat.assumptions, ...gap.assumptions],
  };
}

function gapOf({ voidMm }: Job['wall']): { gapMm: Millimetres; assumptions: Assumption[] } {
  if (voidMm !== undefined) return { gapMm: voidMm, assumptions: [] };
  const because =
    'the gap behind the board was not measured; this is on the deep side, and a deeper gap bends the screw sooner. Measure it in the first hole.';
  return { gapMm: GAP.value, assumptions: [{ field: 'wall.voidMm', value: GAP.value, because }] };
}

/** On board a coat is a skim; the board itself is reckoned apart. */
const USUAL_ON_BOARD = sourced(
  { bare: mm(0), plaster: mm(3), render: mm(3), tile: mm(15), board: mm(0), unknown: mm(3) } satisfies Record<
    Finish['kind'],
    Millimetres
  >,
  'common-practice',
  'skim on board 2 to 3, tile on bed 9 to 22',
  'common-practice',
);

/** The coat on a board wall, with what was taken for it where nothing was said, mm. */
export function coatOnBoard(wall: Job['wall']): TakenFinish {
  const kind = wall.finish?.kind ?? 'bare';
  if (wall.finish?.thicknessMm !== undefined) return finishOf(wall);
  const thicknessMm = USUAL_ON_BOARD.value[kind];
  if (thicknessMm === 0) return { kind, thicknessMm, assumptions: [] };
  const because = 'the coat on the board was not measured';
  return {
    kind,
    thicknessMm,
    assumptions: [{ field: 'wall.finish.thicknessMm', value: thicknessMm, because }],
  };
}

/** Sheets a board wall has, and what was taken for them. */
export function boardOf(job: Job): { boardMm: Millimetres; layers: number; assumptions: Assumption[] } {
  const layers = Math.max(1, job.wall.boardLayers ?? 1);
  const given = job.wall.boardMm;
  if (given !== undefined && given > 0) return { boardMm: mm(given * layers), layers, assumptions: [] };
  const boardMm = usualSheet(job);
  const because =
    job.wall.baseMaterial === 'timber'
      ? 'how thick the wood is was not said, so it is reckoned as thin lining boards. Measure it at an edge: thinner panelling holds nothing, and solid wood holds far more'
      : 'the usual sheet there; hook a bent wire behind it in the first hole and measure';
  return {
    boardMm: mm(boardMm * layers),
    layers,
    assumptions: [{ field: 'wall.boardMm', value: boardMm, because }],
  };
}

function usualSheet({ building, wall }: Job): Millimetres {
  if (wall.baseMaterial === 'fibre-cement-on-studs') return BOARD.value.fibreCement;
  if (wall.baseMaterial === 'timber') return BOARD.value.lining;
  const inch = building?.country === 'US' || building?.country === 'CA';
  return inch ? BOARD.value.inch : BOARD.value.metric;
}

export const BOARD = sourced(
  { metric: mm(13), inch: mm(12.7), fibreCement: mm(9), lining: mm(12) },
  'common-practice',
  'sheets sold: 10, 13, 16 in Australia; 9.5, 12.5, 15 in Britain; 3/8, 1/2, 5/8 in in America; fibre cement to 9; lining boards from 12',
  'common-practice',
);
