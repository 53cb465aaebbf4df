import type { Plan } from '../plan-shape.ts';
import type { Asked } from './explained.ts';

const STEP = /[^.[\]]+/g;

/**
 * Where a path leads in a plan: `fixing.bit.depthMm`, `marks.A.upMm` or `marks[0].upMm` alike. Null where it leads
 * nowhere. What has an id is named by it from then on.
 */
export function pathIn(plan: Plan, path: string): Asked | null {
  const steps: string[] = [];
  let here: unknown = plan;
  for (const step of path.match(STEP) ?? []) {
    const found = stepInto(here, step);
    if (found === null) return null;
    here = found.value;
    steps.push(found.name);
  }
  return steps.length === 0 ? null : { plan, path: joined(steps), steps, value: here };
}

function stepInto(from: unknown, step: string): { name: string; value: unknown } | null {
  if (Array.isArray(from)) {
    const named = from.findIndex((each) => idOf(each) === step);
    const at = named >= 0 ? named : /^\d+$/.test(step) ? Number(step) : -1;
    const value: unknown = from[at];
    return value === undefined ? null : { name: idOf(value) ?? String(at), value };
  }
  if (from === null || typeof from !== 'object' || !Object.hasOwn(from, step)) return null;
  return { name: step, value: (from as Record<string, unknown>)[step] };
}

const idOf = (value: unknown): string | null =>
  typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string'
    ? value.id
    : null;

/** `marks`, `A`, `upMm` as `marks.A.upMm`; a place in a list as `[0]`. */
function joined(steps: readonly string[]): string {
  return steps.map((step, at) => (/^\d+$/.test(step) ? `[${step}]` : at === 0 ? step : `.${step}`)).join('');
}

/** A number's path in this plan that can be asked for: its hole depth, else its weight. */
export function examplePath(plan: Plan): string {
  return plan.fixing === null ? 'actions.weightN' : 'fixing.bit.depthMm';
}
