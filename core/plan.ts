import { assumptionsOf } from './assumptions.ts';
import { cautionsOf } from './caution/rules.ts';
import { assumedBasis } from './explain/assumed-basis.ts';
import { withPaths } from './explain/what-it-explains.ts';
import { weakestOf } from './fixing/chain/chain.ts';
import type { FixingResult } from './fixing/choice.ts';
import { chooseFixing } from './fixing/choose.ts';
import type { Job } from './job.ts';
import { setOut } from './layout/marks.ts';
import type { LayoutResult } from './layout/set-out.ts';
import { massOf } from './piece/mass.ts';
import type { Caution, ChainLink, Plan, Verdict } from './plan-shape.ts';
import { weightOf } from './quantity.ts';
import { ONE_DOES, shoppingOf } from './shopping.ts';
import { basisOf, uniqueBases } from './sources.ts';
import { stepsOf, toolsOf } from './steps.ts';
import { fromBothEnds, rounded } from './tenth.ts';

/**
 * A job in, a plan or the reason why not out. Lengths in millimetres to a tenth, forces in newtons.
 * Never throws: what can't or may not be done is a plan whose verdict is `stop`.
 */
export function planOf(job: Job): Plan {
  const layout = setOut(job);
  const fixing = layout.ok ? chooseFixing(job, layout) : null;
  const cautions = cautionsOf({ job, setOut: layout, fixing });
  return rounded(planFrom(job, layout, fixing, cautions));
}

/** The plan of one piece from what was worked out of it; not rounded yet. */
export function planFrom(
  job: Job,
  layout: LayoutResult,
  fixing: FixingResult | null,
  cautions: Caution[],
): Plan {
  const verdict = verdictOf(cautions);
  return verdict === 'stop' || !layout.ok || fixing === null || !fixing.ok
    ? stopped(job, layout, fixing, cautions)
    : { ...whole(job, layout, fixing, cautions), verdict };
}

/** `stop` when anything stops, `care` when anything warns, else `go`. */
export function verdictOf(cautions: readonly Caution[]): Verdict {
  if (cautions.some((caution) => caution.severity === 'stop')) return 'stop';
  return cautions.some((caution) => caution.severity === 'warn') ? 'care' : 'go';
}

type Set = Extract<LayoutResult, { ok: true }>;
type Held = Extract<FixingResult, { ok: true }>;

function whole(job: Job, layout: Set, held: Held, cautions: Caution[]): Plan {
  const assumptions = assumptionsOf(job, [...layout.assumptions, ...held.assumptions]);
  const plan: Plan = {
    verdict: 'go',
    frame: layout.frame,
    marks: layout.marks.map(fromBothEnds),
    ...(layout.batten && { batten: layout.batten }),
    crossChecks: layout.crossChecks,
    actions: held.actions,
    fixing: held.fixing,
    chain: held.chain,
    ...weakestLink(held.chain),
    alternatives: held.alternatives,
    rejected: held.rejected,
    cautions,
    clear: [],
    assumptions,
    advice: [...layout.advice, ...held.advice],
    steps: [],
    tools: toolsOf(held.fixing, layout),
    shopping: shoppingOf(held.fixing, layout.marks.length, reckonedWith(job, held)),
    why: withPaths([...layout.why, ...held.why], layout.marks),
    basis: uniqueBases([
      ...layout.basis,
      ...held.basis,
      basisOf(ONE_DOES),
      ...cautions.flatMap((each) => each.basis),
      ...assumptions.map(({ field }) => assumedBasis(field)),
    ]),
  };
  plan.steps = stepsOf(reckonedWith(job, held), plan);
  return plan;
}

/** The chain is no stronger than this link. */
function weakestLink(chain: readonly ChainLink[]): Pick<Plan, 'weakest'> {
  const weakest = weakestOf(chain);
  if (weakest?.utilisation === undefined) return {};
  const { link, name, utilisation } = weakest;
  return { weakest: { link, name, utilisation } };
}

/** Where coring is unknown and only the solid unit holds, the wall is reckoned as solid: steps and shopping follow that. */
export function reckonedWith(job: Job, { assumptions }: Held): Job {
  const solid = assumptions.some(({ field, value }) => field === 'wall.cores' && value === 'solid');
  return solid ? { ...job, wall: { ...job.wall, cores: 'solid' } } : job;
}

/** What was tried is named only where nothing but the fastening stops: no way to fix into a wall nobody may drill. */
function onlyTheFixing(cautions: readonly Caution[]): boolean {
  return cautions.every((each) => each.severity !== 'stop' || each.id === 'C-GT-9');
}

/** No hole position and no drilling step leaves the program until what stops the job is cleared. */
function stopped(job: Job, layout: LayoutResult, fixing: FixingResult | null, cautions: Caution[]): Plan {
  const mass = massOf(job.piece);
  const why = withPaths(
    [...(layout.ok ? layout.why.filter(({ of }) => of.startsWith('frame ')) : []), mass.why],
    [],
  );
  const assumptions = assumptionsOf(job, [
    ...(layout.ok ? layout.assumptions : []),
    ...(fixing && !fixing.ok ? fixing.assumptions : []),
  ]);
  return {
    verdict: 'stop',
    frame: layout.ok ? layout.frame : null,
    marks: [],
    crossChecks: [],
    actions: { weightN: weightOf(mass.massKg), perMark: [] },
    fixing: null,
    alternatives: [],
    rejected: fixing && !fixing.ok && onlyTheFixing(cautions) ? fixing.rejected : [],
    cautions,
    clear: cautions.flatMap((each) => (each.severity === 'stop' && each.clears ? [each.clears] : [])),
    assumptions,
    advice: [],
    steps: [],
    tools: [],
    shopping: [],
    why,
    basis: uniqueBases([
      ...cautions.flatMap((caution) => caution.basis),
      ...why.flatMap((each) => each.basis),
      ...assumptions.map(({ field }) => assumedBasis(field)),
    ]),
  };
}
