import { type Context, factsOf, type GroupFacts } from './caution/facts.ts';
import { cautionsOf } from './caution/rules.ts';
import type { FixingResult } from './fixing/choice.ts';
import { chooseFixing } from './fixing/choose.ts';
import { groupCautions } from './group/group-cautions.ts';
import { heldPlan, stoppedPlan, type Worked } from './group/group-plan.ts';
import type { GroupJob } from './group-job.ts';
import type { Job } from './job.ts';
import { type GroupSetOut, setOutGroup } from './layout/group/group-set-out.ts';
import type { LayoutResult } from './layout/set-out.ts';
import { planFrom, planOf } from './plan.ts';
import type { Caution, Plan } from './plan-shape.ts';
import { rounded } from './tenth.ts';

/**
 * Several pieces on one wall in, one plan out: marks 1A, 1B, 2A …, a frame and a fixing for each piece in order.
 * What stops one stops all. Lengths in millimetres to a tenth, forces in newtons. Never throws.
 */
function planOfPieces(job: GroupJob): Plan {
  const group = setOutGroup(job);
  const pieces = group.pieces.map(({ job: own, layout }) => ({
    job: own,
    layout,
    fixing: layout.ok ? chooseFixing(own, layout) : null,
  }));
  const together = group.ok ? togetherOf(group, pieces) : undefined;
  const perPiece = cautionsOfEach(pieces, together);
  const cautions = groupCautions(perPiece);
  const worked: Worked[] = pieces.map((each, nth) => ({
    ...each,
    plan: planFrom(each.job, each.layout, each.fixing, perPiece[nth] ?? []),
  }));
  const stops = cautions.some((each) => each.severity === 'stop');
  return rounded(
    group.ok && !stops ? heldPlan(group, worked, cautions) : stoppedPlan(group, worked, cautions),
  );
}

/** One piece or several: a job in, a plan or the reason why not out. */
export function planOfAny(job: Job | GroupJob): Plan {
  return 'pieces' in job ? planOfPieces(job) : planOf(job);
}

type Piece = { job: Job; layout: LayoutResult; fixing: FixingResult | null };

/** A stop of one piece leaves no word of how to drill for the others. */
function cautionsOfEach(pieces: readonly Piece[], group: GroupFacts | undefined): Caution[][] {
  const contexts = pieces.map(
    ({ job, layout, fixing }): Context => ({ job, setOut: layout, fixing, ...(group && { group }) }),
  );
  const own = contexts.map(cautionsOf);
  const stops = (cautions: readonly Caution[] | undefined): boolean =>
    cautions?.some((each) => each.severity === 'stop') ?? false;
  if (!own.some(stops)) return own;
  return contexts.map((context, nth) =>
    stops(own[nth]) ? (own[nth] ?? []) : cautionsOf({ ...context, stopped: true }),
  );
}

/** The group as one thing on the wall, with the widest bit that any of it needs. */
function togetherOf({ pieces, box }: GroupSetOut, chosen: readonly Piece[]): GroupFacts | undefined {
  const [first] = pieces;
  if (!first) return undefined;
  const bit = ({ fixing }: Piece): number => (fixing?.ok ? fixing.fixing.bit.diameterMm : 0);
  const widest = chosen.reduce((best, each) => (bit(each) > bit(best) ? each : best), chosen[0] as Piece);
  const setOut = { ...first.layout, frame: box, marks: pieces.flatMap((each) => each.layout.marks) };
  return {
    facts: factsOf({ job: first.job, setOut, fixing: widest.fixing }),
    frames: pieces.map((each) => each.layout.frame),
  };
}
