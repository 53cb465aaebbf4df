import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import { jobSchema } from '../../src/schema/job.ts';
import sanity from '../fixtures/reference/sanity-jobs.json' with { type: 'json' };
import { ROUNDS, type Row, spreadOf } from './rounds.ts';

/** Whole plans in `core`, over the typical jobs this part of the core answers. */
const PLANS_A_ROUND = 2000;

export function planBench(): Row[] {
  const jobs: Job[] = sanity.jobs
    .map(({ job }) => jobSchema.parse(job) as Job)
    .filter((job) => planOf(job).verdict !== 'stop');
  const each = (): number => {
    const started = performance.now();
    for (let n = 0; n < PLANS_A_ROUND; n += 1) planOf(jobs[n % jobs.length] as Job);
    return (performance.now() - started) / PLANS_A_ROUND;
  };
  each();
  const spread = spreadOf(Array.from({ length: ROUNDS }, each));
  return [
    {
      bench: `plan, ${jobs.length} typical jobs`,
      measured: `${spread.median.toFixed(3)} ms a plan (${spread.low.toFixed(3)} to ${spread.high.toFixed(3)})`,
      ratio: `${Math.round(1000 / spread.median)} plans a second`,
      aim: 'under 0.2 ms',
    },
  ];
}
