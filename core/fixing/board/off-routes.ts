import type { Job } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { clearancesOf, reachOf } from '../../wall/clearance.ts';
import { zonesOf } from '../../wall/zones.ts';

/** Screws of a board or batten go where they bear, not where the marks are: so they too keep off the upright routes. */
export function isOffRoutes(xMm: Millimetres, { wall, building }: Job): boolean {
  const screw = { id: 'screw', xMm, upMm: null, downMm: null };
  return clearancesOf(screw, zonesOf(wall, building?.country)).every(
    (each) => reachOf(each, mm(0)) !== 'inside',
  );
}
