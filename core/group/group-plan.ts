import type { FixingResult } from '../fixing/choice.ts';
import type { Fixing } from '../fixing/fixing-shape.ts';
import type { Job } from '../job.ts';
import type { GroupMisfit, GroupSetOut } from '../layout/group/group-set-out.ts';
import type { LayoutResult, SetOut } from '../layout/set-out.ts';
import { reckonedWith, verdictOf } from '../plan.ts';
import type { Actions, Caution, Plan } from '../plan-shape.ts';
import { newtons } from '../quantity.ts';
import { uniqueBases } from '../sources.ts';
import { fromBothEnds } from '../tenth.ts';
import { groupShopping } from './group-shopping.ts';
import { groupSteps, type ToHang } from './group-steps.ts';
import { hardestToHold, oneForAll } from './strongest.ts';
import { assumptionsOf, whysOf } from './told-once.ts';
import { forPieces, saidOnce } from './which-pieces.ts';

/** One piece of a group with all that was worked out of it and the plan it would have alone, unrounded. */
export type Worked = { job: Job; layout: LayoutResult; fixing: FixingResult | null; plan: Plan };

type Held = { job: Job; layout: SetOut; fixing: Fixing; actions: Actions; plan: Plan };

/** A plan for a group whose every piece is set out and held; not rounded yet. */
export function heldPlan(group: GroupSetOut, worked: readonly Worked[], cautions: Caution[]): Plan {
  const pieces = worked.flatMap(heldOf);
  const strongestAt = hardestToHold(pieces);
  const plans = pieces.map((each) => each.plan);
  const toHang = pieces.map(
    ({ job, layout, fixing }): ToHang => ({
      job,
      marks: layout.marks,
      crossChecks: layout.crossChecks,
      fixing,
    }),
  );
  return {
    ...shared(group, plans, cautions),
    verdict: verdictOf(cautions),
    frames: pieces.map((each) => each.layout.frame),
    marks: pieces.flatMap((each) => each.layout.marks.map(fromBothEnds)),
    ...(plans.some((each) => each.batten) && { battens: plans.map((each) => each.batten ?? null) }),
    crossChecks: [...plans.flatMap((each) => each.crossChecks), ...group.crossChecks],
    actions: actionsOf(plans),
    fixing: pieces[strongestAt]?.fixing ?? null,
    fixings: pieces.map((each) => each.fixing),
    alternatives: saidOnce(
      plans.map((each) => each.alternatives),
      (each) => JSON.stringify(each),
      (each, which) => ({ ...each, text: forPieces(which, each.text) }),
    ),
    rejected: rejectedOf(plans),
    advice: [
      ...group.advice,
      ...oneForAll(pieces, strongestAt),
      ...saidOnce(
        plans.map((each) => each.advice),
        (text) => text,
        (text, which) => forPieces(which, text),
      ),
    ],
    steps: groupSteps(toHang, group.crossChecks),
    tools: [...new Set(plans.flatMap((each) => each.tools))],
    shopping: groupShopping(
      pieces.map(({ job, layout, fixing }) => ({ job, fixing, marks: layout.marks.length })),
    ),
    why: [...group.why, ...whysOf(plans)],
    basis: uniqueBases([
      ...plans.flatMap((each) => each.basis),
      ...cautions.flatMap((each) => [...each.basis]),
    ]),
  };
}

function heldOf({ job, layout, fixing, plan }: Worked): Held[] {
  if (!layout.ok || !fixing?.ok || plan.actions === null) return [];
  return [{ job: reckonedWith(job, fixing), layout, fixing: fixing.fixing, actions: plan.actions, plan }];
}

/** The plan of a group that a piece of it stops: no hole position and no drilling step, of any piece; not rounded yet. */
export function stoppedPlan(
  group: GroupSetOut | GroupMisfit,
  worked: readonly Worked[],
  cautions: Caution[],
): Plan {
  const plans = worked.map((each) => each.plan);
  const frames = worked.flatMap(({ layout }) => (layout.ok ? [layout.frame] : []));
  return {
    ...shared(group, plans, cautions),
    verdict: 'stop',
    frames: frames.length === worked.length ? frames : [],
    marks: [],
    crossChecks: [],
    actions: { weightN: actionsOf(plans).weightN, perMark: [] },
    fixing: null,
    fixings: [],
    alternatives: [],
    rejected: rejectedOf(plans.map((each) => (each.verdict === 'stop' ? each : { rejected: [] }))),
    advice: [],
    steps: [],
    tools: [],
    shopping: [],
    why: [],
    basis: uniqueBases(cautions.flatMap((each) => [...each.basis])),
  };
}

function shared(
  group: GroupSetOut | GroupMisfit,
  plans: readonly Plan[],
  cautions: Caution[],
): Pick<Plan, 'frame' | 'cautions' | 'clear' | 'assumptions'> {
  return {
    frame: null,
    cautions,
    clear: cautions.flatMap((each) => (each.severity === 'stop' && each.clears ? [each.clears] : [])),
    assumptions: [...(group.ok ? group.assumptions : []), ...assumptionsOf(plans)],
  };
}

function actionsOf(plans: readonly Plan[]): Actions {
  const own = plans.flatMap((each) => each.actions ?? []);
  return {
    weightN: newtons(own.reduce((all, each) => all + each.weightN, 0)),
    perMark: own.flatMap((each) => each.perMark),
  };
}

const rejectedOf = (plans: readonly Pick<Plan, 'rejected'>[]): Plan['rejected'] =>
  saidOnce(
    plans.map((each) => each.rejected),
    (each) => JSON.stringify(each),
    (each, which) => ({ ...each, because: forPieces(which, each.because) }),
  );
