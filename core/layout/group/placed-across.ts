import type { Arrange } from '../../group-job.ts';
import type { Across } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { leftEdgeOf } from '../across.ts';
import { equalGaps, groupLength } from '../gaps.ts';
import type { DoesNotFit } from '../set-out.ts';
import { lengthOf, noRoomForGaps, stretchAcross } from './line.ts';

/** Where columns stand across the wall, the gap between them, and the arithmetic of the first and of the gap. */
export type PlacedAcross = {
  ok: true;
  leftsMm: Millimetres[];
  gapMm: Millimetres;
  start: Told;
  /** Absent where the gap was said, or where there is none. */
  gap?: Told;
};
type Told = { formula: string; inputs: Record<string, number> };

/**
 * Left edges of columns for a gap that was said, the group placed as one piece would be; or for equal gaps over the
 * stretch there is, g = (W - sum w) / (n + 1) with gaps at the ends and / (n - 1) with the ends flush. Millimetres.
 */
export function placedAcross(
  across: Across,
  wallWidthMm: Millimetres,
  widthsMm: readonly Millimetres[],
  arrange: Pick<Arrange, 'gapMm' | 'spread'>,
): PlacedAcross | DoesNotFit {
  if (arrange.spread === undefined) return withGap(across, wallWidthMm, widthsMm, arrange.gapMm ?? mm(0));
  const stretch = stretchAcross(across, wallWidthMm);
  const over = lengthOf(stretch);
  const spread = equalGaps(over, widthsMm, arrange.spread);
  if (!spread.ok) return noRoomForGaps(spread.overByMm, over);
  const atEnds = arrange.spread === 'ends' || widthsMm.length === 1;
  return {
    ok: true,
    leftsMm: spread.leftsMm.map((left) => mm(left + stretch.fromMm)),
    gapMm: spread.gapMm,
    start: atEnds
      ? {
          formula: 'start of the stretch + gap',
          inputs: { 'start of the stretch': stretch.fromMm, gap: spread.gapMm },
        }
      : { formula: 'start of the stretch', inputs: { 'start of the stretch': stretch.fromMm } },
    gap: gapTold(over, widthsMm, atEnds),
  };
}

function withGap(
  across: Across,
  wallWidthMm: Millimetres,
  widthsMm: readonly Millimetres[],
  gapMm: Millimetres,
): PlacedAcross | DoesNotFit {
  const left = leftEdgeOf(across, wallWidthMm, groupLength(widthsMm, gapMm), 'group');
  if (!left.ok) return left;
  let at: number = left.leftMm;
  const leftsMm = widthsMm.map((width) => {
    const edge = mm(at);
    at += width + gapMm;
    return edge;
  });
  return { ok: true, leftsMm, gapMm, start: { formula: left.formula, inputs: left.inputs } };
}

/** Equal gaps in symbols: what is free, shared out. */
export function gapTold(overMm: Millimetres, sizesMm: readonly Millimetres[], atEnds: boolean): Told {
  const sizes = mm(sizesMm.reduce((all, each) => all + each, 0));
  return {
    formula: `(stretch - pieces together) / (pieces ${atEnds ? '+' : '-'} 1)`,
    inputs: { stretch: overMm, 'pieces together': sizes, pieces: sizesMm.length },
  };
}
