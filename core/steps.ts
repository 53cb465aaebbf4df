import type { Job } from './job.ts';
import type { SetOut } from './layout/set-out.ts';
import type { Fixing, Mark, Plan } from './plan-shape.ts';
import { screwName } from './shopping.ts';

const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/** The order of work at the wall for a plan that may be drilled, a sentence each. Common practice, no source. */
export function stepsOf(job: Job, plan: Plan): string[] {
  const { fixing } = plan;
  if (!fixing) return [];
  return [
    'Look at both faces of the wall again; scan across and up. A quiet detector proves nothing.',
    'Switch off the circuits in this wall at the board and prove them dead; drill on battery.',
    ...marking(job, plan.marks),
    ...checking(plan.crossChecks),
    ...drilling(fixing),
    ...setting(fixing),
    'Two hands on the frame: one side on, then the other, each hanger seen to be seated. Let the load come on slowly.',
    'Level on the top edge, press each lower corner, and look yearly at hooks, cord and wall.',
  ];
}

function marking(job: Job, marks: readonly Mark[]): string[] {
  const [first] = marks;
  if (!first) return [];
  const datum = job.wall.datum?.kind ?? 'floor';
  const height =
    first.downMm !== undefined
      ? `${tenth(first.downMm)} down from the ceiling`
      : `${tenth(first.upMm ?? 0)} up from the ${datum}`;
  return [
    `Tape on the wall. Mark ${first.id}: ${tenth(first.fromLeftMm)} from the left end, ${height}.`,
    ...(marks.length > 1
      ? ['Carry the height across from that one mark with a level; do not measure up twice.']
      : []),
    ...marks
      .slice(1)
      .map(
        (mark) =>
          `Mark ${mark.id}: ${tenth(mark.fromLeftMm)} from the left end, ${tenth(mark.fromRightMm)} from the right.`,
      ),
  ];
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

const ACTION: Record<Fixing['bit']['action'], string> = {
  'hammer-after-finish': 'rotary through the finish, hammer only once in the solid',
  'rotary-until-known':
    'rotary. One dust colour and a steady feed to full depth means solid there; a drop means stop and plan again',
  rotary: 'rotary, no hammer',
  none: 'by hand',
};

function drilling({ bit, fastener }: Fixing): string[] {
  if (bit.kind === 'none') return [];
  const where = fastener === 'board-across-studs' ? 'Through the board into each stud' : 'At each mark';
  return [
    `${where}: ${tenth(bit.diameterMm)} mm ${bit.kind} bit, stop at ${tenth(bit.depthMm)} mm, ${ACTION[bit.action]}.`,
    ...(bit.kind === 'masonry' || bit.kind === 'tile'
      ? ['Vacuum the hole to the bottom; do not blow it.']
      : []),
    'Stop on any change of feel, metal, damp or a void.',
  ];
}

function setting({ fastener, note, plug, screw }: Fixing): string[] {
  const steps: string[] = [];
  if (plug)
    steps.push(
      `Push the ${tenth(plug.diameterMm)} x ${tenth(plug.lengthMm)} mm plug in until its rim is past the finish, at the base material.`,
    );
  if (fastener === 'resin-stud')
    steps.push('Fill from the back of the hole and turn the stud in; keep off it until it has cured.');
  else if (screw) steps.push(`Fit the ${screwName(screw)}, the last turns by hand.`);
  if (note) steps.push(note);
  return steps;
}

/** What to carry to the wall. */
export function toolsOf(fixing: Fixing, layout: SetOut): string[] {
  return [
    'tape measure',
    'spirit level',
    'pencil and painter’s tape',
    'detector for metal, live wire and studs',
    'drill',
    ...(fixing.bit.action === 'hammer-after-finish' ? ['hammer action on the drill'] : []),
    'depth stop',
    'vacuum with a fine filter',
    'eye protection',
    ...(layout.batten ? ['straight edge as long as the batten'] : []),
    'screwdriver',
  ];
}
