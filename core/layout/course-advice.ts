import { type Millimetres, mm } from '../quantity.ts';
import { type Basis, basisOf } from '../sources.ts';
import { JOINT_CLEARANCE, knownCourses, placeInCourse, shiftOffJoints } from '../wall/courses.ts';
import type { Wall } from '../wall/wall.ts';
import type { PlacedMark } from './cross-checks.ts';
import { lengthText } from './length-text.ts';

/** Which marks fall in a joint by the coursing, in words, and how far up or down the piece would have to go. */
export type OnCourses = { on: Map<string, string>; advice: string[]; basis: Basis[] };

const FEEL =
  'Coursing drifts, so it never says where to drill: feel for the joint with a fine bit or a pin, and look at the dust.';

/** Marks against the coursing of a wall, or null where it or the height above the floor is not known. */
export function onCourses(
  placed: readonly PlacedMark[],
  wall: Wall,
  levelAboveFloorMm: Millimetres | null,
  what: 'piece' | 'group' = 'piece',
): OnCourses | null {
  const courses = knownCourses(wall);
  if (!courses || levelAboveFloorMm === null) return null;
  const heights = placed.map(({ yMm }) => mm(yMm + levelAboveFloorMm));
  const places = heights.map((height) => placeInCourse(height, courses));
  const on = new Map(placed.map(({ id }, at) => [id, wordsFor(places[at]?.where)]));
  const clashes = placed.filter((_, at) => places[at]?.where !== 'clear');
  if (clashes.length === 0) return { on, advice: [FEEL], basis: [basisOf(JOINT_CLEARANCE)] };
  const who = clashes.map(({ id }) => id).join(' and ');
  const inJoint =
    clashes.length === 1
      ? `${who} falls in or close to a bed joint`
      : `${who} fall in or close to a bed joint`;
  const shift = shiftOffJoints(heights, courses);
  const move =
    shift === null
      ? `No one move of the ${what} keeps every mark clear of the joints.`
      : `Moving the ${what} ${lengthText(mm(Math.abs(shift)))} ${shift < 0 ? 'down' : 'up'} keeps every mark clear.`;
  return { on, advice: [`By the coursing ${inJoint}. ${move} ${FEEL}`], basis: [basisOf(JOINT_CLEARANCE)] };
}

function wordsFor(where: 'bed-joint' | 'near-joint' | 'clear' | undefined): string {
  if (where === 'bed-joint') return 'in a bed joint by the coursing: feel for it';
  return where === 'near-joint'
    ? 'close to a bed joint by the coursing: feel for it'
    : 'a unit by the coursing: feel for it';
}
