import type { FixingResult } from '../fixing/choice.ts';
import type { Job, JobSoFar } from '../job.ts';
import type { LayoutResult, SetOut } from '../layout/set-out.ts';
import { massOf } from '../piece/mass.ts';
import type { Frame } from '../plan-shape.ts';
import type { Kilograms, Millimetres } from '../quantity.ts';
import { aboveFloor, bottomFromJob } from './heights.ts';

/** A field of a job as heard: its value, "unknown", or not asked yet (only while a job is unfinished). */
type Heard<T> = T | 'unknown' | 'not-asked';

/** The piece on the wall. Heights above the finished floor, millimetres; null when not known. */
type OnWall = {
  readonly bottomMm: Millimetres | null;
  readonly topMm: Millimetres | null;
  readonly leftMm: Millimetres | null;
  readonly rightMm: Millimetres | null;
};

/** What the rules look at. Absent counts as unknown in a whole job, and as not asked in an unfinished one. */
export type Facts = {
  readonly whole: boolean;
  /** The marks are where they were measured; a plan that keeps clear has them elsewhere. */
  readonly asFound: boolean;
  readonly job: JobSoFar;
  readonly setOut: SetOut | null;
  readonly fixing: FixingResult | null;
  readonly massKg: Kilograms | null;
  readonly onWall: OnWall;
  /** A piece among others: what they are together, since it can't be moved without them. */
  readonly group: GroupFacts | null;
  readonly heard: <T>(value: T | undefined) => Heard<NonNullable<T>>;
};

/** Several pieces as one: facts with the rectangle round them and every mark for set-out, and each frame in it. */
export type GroupFacts = { readonly facts: Facts; readonly frames: readonly Frame[] };

/**
 * `asFound`: the marks are where a person measured them, and the plan has them elsewhere. Of a piece among others:
 * `group` is what they are together, `stopped` says that another of them stops the job.
 */
export type Context = {
  job: Job;
  setOut: LayoutResult;
  fixing: FixingResult | null;
  asFound?: true;
  group?: GroupFacts;
  stopped?: true;
};

/** Facts of a whole job with what was computed for it. */
export function factsOf({ job, setOut, fixing, asFound, group }: Context): Facts {
  const set = setOut.ok ? setOut : null;
  return {
    whole: true,
    asFound: asFound === true,
    job,
    setOut: set,
    fixing,
    massKg: massKnown(job),
    onWall: set
      ? placed(job, set)
      : { leftMm: null, rightMm: null, topMm: null, bottomMm: bottomFromJob(job) },
    group: group ?? null,
    heard: (value) => value ?? 'unknown',
  };
}

/** Facts of an unfinished job: nothing is computed yet, and nobody was asked what is absent. */
export function factsSoFar(job: JobSoFar): Facts {
  return {
    whole: false,
    asFound: false,
    job,
    setOut: null,
    fixing: null,
    massKg: massKnown(job),
    onWall: { leftMm: null, rightMm: null, topMm: null, bottomMm: bottomFromJob(job) },
    group: null,
    heard: (value) => value ?? 'not-asked',
  };
}

function massKnown({ piece }: JobSoFar): Kilograms | null {
  if (piece?.massKg !== undefined) return piece.massKg;
  const { build, widthMm, heightMm } = piece ?? {};
  if (!build || widthMm === undefined || heightMm === undefined) return null;
  const { massKg } = massOf({ build, widthMm, heightMm });
  return Number.isFinite(massKg) ? massKg : null;
}

function placed(job: Job, { frame, datumAboveFloorMm }: SetOut): OnWall {
  return {
    leftMm: frame.leftMm,
    rightMm: frame.rightMm,
    bottomMm: aboveFloor(job, frame.bottomMm, datumAboveFloorMm),
    topMm: aboveFloor(job, frame.topMm, datumAboveFloorMm),
  };
}
