import { type Millimetres, mm, settled } from '../../quantity.ts';
import type { Facts } from '../facts.ts';

/** From the top of a fire's opening up to the bottom edge of the piece, millimetres; null where either is not known. */
export function gapAboveOpening({ job, onWall: { bottomMm } }: Facts): Millimetres | null {
  const opening = job.place?.openingTopMm;
  return opening === undefined || bottomMm === null ? null : settled(mm(bottomMm - opening));
}

/** Whether heat chars it: only a frame told to be metal, round a mirror, is not of what burns. */
export function burns({ job: { piece } }: Facts): boolean {
  const frame = piece?.build?.frame?.material;
  return piece?.kind !== 'mirror' || (frame !== 'aluminium' && frame !== 'steel');
}
