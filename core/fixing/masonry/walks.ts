import type { Job } from '../../job.ts';
import { type Sourced, sourced } from '../../sources.ts';
import { isOverGap } from '../../wall/cored.ts';
import type { BaseMaterial, Cores } from '../../wall/wall.ts';
import { AERATED } from './walk-aerated.ts';
import { HOLLOW_BLOCK, SOLID_BLOCK, UNKNOWN_BLOCK } from './walk-block.ts';
import { PERFORATED_BRICK, SOLID_BRICK, UNKNOWN_BRICK } from './walk-clay-brick.ts';
import { CONCRETE } from './walk-concrete.ts';
import { OVER_A_GAP } from './walk-dabs.ts';
import type { WalkRow } from './walk-row.ts';
import { RUBBLE, STONE } from './walk-stone.ts';

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
  aerated: walk(AERATED, 'preference walk and pairings: aerated concrete'),
  stone: walk(STONE, 'preference walk and pairings: natural stone'),
  rubble: walk(RUBBLE, 'preference walk and pairings: natural stone, sleeve if rubble'),
  overAGap: walk(OVER_A_GAP, 'preference walk and pairings: plasterboard on dabs'),
};

/** The walk of a masonry or concrete wall by its cores, or of board with air behind it over one; null for a wall that is neither. */
export function walkOf(wall: Job['wall']): Walk | null {
  return isOverGap(wall) ? WALKS.overAGap : walkInto(wall.baseMaterial, wall.cores ?? 'unknown');
}

function walkInto(baseMaterial: BaseMaterial, cores: Cores): Walk | null {
  switch (baseMaterial) {
    case 'concrete':
      return WALKS.concrete;
    case 'aerated-concrete':
      return WALKS.aerated;
    case 'natural-stone':
      return cores === 'solid' || cores === 'unknown' ? WALKS.stone : WALKS.rubble;
    case 'clay-brick':
      if (cores === 'solid') return WALKS.solidBrick;
      return cores === 'unknown' ? WALKS.unknownBrick : WALKS.perforatedBrick;
    case 'concrete-block':
      if (cores === 'solid') return WALKS.solidBlock;
      return cores === 'unknown' ? WALKS.unknownBlock : WALKS.hollowBlock;
    default:
      return null;
  }
}
