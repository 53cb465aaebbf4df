import { cautionsOf } from './caution/rules.ts';
import { holdsAll, type Part, partsOf, worstTilt } from './check-parts.ts';
import { readBelow, tiltSaid, tiltText, wayOff } from './check-words.ts';
import { chooseFixing } from './fixing/choose.ts';
import type { InHand } from './fixing/hand/hand.ts';
import { groupCautions } from './group/group-cautions.ts';
import type { GroupJob } from './group-job.ts';
import type { Job } from './job.ts';
import { isFor, isOff, type MeasuredMark, offBy, type Pair, paired } from './measured-marks.ts';
import { planOfAny } from './plan-of-pieces.ts';
import type { Caution, Plan, Verdict } from './plan-shape.ts';
import { type Degrees, difference, type Millimetres, toTenth } from './quantity.ts';
import { rounded } from './tenth.ts';

export type { MeasuredMark };
export type Measured = { marks?: MeasuredMark[]; fixing?: InHand };

/** `offByMm` is measured less planned, right and up positive; `tiltDeg` positive when the right side is high. */
export type Check = {
  verdict: Verdict;
  marks: { id: string; offByMm: { across: Millimetres; up: Millimetres } }[];
  tiltDeg: Degrees | null;
  fixing: { holds: boolean; utilisation: number | null; text: string } | null;
  cautions: Caution[];
  text: string;
};

/**
 * Compares what was measured with what was planned, in words a person at the wall can act on.
 * `stop` when a measured hole falls in a keep-clear zone, the fixing in hand does not hold, or the job
 * itself stops; `care` beyond 2 mm, from 0.2 degrees, where a measured hole comes near a zone, or while
 * a mark is not measured; else `go`. Never throws.
 */
export function checkOf(job: Job | GroupJob, measured: Measured): Check {
  const plan = planOfAny(job);
  const parts = partsOf(job);
  if (plan.verdict === 'stop' || parts === null) return stops(plan);

  const pairs = paired(plan.marks, measured.marks ?? []);
  const marks = pairs.map((pair) => ({ id: pair.planned.id, offByMm: toTenths(offBy(pair, pairs[0])) }));
  const tiltDeg = asSaid(worstTilt(parts, pairs));
  const { fixing } = measured;
  const inHand =
    fixing && Object.values(fixing).some((each) => each !== undefined) ? holdsAll(parts, fixing) : null;
  const cautions = [...newCautions(parts, pairs, plan), ...tiltSaid(tiltDeg)];
  const off = marks.filter(({ offByMm }) => isOff(offByMm));
  const stray = (measured.marks ?? []).filter((each) => !plan.marks.some((mark) => isFor(mark, each)));
  const missing = plan.marks.filter((mark) => !pairs.some((pair) => pair.planned.id === mark.id));
  const begun = (measured.marks?.length ?? 0) > 0;
  const verdict: Verdict =
    cautions.some((each) => each.severity === 'stop') || (inHand && !inHand.holds)
      ? 'stop'
      : cautions.length > 0 || off.length > 0 || stray.length > 0 || (begun ? missing.length > 0 : !inHand)
        ? 'care'
        : 'go';
  const text = [
    ...cautions.filter((each) => each.severity !== 'note').map((caution) => caution.text),
    ...(inHand ? [inHand.text] : []),
    ...off.map(({ id, offByMm }) => `Mark ${id} is ${wayOff(offByMm)}. Move it before you drill.`),
    ...pairs.flatMap(readBelow),
    ...tiltText(tiltDeg),
    ...stray.map((each) => `There is no mark ${each.id} in this plan.`),
    ...(missing.length > 0 && begun
      ? [`Not measured yet: ${missing.map((mark) => mark.id).join(', ')}.`]
      : []),
    ...(verdict === 'go' && pairs.length > 0
      ? ['Marks agree with the plan to within 2 mm. Scan and isolate before you drill.']
      : []),
  ];
  return rounded({
    verdict,
    marks,
    tiltDeg,
    fixing: inHand,
    cautions,
    text: text.join(' ') || 'Nothing was measured: give at least one mark or the fixing in your hand.',
  });
}

const toTenths = ({ across, up }: { across: Millimetres; up: Millimetres }) => ({
  across: toTenth(across),
  up: toTenth(up),
});

/** To the hundredth that is given out, so that what reads 0.2 counts as 0.2. */
const asSaid = (tiltDeg: Degrees | null): Degrees | null => rounded({ tiltDeg }).tiltDeg;

/** Stops and warnings that the measured holes bring and the planned ones do not: a hole that has wandered to a zone. */
function newCautions(parts: readonly Part[], pairs: readonly Pair[], plan: Plan): Caution[] {
  if (pairs.length === 0) return [];
  const warned = new Set(plan.cautions.filter((each) => each.severity !== 'note').map((each) => each.id));
  const said = groupCautions(parts.map((part) => asFound(part, pairs)));
  const stopping = said.filter((each) => each.severity === 'stop');
  if (stopping.length > 0) return stopping;
  return said.filter((each) => each.severity === 'warn' && !warned.has(each.id));
}

function asFound({ job, layout }: Part, pairs: readonly Pair[]): Caution[] {
  const shifted = layout.marks.map((mark) => {
    const found = pairs.find((pair) => pair.planned.id === mark.id)?.found;
    return found
      ? {
          ...mark,
          fromLeftMm: found.fromLeftMm,
          fromRightMm: difference(job.wall.widthMm, found.fromLeftMm),
          ...(mark.upMm !== undefined && { upMm: found.upMm }),
        }
      : mark;
  });
  const fixing = chooseFixing(job, layout);
  return cautionsOf({ job, setOut: { ...layout, marks: shifted }, fixing, asFound: true });
}

function stops(plan: Plan): Check {
  const cautions = plan.cautions.filter((each) => each.severity === 'stop');
  return {
    verdict: 'stop',
    marks: [],
    tiltDeg: null,
    fixing: null,
    cautions,
    text: `Don't drill. ${cautions.map((each) => each.text).join(' ')}`,
  };
}
