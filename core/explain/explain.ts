import type { Plan } from '../plan-shape.ts';
import type { Why } from '../why.ts';
import { actingTold } from './acting.ts';
import { besideTold } from './beside.ts';
import { type Asked, type Explained, type NoSuchNumber, type Told, unitOf } from './explained.ts';
import { frameTold } from './frame-and-marks.ts';
import { linkTold } from './links.ts';
import { inputsOf } from './origins.ts';
import { examplePath, pathIn } from './plan-path.ts';
import { tapeTold } from './tape-checks.ts';

/**
 * Any number of a plan by its path (`fixing.bit.depthMm`, `marks.A.upMm`, `marks[0].upMm`): its formula in the names
 * of its inputs, where each of those came from, the result in its own unit, and the basis. A path that leads to no
 * number answers with what was expected, and an example. Throws never.
 */
export function explain(plan: Plan, path: string): Explained | NoSuchNumber {
  const asked = pathIn(plan, path);
  const told = asked && toldOf(asked);
  if (asked === null || told === null) {
    return { ok: false, path, expected: 'the path of a number in this plan', example: examplePath(plan) };
  }
  const { formula, inputs, basis, result } = told;
  return {
    ...{ ok: true, path: asked.path, value: asked.value, formula, inputs },
    ...{ result: result ?? inItsUnit(asked), basis },
  };
}

/** One step from other numbers first, since that says most; else the why that names this path. */
function toldOf(asked: Asked): Told | null {
  const isAssumed = asked.steps[0] === 'assumptions';
  if (typeof asked.value !== 'number' && !isAssumed) return null;
  return (
    frameTold(asked) ??
    tapeTold(asked) ??
    actingTold(asked) ??
    besideTold(asked) ??
    linkTold(asked) ??
    ofItsWhy(asked)
  );
}

function ofItsWhy({ plan, path }: Asked): Told | null {
  const why = whyOf(plan, path);
  return why && { formula: why.symbols ?? why.formula, inputs: inputsOf(plan, why), basis: why.basis };
}

/** The why of a plan that explains a path. */
function whyOf(plan: Plan, path: string): Why | null {
  return plan.why.find((each) => each.paths?.includes(path)) ?? null;
}

function inItsUnit({ steps, value }: Asked): string {
  const unit = unitOf(steps.at(-1) ?? '');
  return unit === '' ? String(value) : `${String(value)} ${unit}`;
}
