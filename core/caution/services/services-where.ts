import type { Millimetres } from '../../quantity.ts';
import { mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { type Clearance, clearancesOf, type Hole, type Reach, reachOf } from '../../wall/clearance.ts';
import { marginOf, type Zone } from '../../wall/zone.ts';
import { zonesOf } from '../../wall/zones.ts';
import type { Facts } from '../facts.ts';
import { holesOf, radiusOf } from '../holes.ts';
import { once } from '../once.ts';
import { drills } from '../wall/base-kinds.ts';

/** A hole and a zone it is in or near. */
export type Near = Clearance & { readonly hole: Hole };

const LOW_CEILING = sourced(mm(2400), 'our-choice', 'ceiling where none was measured', 'our-choice');

/** Every zone of the job's wall; none while its width is not known. */
export const zonesFor = once(({ job }): Zone[] => {
  const { widthMm } = job.wall ?? {};
  return widthMm === undefined ? [] : zonesOf({ ...job.wall, widthMm }, job.building?.country);
});

/** What is hung without drilling meets no cable. */
export const pointsOf = once((facts): Hole[] => (drills(facts) ? holesOf(facts) : []));

type Judged = Near & { readonly reach: Reach };

/** Every mark against every zone that is not clear of it, nearest first. */
const notClear = once((facts): Judged[] => {
  const zones = zonesFor(facts);
  const radius = radiusOf(facts);
  return pointsOf(facts).flatMap((hole) =>
    clearancesOf(hole, zones).flatMap((each) => {
      const reach = reachOf(each, radius);
      return reach === 'clear' ? [] : [{ ...each, hole, reach }];
    }),
  );
});

/** Each mark once, with the nearest zone of a service that it is inside of or tight against. */
function near(facts: Facts, service: Zone['service'], reach: Reach): Near[] {
  const found = notClear(facts).filter((each) => each.reach === reach && each.zone.service === service);
  return found.filter((each, at) => found.findIndex(({ hole }) => hole.id === each.hole.id) === at);
}

/** Marks inside a cable's zone, each with its nearest. */
export const inCable = once((facts) => near(facts, 'electric', 'inside'));
/** Marks within a plumbing strip. */
export const inPlumbing = once((facts) => near(facts, 'plumbing', 'inside'));

/** Marks within a margin, those already stopped left out. */
export const cableTight = once((facts): Near[] => {
  const stopped = new Set([...inCable(facts), ...inPlumbing(facts)].map(({ hole }) => hole.id));
  const both = [...near(facts, 'electric', 'tight'), ...near(facts, 'plumbing', 'tight')];
  return both.filter(({ hole }) => !stopped.has(hole.id));
});

/** Zones that no mark could be held against, since the height of the mark or of the ceiling is not known. */
export const heightless = once((facts): { zone: Zone; below: Millimetres }[] => {
  const holes = pointsOf(facts);
  if (holes.length === 0) return [];
  const margin = marginOf(facts.job.building?.country);
  return zonesFor(facts)
    .filter((zone) => zone.runs !== 'across')
    .filter((zone) =>
      zone.runs === 'up'
        ? holes.some((hole) => hole.upMm === null)
        : holes.some((hole) => mayBeInBand(hole, zone, margin)),
    )
    .map((zone) => ({ zone, below: facts.job.wall?.heightMm ?? LOW_CEILING.value }));
});

/** With no ceiling height, only a mark that a low ceiling would put in the band is worth a word. */
function mayBeInBand(hole: Hole, zone: Zone, margin: Millimetres): boolean {
  if (hole.downMm !== null) return false;
  return hole.upMm === null || LOW_CEILING.value - hole.upMm <= zone.toMm + margin;
}

const marks = (found: readonly { hole: Hole }[]): string => {
  const ids = found.map(({ hole }) => hole.id);
  return ids.length === 1 ? `Mark ${ids[0]}` : `Marks ${ids.slice(0, -1).join(', ')} and ${ids.at(-1)}`;
};

function byZone(found: readonly Near[]): Near[][] {
  const groups = new Map<string, Near[]>();
  for (const each of found) groups.set(each.zone.id, [...(groups.get(each.zone.id) ?? []), each]);
  return [...groups.values()];
}

const listed = (parts: readonly string[]): string => parts.join('; ');

/** "Mark A is straight above or below the socket". */
export function standingIn(found: readonly Near[]): string {
  return listed(
    byZone(found).map(
      (group) => `${marks(group)} ${group.length === 1 ? 'is' : 'are'} ${group[0]?.zone.where ?? ''}`,
    ),
  );
}

/** "Mark A is 24 mm clear of the route straight above or below the socket". */
export function standingNear(found: readonly Near[]): string {
  return listed(
    byZone(found).map((group) => {
      const distance = Math.min(...group.map(({ distanceMm }) => distanceMm));
      const where = group[0]?.zone.where ?? '';
      return distance > 0
        ? `${marks(group)} ${group.length === 1 ? 'is' : 'are'} ${Math.floor(distance)} mm clear of the route ${where}`
        : `${marks(group)} ${group.length === 1 ? 'is' : 'are'} ${where}, and this wall is hollow`;
    }),
  );
}

/** The floor heights to keep out of, where a mark's own height above the floor is not known. */
export function standingUnread(zones: readonly { zone: Zone; below: Millimetres }[]): string {
  const bands = zones.map(({ zone, below }) =>
    zone.runs === 'up'
      ? `${Math.round(zone.fromMm)} to ${Math.round(zone.toMm)} mm above the floor (${zone.where})`
      : `the top ${zone.toMm} mm of the wall (above ${below - zone.toMm} mm if the ceiling is at ${below} mm)`,
  );
  return `I don't know how high these marks are above the floor or under the ceiling. Measure, and keep every hole out of ${bands.join(', and out of ')}.`;
}
