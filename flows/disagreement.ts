import type { JobSoFar } from '../core/job.ts';

type Part = Record<string, unknown>;

/** Less than this between two figures is how a tape is read or an inch is rounded. In the figure's own unit. */
const SAME_FIGURE = 0.05;

const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What was said before and now reads otherwise, as the part of the job it was; null when nothing disagrees. */
export function disagreement(before: JobSoFar, now: JobSoFar): JobSoFar | null {
  return differing(before, now) as JobSoFar | null;
}

function differing(before: Part, now: Part): Part | null {
  const found: Part = {};
  for (const [key, value] of Object.entries(now)) {
    const old = before[key];
    // What is still to be found is no figure to disagree with.
    if (key === 'unplaced') continue;
    if (old === undefined || old === 'unknown' || value === 'unknown' || value === undefined) continue;
    if (isPart(old) && isPart(value)) {
      const inner = differing(old, value);
      if (inner !== null) found[key] = key === 'across' || key === 'up' || key === 'hanging' ? old : inner;
    } else if (!same(old, value)) found[key] = old;
  }
  return Object.keys(found).length === 0 ? null : found;
}

function same(old: unknown, value: unknown): boolean {
  if (typeof old === 'number' && typeof value === 'number') return Math.abs(old - value) <= SAME_FIGURE;
  if (Array.isArray(old) && Array.isArray(value)) return sameList(old, value);
  return JSON.stringify(old) === JSON.stringify(value);
}

/** A list agrees with one that goes on from it, when no figure of one speaks against the other's. */
function sameList(old: readonly unknown[], value: readonly unknown[]): boolean {
  return old.length <= value.length && old.every((each, at) => samePart(each, value[at]));
}

function samePart(old: unknown, value: unknown): boolean {
  return isPart(old) && isPart(value) ? differing(old, value) === null : same(old, value);
}

const NO: ReadonlySet<unknown> = new Set([false, 'no', 'none', 'sound']);

/** "None of these" answers what nobody has spoken of; it does not unsay what somebody has. */
export function lessBlanketNo(now: JobSoFar, before: JobSoFar): JobSoFar {
  return without(now, before) as JobSoFar;
}

function without(now: Part, before: Part): Part {
  const kept: Part = {};
  for (const [key, value] of Object.entries(now)) {
    const old = before[key];
    if (isPart(value)) {
      const inner = without(value, isPart(old) ? old : {});
      if (Object.keys(inner).length > 0) kept[key] = inner;
    } else if (old === undefined || old === 'unknown' || old === value || !NO.has(value)) kept[key] = value;
  }
  return kept;
}
