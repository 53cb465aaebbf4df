import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { type Basis, basisOf, sourced } from '../sources.ts';
import type { BaseMaterial } from './wall.ts';

/** Coursing that is known: gauge, lower edge of the first bed joint above the floor, joint thickness. Millimetres. */
export type KnownCourses = { gaugeMm: Millimetres; firstBedMm: Millimetres; jointMm: Millimetres };

/** Where a height falls in the coursing, and how far up or down the nearest clear place in a unit is. */
export type CoursePlace = {
  where: 'bed-joint' | 'near-joint' | 'clear';
  /** Bed joint nearest below or at the height, counted from 1. */
  joint: number;
  moveMm: Millimetres;
};

/** Course heights by country: gauge is unit and joint together. */
export const GAUGES = {
  AU: sourced(mm(76 + 10), 'AS/NZS4455.1', 'work size 230 x 110 x 76, joint 10', 'read'),
  UK: sourced(mm(75), 'EN771-1', 'co-ordinating size 225 x 112.5 x 75', 'read'),
  US: sourced(mm((8 * MM_PER_INCH) / 3), 'BIA-TN10', 'modular: three courses in 8 in', 'read'),
} as const;
/** Length of an Australian brick and one perpend. */
export const MODULE_AU = sourced(mm(230 + 10), 'AS/NZS4455.1', 'work size 230, joint 10', 'read');

export const USUAL_JOINT = sourced(mm(10), 'AS/NZS4455.1', 'joint 10', 'read');
/** A plug keeps this far from the edge of a joint. */
export const JOINT_CLEARANCE = sourced(
  mm(15),
  'common-practice',
  'trade: never less than 15 from a bed joint edge',
  'common-practice',
);

/** How far coursing may be out for each unit between a joint that was measured and a mark, by how its module is known. */
const DRIFT = {
  format: sourced(mm(50 / 20), 'AS/NZS4455.1', 'category DW1: 20 units within 50 either way', 'read'),
  measured: sourced(mm(2 / 4), 'our-choice', 'four courses read with a tape to 2', 'our-choice'),
};

const COURSED: readonly BaseMaterial[] = ['clay-brick', 'concrete-block', 'aerated-concrete'];

/** Whether a base material is laid in courses. */
export const isCoursed = (base: BaseMaterial): boolean => COURSED.includes(base);

/** Joints at a module from one that was measured, or null where a figure is missing or is none. Millimetres. */
export function joints(
  moduleMm: Millimetres | undefined,
  firstMm: Millimetres | undefined,
  jointMm: Millimetres = USUAL_JOINT.value,
): KnownCourses | null {
  if (moduleMm === undefined || firstMm === undefined) return null;
  const sound = Number.isFinite(firstMm) && Number.isFinite(moduleMm) && jointMm >= 0 && moduleMm > jointMm;
  return sound ? { gaugeMm: moduleMm, firstBedMm: firstMm, jointMm } : null;
}

/** How far off the joints may be at a place, and whether that is little enough to speak of them there. Millimetres. */
export function driftAt(
  atMm: Millimetres,
  { gaugeMm, firstBedMm }: KnownCourses,
  known: 'format' | 'measured',
): { units: number; driftMm: Millimetres; tells: boolean } {
  const units = Math.round(Math.abs(atMm - firstBedMm) / gaugeMm);
  const driftMm = mm(units * DRIFT[known].value);
  return { units, driftMm, tells: driftMm <= JOINT_CLEARANCE.value };
}

/** What the drift rests on. */
export const driftBasis = (known: 'format' | 'measured'): Basis => basisOf(DRIFT[known]);

/** Height of n courses: n x gauge. Millimetres. */
export function coursesHigh(n: number, gaugeMm: Millimetres): Millimetres {
  return mm(n * gaugeMm);
}

/** Middle of the nth unit above the lower edge of the first bed joint: y = (n - 1) g + j + h / 2. Millimetres. */
export function unitMiddle(
  n: number,
  gaugeMm: Millimetres,
  jointMm: Millimetres,
  unitMm: Millimetres,
): Millimetres {
  return mm((n - 1) * gaugeMm + jointMm + unitMm / 2);
}

/**
 * Where a height above the floor falls by the coursing. Bricks vary by several millimetres and coursing drifts, so
 * this never says where to drill: it says where to feel for a joint.
 */
export function placeInCourse(heightMm: Millimetres, courses: KnownCourses): CoursePlace {
  const { gaugeMm, firstBedMm, jointMm } = courses;
  const nth = Math.floor((heightMm - firstBedMm) / gaugeMm);
  const into = heightMm - firstBedMm - nth * gaugeMm;
  const [low, high] = clearBand(courses);
  if (into >= low && into <= high) return { where: 'clear', joint: nth + 1, moveMm: mm(0) };
  const up = into < low ? low - into : low + gaugeMm - into;
  const down = into > high ? high - into : high - gaugeMm - into;
  const moveMm = mm(up <= 0 - down ? up : down);
  return { where: into <= jointMm ? 'bed-joint' : 'near-joint', joint: nth + 1, moveMm };
}

/** The band of a course, above the lower edge of its joint, that keeps clear of both joints; its middle when too thin. */
function clearBand({ gaugeMm, jointMm }: KnownCourses): [number, number] {
  const low = jointMm + JOINT_CLEARANCE.value;
  const high = gaugeMm - JOINT_CLEARANCE.value;
  const middle = (jointMm + gaugeMm) / 2;
  return low <= high ? [low, high] : [middle, middle];
}

/** The least move of all marks together, up positive and up on a tie, that keeps each clear of the joints; null when none does. */
export function shiftOffJoints(heights: readonly Millimetres[], courses: KnownCourses): Millimetres | null {
  const clear = (shift: number): boolean =>
    heights.every((height) => placeInCourse(mm(height + shift), courses).where === 'clear');
  const [low, high] = clearBand(courses);
  const tries = heights.flatMap((height) => {
    const course =
      courses.firstBedMm + Math.floor((height - courses.firstBedMm) / courses.gaugeMm) * courses.gaugeMm;
    return [-1, 0, 1].flatMap((nth) =>
      [low, high].map((edge) => course + nth * courses.gaugeMm + edge - height),
    );
  });
  const good = [0, ...tries]
    .filter(clear)
    .sort((one, other) => Math.abs(one) - Math.abs(other) || other - one);
  return good[0] === undefined ? null : mm(good[0]);
}
