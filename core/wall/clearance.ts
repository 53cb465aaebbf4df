import { type Millimetres, mm, settled } from '../quantity.ts';
import type { Zone } from './zone.ts';

/** A hole in the wall's own frame. What is not known of its height is null. */
export type Hole = {
  readonly id: string;
  readonly xMm: Millimetres;
  /** Above the finished floor. */
  readonly upMm: Millimetres | null;
  /** Below the ceiling. */
  readonly downMm: Millimetres | null;
};

export type Clearance = { readonly zone: Zone; readonly distanceMm: Millimetres };

/**
 * Signed distance of a hole's centre from a zone, in millimetres: zero or less is inside. Null where the
 * height that the zone is measured by is not known.
 */
export function distanceTo(hole: Hole, zone: Zone): Millimetres | null {
  const at = zone.runs === 'across' ? hole.xMm : zone.runs === 'up' ? hole.upMm : hole.downMm;
  return at === null ? null : settled(mm(Math.max(zone.fromMm - at, at - zone.toMm)));
}

/** Distance to every zone that can be checked, nearest first; zones of one distance keep their order. */
export function clearancesOf(hole: Hole, zones: readonly Zone[]): Clearance[] {
  const found: Clearance[] = [];
  for (const zone of zones) {
    const distanceMm = distanceTo(hole, zone);
    if (distanceMm !== null) found.push({ zone, distanceMm });
  }
  return found.sort((a, b) => a.distanceMm - b.distanceMm);
}

export type Reach = 'inside' | 'tight' | 'clear';

/**
 * How a hole lies to a zone: inside at zero or less, tight up to the zone's margin plus the hole's radius.
 * Wander of the bit is within the margin. A zone that is not firm is never more than tight.
 */
export function reachOf({ zone, distanceMm }: Clearance, radiusMm: Millimetres): Reach {
  if (distanceMm <= 0) return zone.firm ? 'inside' : 'tight';
  return distanceMm <= zone.marginMm + radiusMm ? 'tight' : 'clear';
}
