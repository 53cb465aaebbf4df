import fc from 'fast-check';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { diceFrom } from '../../sweep/dice.ts';
import { plausibleJob } from '../../sweep/plausible-job.ts';
import { WALLS } from '../../sweep/plausible-wall.ts';
import { anyJob } from './any-job.ts';

export type Planned = { readonly job: Job; readonly plan: Plan };

const planned = (job: Job): Planned => ({ job, plan: planOf(job) });

/** So many jobs as people bring them, the same in every run, with their plans. */
export function plausiblePlans(count: number): Planned[] {
  const dice = diceFrom(1855);
  return Array.from({ length: count }, (_, at) => {
    const base = WALLS[at % WALLS.length];
    if (base === undefined) throw new Error('no wall to choose from');
    return planned(plausibleJob(base, dice));
  });
}

/** So many jobs of any kind, absurd ones among them, the same in every run, with their plans. */
export const anyPlans = (count: number): Planned[] =>
  fc.sample(anyJob, { numRuns: count, seed: 1855 }).map(planned);

/** What the cautions of a plan say, with what clears its stops. */
export const spoken = ({ cautions, clear }: Plan): string =>
  [...cautions.map(({ text }) => text), ...clear].join('\n');

/** Every string and every number anywhere in a value. */
export function leavesOf(value: unknown): (string | number)[] {
  if (typeof value === 'string' || typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(leavesOf) : [];
}
