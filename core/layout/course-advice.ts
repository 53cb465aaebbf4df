import type { Country } from '../job.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Basis, basisOf } from '../sources.ts';
import {
  driftAt,
  driftBasis,
  isCoursed,
  JOINT_CLEARANCE,
  joints,
  type KnownCourses,
  placeInCourse,
  shiftOffJoints,
} from '../wall/courses.ts';
import { eitherGauge, formatOf } from '../wall/formats.ts';
import type { Wall } from '../wall/wall.ts';
import type { PlacedMark } from './cross-checks.ts';
import { lengthText } from './length-text.ts';
import { NOISE } from './tolerance.ts';

/** Which marks fall in a joint by the coursing, in words, and how far the piece would have to go. */
export type OnCourses = { on: Map<string, string>; advice: string[]; basis: Basis[] };

const FEEL =
  'Coursing drifts, so it never says where to drill: feel for the joint with a fine bit or a pin, and look at the dust.';

/** Joints one way, the marks' places along it, and the words for both. */
type Way = {
  joint: 'bed joint' | 'perpend';
  ways: readonly [string, string];
  courses: KnownCourses;
  known: 'format' | 'measured';
  at: { id: string; mm: Millimetres }[];
};

/**
 * Marks against the bed joints of a wall, and against its perpends where one was measured; the module as measured,
 * else by the country's format. Null where no joint was measured, or nothing tells the module.
 */
export function onCourses(
  placed: readonly PlacedMark[],
  wall: Wall,
  levelAboveFloorMm: Millimetres | null,
  country: Country | 'unknown' | undefined,
  what: 'piece' | 'group' = 'piece',
): OnCourses | null {
  if (!isCoursed(wall.baseMaterial)) return null;
  const format = formatOf(wall.baseMaterial, country);
  const { gaugeMm, firstBedMm, jointMm, lengthMm, perpendMm } = wall.courses ?? {};
  const beds = joints(gaugeMm ?? format?.gaugeMm, firstBedMm, jointMm);
  const perpends = joints(lengthMm ?? format?.lengthMm, perpendMm, jointMm);
  const first = placed[0];
  const level = placed.filter((each) => Math.abs(each.yMm - (first?.yMm ?? 0)) <= NOISE);
  const found: Way[] = [
    ...(beds && levelAboveFloorMm !== null
      ? [way('bed joint', beds, gaugeMm, placed, (each) => each.yMm + levelAboveFloorMm)]
      : []),
    ...(perpends ? [way('perpend', perpends, lengthMm, level, (each) => each.xMm)] : []),
  ];
  if (found.length === 0) return eitherOf(wall, country);
  const told = found.map((each) => said(each, what));
  const on = new Map(told.flatMap((each) => each.on));
  return {
    on,
    advice: [[...told.flatMap((each) => each.lines), FEEL].join(' ')],
    basis: [
      basisOf(JOINT_CLEARANCE),
      ...found.map((each) => driftBasis(each.known)),
      ...(found.some((each) => each.known === 'format') ? (format?.basis ?? []) : []),
    ],
  };
}

const way = (
  joint: Way['joint'],
  courses: KnownCourses,
  measured: Millimetres | undefined,
  marks: readonly PlacedMark[],
  place: (mark: PlacedMark) => number,
): Way => ({
  joint,
  ways: joint === 'perpend' ? ['to the left', 'to the right'] : ['down', 'up'],
  courses,
  known: measured === undefined ? 'format' : 'measured',
  at: marks.map((each) => ({ id: each.id, mm: mm(place(each)) })),
});

/** What is told of the marks one way: too far from the joint that was measured to tell, clear of the joints, or in one. */
function said(
  { joint, ways, courses, known, at }: Way,
  what: string,
): { on: [string, string][]; lines: string[] } {
  const drifts = at.map((each) => ({ id: each.id, ...driftAt(each.mm, courses, known) }));
  const far = drifts.find((each) => !each.tells);
  if (far) {
    const by = known === 'format' ? ' by the usual size' : '';
    return {
      on: [],
      lines: [
        `The ${joint} you gave is ${far.units} units from ${far.id}, where the coursing may be ${lengthText(far.driftMm)} out${by}: measure one near the marks.`,
      ],
    };
  }
  const places = at.map((each) => ({ id: each.id, ...placeInCourse(each.mm, courses) }));
  const clashes = places.filter(({ where }) => where !== 'clear');
  const on = places.flatMap(({ id, where }): [string, string][] =>
    joint === 'perpend' && where === 'clear' ? [] : [[id, wordsFor(where, joint)]],
  );
  if (clashes.length === 0) return { on, lines: [] };
  const who = clashes.map(({ id }) => id).join(' and ');
  const shift = shiftOffJoints(
    at.map((each) => each.mm),
    courses,
  );
  const move =
    shift === null
      ? `No one move of the ${what} keeps every mark clear of the joints.`
      : `Moving the ${what} ${lengthText(mm(Math.abs(shift)))} ${shift < 0 ? ways[0] : ways[1]} keeps every mark clear.`;
  return {
    on,
    lines: [
      `By the coursing ${who} ${clashes.length === 1 ? 'falls' : 'fall'} in or close to a ${joint}. ${move}`,
    ],
  };
}

function wordsFor(where: 'bed-joint' | 'near-joint' | 'clear', joint: string): string {
  if (where === 'clear') return 'a unit by the coursing: feel for it';
  return `${where === 'bed-joint' ? 'in' : 'close to'} a ${joint} by the coursing: feel for it`;
}

/** A joint was measured, and the country builds with two heights of brick: only measuring tells. */
function eitherOf(wall: Wall, country: Country | 'unknown' | undefined): OnCourses | null {
  const either = eitherGauge(wall.baseMaterial, country);
  if (either === null || wall.courses?.firstBedMm === undefined) return null;
  const heights = either.gaugesMm.map(lengthText).join(' or ');
  return {
    on: new Map(),
    advice: [
      `Bricks here may course at ${heights}: measure four courses, and I say which mark falls in a joint. ${FEEL}`,
    ],
    basis: [...either.basis],
  };
}
