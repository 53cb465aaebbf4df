import { type Millimetres, mm, settled } from '../quantity.ts';
import { distanceTo, type Hole } from './clearance.ts';
import type { Zone } from './zone.ts';

/** How far a whole piece may go, in millimetres: left negative, right positive. */
export type Room = { readonly leftMm: Millimetres; readonly rightMm: Millimetres };

/** The move that clears, in whole millimetres, rounded away from the zone; null where none does. */
export type Move = { readonly byMm: Millimetres; readonly margin: boolean } | null;

const shifted = (hole: Hole, byMm: number, runs: 'across' | 'up'): Hole =>
  runs === 'across'
    ? { ...hole, xMm: mm(hole.xMm + byMm) }
    : {
        ...hole,
        upMm: hole.upMm === null ? null : mm(hole.upMm + byMm),
        downMm: hole.downMm === null ? null : mm(hole.downMm - byMm),
      };

/**
 * The smallest move of all holes together that takes each of them out of every zone, in millimetres;
 * clear of the margins too where the room allows, else just clear. The candidates are the edges of the
 * zones, so the smallest that serves is the smallest there is. `fits` refuses a move for what else is on the wall.
 */
export function smallestMove(
  holes: readonly Hole[],
  zones: readonly Zone[],
  room: Room,
  radiusMm: Millimetres,
  way: 'across' | 'up',
  fits: (byMm: number) => boolean,
): Move {
  for (const margin of [true, false]) {
    const keep = (zone: Zone): number => (margin ? zone.marginMm + radiusMm : 0);
    const best = candidates(holes, zones, keep, way)
      .filter((by) => by >= room.leftMm && by <= room.rightMm)
      .sort((a, b) => Math.abs(a) - Math.abs(b))
      .find(
        (by) =>
          fits(by) &&
          holes.every((hole) => zones.every((zone) => isClear(shifted(hole, by, way), zone, keep(zone)))),
      );
    if (best !== undefined) return { byMm: mm(best), margin };
  }
  return null;
}

function isClear(hole: Hole, zone: Zone, keep: number): boolean {
  const distance = distanceTo(hole, zone);
  return distance === null || distance > keep;
}

/** One past each edge of each zone, seen from each hole, in whole millimetres. */
function candidates(
  holes: readonly Hole[],
  zones: readonly Zone[],
  keep: (zone: Zone) => number,
  way: 'across' | 'up',
): number[] {
  const edges = (at: number | null, zone: Zone): number[] =>
    at === null
      ? []
      : [
          Math.ceil(settled(mm(zone.fromMm - keep(zone) - at))) - 1,
          Math.floor(settled(mm(zone.toMm + keep(zone) - at))) + 1,
        ].filter(Number.isFinite);
  return holes.flatMap((hole) =>
    zones.flatMap((zone) => {
      if (way === 'across') return zone.runs === 'across' ? edges(hole.xMm, zone) : [];
      if (zone.runs === 'up') return edges(hole.upMm, zone);
      return zone.runs === 'under-ceiling' ? edges(hole.downMm, zone).map((by) => -by) : [];
    }),
  );
}
