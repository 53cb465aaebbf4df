import type { JobSoFar } from '../job.ts';
import { type Millimetres, mm, settled } from '../quantity.ts';

/**
 * A height from the datum as a height above the finished floor, millimetres; null when the datum's own
 * height is not known. With a ceiling as datum the heights are the floor's already, where the wall's is known.
 */
export function aboveFloor(
  job: JobSoFar,
  upMm: Millimetres | undefined,
  datumAboveFloorMm: Millimetres | null,
): Millimetres | null {
  if (upMm === undefined) return null;
  if (job.wall?.datum?.kind === 'ceiling') return job.wall.heightMm === undefined ? null : settled(upMm);
  return datumAboveFloorMm === null ? null : settled(mm(upMm + datumAboveFloorMm));
}

/** Height of the datum above the floor as far as the job tells: a floor is at 0; null when not known. */
function datumAboveFloor(job: JobSoFar): Millimetres | null {
  const datum = job.wall?.datum;
  if (datum?.aboveFloorMm !== undefined) return datum.aboveFloorMm;
  return datum === undefined || datum.kind === 'floor' ? mm(0) : null;
}

/** Bottom of the piece above the floor, from what was said alone; null when that does not tell. Millimetres. */
export function bottomFromJob(job: JobSoFar): Millimetres | null {
  const up = job.place?.up;
  const height = job.piece?.heightMm;
  if (!up) return null;
  if (up.by === 'below-ceiling') {
    const ceiling = job.wall?.heightMm;
    return ceiling === undefined || height === undefined ? null : settled(mm(ceiling - up.mm - height));
  }
  const datum = datumAboveFloor(job);
  if (datum === null || job.wall?.datum?.kind === 'ceiling') return null;
  if (up.by === 'bottom-above') return settled(mm(datum + up.mm));
  if (height === undefined) return null;
  return settled(mm(datum + up.mm - (up.by === 'centre-at' ? height / 2 : height)));
}
