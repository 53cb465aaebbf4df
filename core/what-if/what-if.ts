import type { GroupJob } from '../group-job.ts';
import type { IfWrong } from '../if-wrong.ts';
import type { Job } from '../job.ts';
import type { Assumption, Plan } from '../plan-shape.ts';
import { compared } from './differences.ts';
import { inALine } from './in-a-line.ts';
import { otherValues } from './other-values.ts';

type AnyJob = Job | GroupJob;
type Wrong = { readonly field: string; readonly ifWrong: IfWrong; readonly matters: number };

/** How many assumptions say what would change; more would be a lecture. */
const TOLD = 3;

/**
 * The same plan, its three assumptions that matter most each with what it would be if they were wrong: the job is
 * planned again with each other value the field may well have, and the value that changes most is told. Not part of
 * the plan itself, since it costs a plan for each value. `planOf` must be the one that made the plan. Throws never.
 */
export function whatIf(job: AnyJob, plan: Plan, planOf: (job: AnyJob) => Plan): Plan {
  const worst = plan.assumptions
    .flatMap((each) => worstOf(job, plan, each, planOf) ?? [])
    .sort((one, other) => other.matters - one.matters)
    .slice(0, TOLD);
  if (worst.length === 0) return plan;
  return {
    ...plan,
    assumptions: plan.assumptions.map((each) => {
      const found = worst.find(({ field }) => field === each.field);
      return found ? { ...each, ifWrong: found.ifWrong } : each;
    }),
  };
}

function worstOf(
  job: AnyJob,
  plan: Plan,
  assumption: Assumption,
  planOf: (job: AnyJob) => Plan,
): Wrong | null {
  let worst: Wrong | null = null;
  for (const value of otherValues(assumption.field, assumption.value)) {
    const would = planOf(withField(job, assumption.field.split('.'), value) as AnyJob);
    const { changes, matters } = compared(plan, would);
    if (changes.length === 0 || matters <= (worst?.matters ?? 0)) continue;
    const text = inALine(assumption, value, changes, would);
    worst = { field: assumption.field, matters, ifWrong: { value, changes, text } };
  }
  return worst;
}

/** The same job with one field another value; nothing of the job given is changed. */
function withField(node: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(node)) {
    return node.map((each, at) => (String(at) === key ? withField(each, rest, value) : each));
  }
  const here = typeof node === 'object' && node !== null ? (node as Record<string, unknown>) : {};
  return { ...here, [key]: withField(here[key], rest, value) };
}
