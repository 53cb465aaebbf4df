import type { GroupJob } from '../../core/group-job.ts';
import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import { planOfAny } from '../../core/plan-of-pieces.ts';
import { mm } from '../../core/quantity.ts';
import { jobSchema } from '../../src/schema/job.ts';
import sanity from '../fixtures/reference/sanity-jobs.json' with { type: 'json' };
import { ROUNDS, type Row, ratioText, spreadOf } from './rounds.ts';

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
    growthRow(jobs),
  ];
}

/** What one more piece on the wall costs, with few and with many there already. */
const FEW = 2;
const MANY = 16;
const GROUPS_A_ROUND = 60;

/** The typical jobs with their piece so many times over, in rows of a wall that holds them. */
function groupsOf(jobs: readonly Job[], count: number): GroupJob[] {
  return jobs.map(({ piece, wall, ...rest }) => ({
    ...rest,
    pieces: Array.from({ length: count }, () => piece),
    arrange: { as: 'row', gapMm: mm(0) },
    wall: { ...wall, widthMm: mm(wall.widthMm + piece.widthMm * count) },
  }));
}

function growthRow(jobs: readonly Job[]): Row {
  const msEach = (groups: readonly GroupJob[], count: number): number => {
    const started = performance.now();
    for (let n = 0; n < GROUPS_A_ROUND; n += 1) planOfAny(groups[n % groups.length] as GroupJob);
    return (performance.now() - started) / GROUPS_A_ROUND / count;
  };
  const held = groupsOf(jobs, MANY).map((group) => planOfAny(group).verdict !== 'stop');
  const fit = jobs.filter((_, at) => held[at]);
  const [few, many] = [groupsOf(fit, FEW), groupsOf(fit, MANY)];
  msEach(few, FEW);
  msEach(many, MANY);
  const rounds = Array.from({ length: ROUNDS }, () => ({ few: msEach(few, FEW), many: msEach(many, MANY) }));
  const ms = spreadOf(rounds.map((each) => each.many));
  return {
    bench: `plan, per added piece (growth), ${fit.length} jobs`,
    measured: `${ms.median.toFixed(3)} ms a piece with ${MANY} of them (${ms.low.toFixed(3)} to ${ms.high.toFixed(3)})`,
    ratio: ratioText(spreadOf(rounds.map((each) => each.many / each.few))),
    aim: `no dearer than with ${FEW}: 1.25 or less`,
  };
}
