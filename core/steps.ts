import type { Fixing } from './fixing/fixing-shape.ts';
import { holeSteps } from './hole-steps.ts';
import type { Job } from './job.ts';
import { bumpersFor } from './layout/lean-advice.ts';
import type { SetOut } from './layout/set-out.ts';
import type { Mark, Plan } from './plan-shape.ts';

const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/** The order of work at the wall for a plan that may be drilled, a sentence each. Common practice, no source. */
export function stepsOf(job: Job, plan: Plan): string[] {
  const { fixing } = plan;
  if (!fixing) return [];
  return [
    ...BEFORE_MARKING,
    ...marking(job, plan.marks),
    ...checking(plan.crossChecks),
    ...holeSteps(fixing, job),
    ...hangingSteps([job.piece]),
  ];
}

export const BEFORE_MARKING: readonly string[] = [
  'Look at both faces of the wall again; scan across and up. A quiet detector proves nothing.',
  'Switch off the circuits in this wall at the board and prove them dead; drill on battery.',
];

/** Lifting on, bumpers as thick as the hangers stand off, so that it hangs upright and stays put, and the last look. */
export function hangingSteps(pieces: readonly Job['piece'][]): string[] {
  const thick = [...new Set(pieces.flatMap((piece) => bumpersFor(piece) ?? []))];
  return [
    ...(thick.length > 0
      ? [
          `Bumpers of ${thick.map(tenth).join(' or ')} mm on both lower corners, as thick as the hangers stand off.`,
        ]
      : []),
    'Two hands on the frame: one side on, then the other, each hanger seen to be seated. Let the load come on slowly.',
    'Level on the top edge, press each lower corner, and look yearly at hooks, cord and wall.',
  ];
}

function marking(job: Job, marks: readonly Mark[]): string[] {
  const [first] = marks;
  if (!first) return [];
  return [
    `Tape on the wall. Mark ${first.id}: ${acrossWords(first)}, ${heightWords(first, job.wall)}.`,
    ...(marks.length > 1
      ? ['Carry the height across from that one mark with a level; do not measure up twice.']
      : []),
    ...marks.slice(1).map((mark) => `Mark ${mark.id}: ${acrossWords(mark)}${offLevel(mark, first)}.`),
  ];
}

export function heightWords({ upMm, downMm }: Mark, { datum }: Job['wall']): string {
  return downMm !== undefined
    ? `${tenth(downMm)} mm down from the ceiling`
    : `${tenth(upMm ?? 0)} mm ${datum?.kind === 'nosing' ? 'plumb up from the nosing line' : `up from the ${datum?.kind ?? 'floor'}`}`;
}

const acrossWords = (mark: Mark): string =>
  `${tenth(mark.fromLeftMm)} mm from the left end, ${tenth(mark.fromRightMm)} mm from the right`;

/** Uneven hangers: a later mark stands off the first one's level line by what they differ. */
export function offLevel(mark: Mark, first: Mark): string {
  const above =
    mark.downMm !== undefined && first.downMm !== undefined
      ? first.downMm - mark.downMm
      : (mark.upMm ?? 0) - (first.upMm ?? 0);
  const off = tenth(Math.abs(above));
  return off === '0' ? '' : `, ${off} mm ${above > 0 ? 'above' : 'below'} the level line of ${first.id}`;
}

/** One sentence a tolerance, so that a person reads the tape and not a list. */
function checking(checks: Plan['crossChecks']): string[] {
  const tolerances = [...new Set(checks.map((check) => check.toleranceMm))];
  return tolerances.map((tolerance) => {
    const figures = checks
      .filter((check) => check.toleranceMm === tolerance)
      .map((check) => `${check.text} ${tenth(check.expectMm)} mm`);
    return `Check with the tape, each within ${tenth(tolerance)} mm: ${figures.join('; ')}.`;
  });
}

/** What to carry to the wall. */
export function toolsOf(fixing: Fixing, layout: SetOut): string[] {
  return [
    'tape measure',
    'spirit level',
    'pencil and painter’s tape',
    'detector for metal, live wire and studs',
    ...(fixing.bit.kind === 'none' ? ['small hammer'] : ['drill']),
    ...(fixing.bit.action === 'hammer-after-finish' ? ['hammer action on the drill'] : []),
    ...(fixing.bit.kind === 'none' ? [] : ['depth stop', 'vacuum with a fine filter']),
    'eye protection',
    ...(layout.batten ? ['straight edge as long as the batten'] : []),
    'screwdriver',
  ];
}
