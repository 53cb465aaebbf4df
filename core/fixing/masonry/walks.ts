import type { Job } from '../../job.ts';
import { type Sourced, sourced } from '../../sources.ts';
import { HOLLOW_BLOCK, SOLID_BLOCK, UNKNOWN_BLOCK } from './walk-block.ts';
import { PERFORATED_BRICK, SOLID_BRICK, UNKNOWN_BRICK } from './walk-clay-brick.ts';
import { CONCRETE } from './walk-concrete.ts';
import type { WalkRow } from './walk-row.ts';

const walk = (rows: readonly WalkRow[], at: string): Walk =>
  sourced(rows, 'common-practice', at, 'common-practice');

/** Lines of a walk with their pairings of plug, bit and screw, which no standard gives. */
export type Walk = Sourced<readonly WalkRow[]>;

const WALKS = {
  solidBrick: walk(SOLID_BRICK, 'preference walk and pairings: clay brick, solid'),
  perforatedBrick: walk(PERFORATED_BRICK, 'preference walk and pairings: clay brick, perforated'),
  unknownBrick: walk(UNKNOWN_BRICK, 'preference walk and pairings: clay brick, coring unknown'),
  concrete: walk(CONCRETE, 'preference walk and pairings: concrete'),
  solidBlock: walk(SOLID_BLOCK, 'preference walk and pairings: concrete block, solid'),
  hollowBlock: walk(HOLLOW_BLOCK, 'preference walk and pairings: concrete block, hollow'),
  unknownBlock: walk(UNKNOWN_BLOCK, 'preference walk and pairings: concrete block, cells unknown'),
};

/** The walk of a masonry or concrete wall by its cores; null for one that is not masonry, or has board over it with air behind, which is not computed yet. */
export function walkOf({ baseMaterial, cores = 'unknown', finish }: Job['wall']): Walk | null {
  if (finish?.kind === 'board') return null;
  if (baseMaterial === 'concrete') return WALKS.concrete;
  if (baseMaterial === 'clay-brick') {
    if (cores === 'solid') return WALKS.solidBrick;
    return cores === 'unknown' ? WALKS.unknownBrick : WALKS.perforatedBrick;
  }
  if (baseMaterial === 'concrete-block') {
    if (cores === 'solid') return WALKS.solidBlock;
    return cores === 'unknown' ? WALKS.unknownBlock : WALKS.hollowBlock;
  }
  return null;
}
