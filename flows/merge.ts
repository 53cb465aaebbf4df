import type { JobSoFar } from '../core/job.ts';

type Part = Record<string, unknown>;

const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Unions that are said whole: a new one replaces the old, since half of each would be a third thing. */
const SAID_WHOLE: ReadonlySet<string> = new Set(['place.across', 'place.up']);

/** A change of this field makes the rest of its part untrue: rings are not a cord, a mantel is not a floor. */
const MAKES_ANEW: Readonly<Record<string, string>> = {
  'piece.hanging': 'by',
  'wall.finish': 'kind',
  'wall.datum': 'kind',
};

/** The job with a part said later laid over it. Lists are replaced; neither input is changed. */
export function laidOver(job: JobSoFar, part: JobSoFar): JobSoFar {
  return over(isAnotherWall(job, part) ? lessOldWall(job) : job, part, '');
}

const isAnotherWall = (job: JobSoFar, part: JobSoFar): boolean =>
  job.wall?.baseMaterial !== undefined &&
  part.wall?.baseMaterial !== undefined &&
  job.wall.baseMaterial !== 'unknown' &&
  job.wall.baseMaterial !== part.wall.baseMaterial;

/**
 * Brick has cores and plaster, board has studs and a sheet: what was said of one is not true of the other. A coating
 * and its test were said of the old face: what they stop is asked again, never carried over; that there is none stays.
 */
function lessOldWall(job: JobSoFar): JobSoFar {
  const { cores, finish, studs, courses, boardMm, boardLayers, voidMm, tensioned, ...kept } = job.wall ?? {};
  const { coating, asbestos, ...wall } = kept;
  return { ...job, wall: coating === 'none' ? { ...wall, coating } : wall };
}

function over<T extends object>(old: T, said: T, path: string): T {
  const merged: Part = { ...(old as Part) };
  for (const [key, value] of Object.entries(said)) {
    if (value === undefined) continue;
    const here = path === '' ? key : `${path}.${key}`;
    const before = merged[key];
    merged[key] =
      isPart(before) && isPart(value) && !SAID_WHOLE.has(here) && !startsAnew(here, before, value)
        ? over(before, value, here)
        : value;
  }
  return merged as T;
}

function startsAnew(path: string, before: Part, value: Part): boolean {
  const key = MAKES_ANEW[path];
  if (key === undefined || value[key] === undefined || before[key] === undefined) return false;
  return value[key] !== before[key];
}
