import type { CrossCheck, Frame, Mark } from '../../plan-shape.ts';
import { mm } from '../../quantity.ts';
import { TAPE_READING } from '../tolerance.ts';
import type { Cells } from './cells.ts';

/**
 * Lengths between neighbours that must come out: the gap edge to edge, which is what the eye sees, and mark to mark,
 * which can be measured before anything hangs. Millimetres, each within 2.
 */
export function betweenPieces(
  { rows }: Cells,
  frames: readonly Frame[],
  marks: readonly (readonly Mark[])[],
): CrossCheck[] {
  return rows.flatMap((row, rowAt) =>
    row.flatMap((nth, at) => [
      ...pair(nth, row[at + 1], 'beside', frames, marks),
      ...pair(nth, rows[rowAt + 1]?.[at], 'below', frames, marks),
    ]),
  );
}

function pair(
  one: number,
  other: number | undefined,
  where: 'beside' | 'below',
  frames: readonly Frame[],
  marks: readonly (readonly Mark[])[],
): CrossCheck[] {
  const first = frames[one];
  const second = other === undefined ? undefined : frames[other];
  if (!first || !second || other === undefined) return [];
  const gap = where === 'beside' ? second.leftMm - first.rightMm : first.bottomMm - second.topMm;
  const edges = where === 'beside' ? 'edge to edge' : 'one above the other';
  const checks = [check(`gap between piece ${one + 1} and piece ${other + 1}, ${edges}`, gap)];
  const from = where === 'beside' ? marks[one]?.at(-1) : marks[one]?.[0];
  const to = marks[other]?.[0];
  if (!from || !to) return checks;
  const across = to.fromLeftMm - from.fromLeftMm;
  const up =
    (to.upMm ?? 0) -
    (from.upMm ?? 0) -
    ((to.downMm ?? 0) - (from.downMm ?? 0)) * (to.upMm === undefined ? 1 : 0);
  return [...checks, check(`${from.id} to ${to.id}`, Math.hypot(across, up))];
}

const check = (text: string, length: number): CrossCheck => ({
  text,
  expectMm: mm(length),
  toleranceMm: TAPE_READING.value,
});
