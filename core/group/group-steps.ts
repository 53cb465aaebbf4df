import type { Fixing } from '../fixing/fixing-shape.ts';
import { holeSteps } from '../hole-steps.ts';
import type { Job } from '../job.ts';
import type { CrossCheck, Mark } from '../plan-shape.ts';
import { BEFORE_MARKING, hangingSteps, heightWords, offLevel } from '../steps.ts';
import { whichPieces } from './which-pieces.ts';

/** One piece of a group with all that is done for it at the wall. */
export type ToHang = { job: Job; marks: readonly Mark[]; crossChecks: readonly CrossCheck[]; fixing: Fixing };

const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/** The order of work for several pieces: all marked from one end, all checked, all drilled, then hung. Common practice, no source. */
export function groupSteps(pieces: readonly ToHang[], between: readonly CrossCheck[]): string[] {
  return [
    ...BEFORE_MARKING,
    ...markingAll(pieces),
    ...pieces.map(checkingOne),
    ...checkingBetween(between),
    ...drillingAll(pieces),
    ...(pieces.length > 1
      ? ['Hang piece 1, step back, then the others in order, each gap measured edge to edge as it goes up.']
      : []),
    ...hangingSteps(pieces.map(({ job }) => job.piece)),
  ];
}

function markingAll(pieces: readonly ToHang[]): string[] {
  const [first] = pieces;
  const datum = first?.marks[0];
  if (!first || !datum) return [];
  const later = pieces.map(({ marks }, nth) => {
    const rest = nth === 0 ? marks.slice(1) : marks;
    const told = rest.map((mark) => `${mark.id} ${tenth(mark.fromLeftMm)} mm${offLevel(mark, datum)}`);
    return told.length === 0 ? [] : [`Piece ${nth + 1}, from the left end: ${told.join('; ')}.`];
  });
  return [
    'Hook the tape at the left end of the wall and leave it there: every figure across is from that one end.',
    `Tape on the wall. Mark ${datum.id}: ${tenth(datum.fromLeftMm)} mm across, ${heightWords(datum, first.job.wall)}.`,
    ...(pieces.length > 1 || first.marks.length > 1
      ? [
          `Carry the height of ${datum.id} across with a level and do not measure up again; the other marks are on that line but for what is said.`,
        ]
      : []),
    ...later.flat(),
  ];
}

/** Both ends of the wall are left to whoever wants a second check: all was measured from one. */
function checkingOne({ crossChecks }: ToHang, nth: number): string {
  const told = crossChecks.filter(({ text }) => !text.includes(' from the left plus '));
  return `Check piece ${nth + 1} with the tape, ${within(told)}`;
}

const checkingBetween = (between: readonly CrossCheck[]): string[] =>
  between.length === 0 ? [] : [`Check between the pieces, ${within(between)}`];

function within(checks: readonly CrossCheck[]): string {
  const tolerance = tenth(Math.max(...checks.map((each) => each.toleranceMm)));
  return `each within ${tolerance} mm: ${checks.map((each) => `${each.text} ${tenth(each.expectMm)} mm`).join('; ')}.`;
}

/** Holes that are made alike are told once. */
function drillingAll(pieces: readonly ToHang[]): string[] {
  const alike = new Map<string, { steps: string[]; numbers: number[] }>();
  for (const [nth, { fixing, job }] of pieces.entries()) {
    const steps = holeSteps(fixing, job);
    const name = steps.join('\n');
    const known = alike.get(name);
    if (known) known.numbers.push(nth);
    else alike.set(name, { steps, numbers: [nth] });
  }
  const all = alike.size === 1;
  return [
    ...(pieces.length > 1
      ? ['Make every hole before anything is hung, so that no dust falls on a frame.']
      : []),
    ...[...alike.values()].flatMap(({ steps, numbers }) =>
      all ? steps : [`${whichPieces(numbers)}:`, ...steps],
    ),
  ];
}
