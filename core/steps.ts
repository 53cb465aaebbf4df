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
    ...plan.crossChecks.map((check) => `Check ${check.text}: ${tenth(check.expectMm)} mm, within ${tenth(check.toleranceMm)}.`),
    ...drilling(fixing),
    ...setting(fixing),
    'Two hands on the frame: one side on, then the other, each hanger seen to be seated. Let the load come on slowly.',
    'Level on the top edge, press each lower corner, and look yearly at hooks, cord and wall.',
  ];
}

function marking(job: Job, marks: readonly Mark[]): string[] {
  const [first] = marks;
  if (!first) return [];
  const from = job.wall.datum?.kind === 'ceiling' ? 'down from the ceiling' : `up from the ${job.wall.datum?.kind ?? 'floor'}`;
  const height = first.downMm ?? first.upMm;
  return [
    `Tape on the wall. Mark ${first.id}: ${tenth(first.fromLeftMm)} from the left end, ${height === undefined ? '' : `${tenth(height)} ${from}`}.`,
    ...(marks.length > 1 ? ['Carry the height across from that one mark with a level; do not measure up twice.'] : []),
    ...marks.slice(1).map((mark) => `Mark ${mark.id}: ${tenth(mark.fromLeftMm)} from the left end, ${tenth(mark.fromRightMm)} from the right.`),
  ];
}

function drilling(fixing: Fixing): string[] {
  const { bit, pilot } = fixing;
  const hole = `${tenth(bit.diameterMm)} mm ${bit.kind} bit, stop at ${tenth(bit.depthMm)} mm`;
  const steps: string[] = [];
  if (bit.action === 'hammer-after-finish') steps.push(`Drill ${hole}: rotary through the finish, hammer only once in the solid.`);
  if (bit.action === 'rotary-until-known') steps.push(`Drill ${hole}, rotary. One dust colour and a steady feed to full depth means solid there; a drop means stop and tell me.`);
  if (bit.action === 'rotary') steps.push(`Drill ${hole}, rotary, no hammer.`);
  if (pilot && pilot.depthMm !== bit.depthMm) steps.push(`Pilot ${tenth(pilot.diameterMm)} mm, ${tenth(pilot.depthMm)} mm deep.`);
  if (bit.kind === 'masonry') steps.push('Vacuum the hole to the bottom; do not blow it.');
  steps.push('Stop on any change of feel, metal, damp or a void.');
  return steps;
}

function setting(fixing: Fixing): string[] {
  const steps: string[] = [];
  if (fixing.plug) steps.push(`Push the ${tenth(fixing.plug.diameterMm)} x ${tenth(fixing.plug.lengthMm)} mm plug in until its rim is past the finish, at the base material.`);
  if (fixing.screw) steps.push(`Fit the ${screwName(fixing.screw)}, the last turns by hand.`);
  if (fixing.note) steps.push(fixing.note);
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
