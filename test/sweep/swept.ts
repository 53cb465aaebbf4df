import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { diceFrom } from './dice.ts';
import { plausibleJob } from './plausible-job.ts';
import { WALLS } from './plausible-wall.ts';

/** What came of one job. */
export type Swept = { readonly nth: number; readonly job: Job; readonly plan: Plan; readonly tookMs: number };

/** Plans `count` invented jobs, walls in turn; the same jobs in every run of one seed. */
export function* sweep(count: number, seed: number): Generator<Swept> {
  const dice = diceFrom(seed);
  for (let nth = 0; nth < count; nth += 1) {
    const job = plausibleJob(WALLS[nth % WALLS.length] as (typeof WALLS)[number], dice);
    const from = performance.now();
    const plan = planOf(job);
    yield { nth, job, plan, tookMs: performance.now() - from };
  }
}

/** Why a plan stops, in the words of its caution ids. */
export const stopsOf = ({ cautions }: Plan): string[] =>
  cautions.filter(({ severity }) => severity === 'stop').map(({ id }) => id);
