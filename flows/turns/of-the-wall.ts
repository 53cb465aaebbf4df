import type { JobSoFar } from '../../core/job.ts';
import type { Fact } from '../reading.ts';

/**
 * A second width, or height, of the piece that would do as well for the wall nobody has measured yet:
 * "2.7 m wide" beside a mirror of 840. Null where it can't be the wall's.
 */
export function ofTheWall({ question, value, said }: Fact, known: JobSoFar): Fact | null {
  const { widthMm, heightMm } = value.piece ?? {};
  if (question !== 'piece.size' || (widthMm === undefined) === (heightMm === undefined)) return null;
  if (widthMm !== undefined)
    return known.wall?.widthMm === undefined && widthMm > (known.piece?.widthMm ?? widthMm)
      ? { question: 'wall.widthMm', value: { wall: { widthMm } }, said }
      : null;
  return heightMm !== undefined &&
    known.wall?.heightMm === undefined &&
    heightMm > (known.piece?.heightMm ?? heightMm)
    ? { question: 'wall.heightMm', value: { wall: { heightMm } }, said }
    : null;
}
