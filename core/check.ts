import { cautionsOf } from './caution/rules.ts';
import { chooseFixing } from './fixing/choose.ts';
import { holds, type InHand } from './fixing/in-hand.ts';
import type { Job } from './job.ts';
import { tiltOf } from './layout/level.ts';
import { setOut } from './layout/marks.ts';
import type { SetOut } from './layout/set-out.ts';
import { planOf } from './plan.ts';
import type { Caution, Mark, Plan, Verdict } from './plan-shape.ts';
import { type Degrees, difference, type Millimetres, mm } from './quantity.ts';
import { sourced } from './sources.ts';
import { rounded } from './tenth.ts';

/** A mark as measured on the wall: from the left end, and up from the datum. Millimetres. */
export type MeasuredMark = { id: string; fromLeftMm: Millimetres; upMm: Millimetres };
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

const TAPE_READING = sourced(mm(2), 'our-choice', 'design: within 2 mm is tape reading', 'our-choice');
const TILT_AIM = sourced(0.2, 'our-choice', 'a third of what the eye sees', 'our-choice');

/**
 * Compares what was measured with what was planned, in words a person at the wall can act on.
 * `stop` when a measured hole falls in a keep-clear zone, the fixing in hand does not hold, or the job
 * itself stops; `care` beyond 2 mm or from 0.2 degrees; else `go`. Never throws.
 */
export function checkOf(job: Job, measured: Measured): Check {
  const plan = planOf(job);
  const layout = setOut(job);
  if (plan.verdict === 'stop' || !layout.ok) return stops(plan);

  const pairs = paired(layout.marks, measured.marks ?? []);
  const marks = pairs.map(({ planned, found }) => ({ id: found.id, offByMm: offBy(planned, found) }));
  const tiltDeg = tiltBetween(pairs);
  const inHand = measured.fixing ? holds(job, layout, measured.fixing) : null;
  const cautions = newStops(job, layout, pairs);
  const off = marks.filter(({ offByMm }) => isOff(offByMm));
  const tilted = tiltDeg !== null && Math.abs(tiltDeg) >= TILT_AIM.value;
  const stray = (measured.marks ?? []).filter((each) => !layout.marks.some((mark) => mark.id === each.id));
  const missing = layout.marks.filter((mark) => !pairs.some((pair) => pair.planned.id === mark.id));
  const verdict: Verdict =
    cautions.length > 0 || (inHand && !inHand.holds)
      ? 'stop'
      : off.length > 0 || tilted || stray.length > 0
        ? 'care'
        : 'go';
  const text = [
    ...cautions.map((caution) => caution.text),
    ...(inHand ? [inHand.text] : []),
    ...off.map(({ id, offByMm }) => `Mark ${id} is ${wayOff(offByMm)}. Move it before you drill.`),
    ...(tilted
      ? [
          `As marked it would hang ${tenth(Math.abs(tiltDeg))} degrees out, ${tiltDeg > 0 ? 'right' : 'left'} side high.`,
        ]
      : []),
    ...stray.map((each) => `There is no mark ${each.id} in this plan.`),
    ...(missing.length > 0 && (measured.marks?.length ?? 0) > 0
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

type Pair = { planned: Mark; found: MeasuredMark };

function paired(planned: readonly Mark[], found: readonly MeasuredMark[]): Pair[] {
  return planned.flatMap((mark) => {
    const match = found.find((each) => each.id === mark.id);
    return match ? [{ planned: mark, found: match }] : [];
  });
}

function offBy(planned: Mark, found: MeasuredMark): { across: Millimetres; up: Millimetres } {
  return {
    across: difference(found.fromLeftMm, planned.fromLeftMm),
    up: difference(found.upMm, planned.upMm ?? found.upMm),
  };
}

const isOff = (off: { across: Millimetres; up: Millimetres }): boolean =>
  Math.abs(off.across) > TAPE_READING.value || Math.abs(off.up) > TAPE_READING.value;

/** How crooked it will hang: what the right mark is high by against the left, over the span as found. */
function tiltBetween(pairs: readonly Pair[]): Degrees | null {
  const first = pairs[0];
  const last = pairs.at(-1);
  if (!first || !last || first === last) return null;
  const rise = difference(offBy(last.planned, last.found).up, offBy(first.planned, first.found).up);
  const span = difference(last.found.fromLeftMm, first.found.fromLeftMm);
  return span > 0 ? tiltOf(rise, span) : null;
}

/** Stops that the measured holes bring and the planned ones do not: a hole that has wandered into a zone. */
function newStops(job: Job, layout: SetOut, pairs: readonly Pair[]): Caution[] {
  if (pairs.length === 0) return [];
  const shifted = layout.marks.map((mark) => {
    const found = pairs.find((pair) => pair.planned.id === mark.id)?.found;
    return found
      ? {
          ...mark,
          fromLeftMm: found.fromLeftMm,
          fromRightMm: difference(job.wall.widthMm, found.fromLeftMm),
          upMm: found.upMm,
        }
      : mark;
  });
  const asFound: SetOut = { ...layout, marks: shifted };
  return cautionsOf({ job, setOut: asFound, fixing: chooseFixing(job, layout) }).filter(
    (each) => each.severity === 'stop',
  );
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
    ways.push(`${tenth(Math.abs(across))} mm too far ${across > 0 ? 'right' : 'left'}`);
  if (Math.abs(up) > TAPE_READING.value)
    ways.push(`${tenth(Math.abs(up))} mm too ${up > 0 ? 'high' : 'low'}`);
  return ways.join(' and ');
}

const tenth = (value: number): string => String(Math.round(value * 10) / 10);
