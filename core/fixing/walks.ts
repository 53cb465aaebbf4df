import type { Job } from '../job.ts';
import { HOLLOW_BLOCK, SOLID_BLOCK, UNKNOWN_BLOCK } from './walk-block.ts';
import { PERFORATED_BRICK, SOLID_BRICK, UNKNOWN_BRICK } from './walk-clay-brick.ts';
import { CONCRETE } from './walk-concrete.ts';
import type { WalkRow } from './walk-row.ts';

/** The walk of a masonry or concrete wall by its cores; null for one that is not masonry, or has board over it with air behind, which is not computed yet. */
export function walkOf({ baseMaterial, cores = 'unknown', finish }: Job['wall']): readonly WalkRow[] | null {
  if (finish?.kind === 'board') return null;
  if (baseMaterial === 'concrete') return CONCRETE;
  if (baseMaterial === 'clay-brick') {
    if (cores === 'solid') return SOLID_BRICK;
    return cores === 'unknown' ? UNKNOWN_BRICK : PERFORATED_BRICK;
  }
  if (baseMaterial === 'concrete-block') {
    if (cores === 'solid') return SOLID_BLOCK;
    return cores === 'unknown' ? UNKNOWN_BLOCK : HOLLOW_BLOCK;
  }
  return null;
}
