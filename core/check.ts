import { tiltCaution } from './caution/hanging/level.ts';
import { cautionsOf } from './caution/rules.ts';
import { chooseFixing } from './fixing/choose.ts';
import type { InHand } from './fixing/hand/hand.ts';
import { holds } from './fixing/hand/in-hand.ts';
import type { Job } from './job.ts';
import { setOut } from './layout/marks.ts';
import type { SetOut } from './layout/set-out.ts';
import { TAPE_READING } from './layout/tolerance.ts';
import { isFor, isOff, type MeasuredMark, offBy, type Pair, paired, tiltBetween } from './measured-marks.ts';
import { planOf } from './plan.ts';
import type { Caution, Plan, Verdict } from './plan-shape.ts';
import { type Degrees, degrees, difference, type Millimetres, mm, toTenth } from './quantity.ts';
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
export function checkOf(job: Job, measured: Measured): Check {
  const plan = planOf(job);
  const layout = setOut(job);
  if (plan.verdict === 'stop' || !layout.ok) return stops(plan);

  const pairs = paired(plan.marks, measured.marks ?? []);
  const marks = pairs.map((pair) => ({ id: pair.planned.id, offByMm: toTenths(offBy(pair, pairs[0])) }));
  const tiltDeg = asSaid(tiltBetween(pairs));
  const { fixing } = measured;
  const inHand =
    fixing && Object.values(fixing).some((each) => each !== undefined) ? holds(job, layout, fixing) : null;
  const cautions = [...newCautions(job, layout, pairs, plan), ...tiltSaid(tiltDeg)];
  const off = marks.filter(({ offByMm }) => isOff(offByMm));
  const stray = (measured.marks ?? []).filter((each) => !layout.marks.some((mark) => isFor(mark, each)));
  const missing = layout.marks.filter((mark) => !pairs.some((pair) => pair.planned.id === mark.id));
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

/** A tape from the datum below a later mark reads what the datum's fall makes of it: said, so that nobody moves a right mark. */
function readBelow({ planned, found }: Pair): string[] {
  const { id, upMm, upHereMm } = planned;
  if (upMm === undefined || upHereMm === undefined) return [];
  const reads = Math.abs(difference(found.upMm, upHereMm)) <= TAPE_READING.value;
  return reads && Math.abs(difference(upHereMm, upMm)) > TAPE_READING.value
    ? [
        `If ${id} was measured up from straight below it, it is right: the datum runs out, and a tape there should read ${toTenth(upHereMm)} mm.`,
      ]
    : [];
}

function tiltSaid(tiltDeg: Degrees | null): Caution[] {
  const said = tiltDeg === null ? null : tiltCaution(tiltDeg);
  return said === null ? [] : [said];
}

function tiltText(tiltDeg: Degrees | null): string[] {
  return tiltDeg === null || tiltSaid(tiltDeg).length === 0
    ? []
    : [
        `As marked it would hang ${toTenth(degrees(Math.abs(tiltDeg)))} degrees out, ${tiltDeg > 0 ? 'right' : 'left'} side high.`,
      ];
}

/** Stops and warnings that the measured holes bring and the planned ones do not: a hole that has wandered to a zone. */
function newCautions(job: Job, layout: SetOut, pairs: readonly Pair[], plan: Plan): Caution[] {
  if (pairs.length === 0) return [];
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
  const asFound: SetOut = { ...layout, marks: shifted };
  const warned = new Set(plan.cautions.filter((each) => each.severity !== 'note').map((each) => each.id));
  const said = cautionsOf({ job, setOut: asFound, fixing: chooseFixing(job, layout), asFound: true });
  const stopping = said.filter((each) => each.severity === 'stop');
  if (stopping.length > 0) return stopping;
  return said.filter((each) => each.severity === 'warn' && !warned.has(each.id));
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

function wayOff({ across, up }: { across: Millimetres; up: Millimetres }): string {
  const ways: string[] = [];
  if (Math.abs(across) > TAPE_READING.value)
    ways.push(`${toTenth(mm(Math.abs(across)))} mm too far ${across > 0 ? 'right' : 'left'}`);
  if (Math.abs(up) > TAPE_READING.value)
    ways.push(`${toTenth(mm(Math.abs(up)))} mm too ${up > 0 ? 'high' : 'low'}`);
  return ways.join(' and ');
}
