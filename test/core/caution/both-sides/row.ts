import { cautionsOf } from '../../../../core/caution/rules.ts';
import type { Fixing } from '../../../../core/fixing/fixing-shape.ts';
import type { SetOut } from '../../../../core/layout/set-out.ts';
import type { Severity } from '../../../../core/plan-shape.ts';
import { type Changes, heldAt, jobWith, setOutAt, severityOf } from '../ordinary-job.ts';

type Points = readonly (readonly [number, number])[];

/** What differs from the ordinary job, whose two marks are at 1680 up and whose hole is 40 mm deep. */
type Side = Changes & { at?: Points; holeMm?: number; fixing?: Partial<Fixing>; setOut?: Partial<SetOut> };

/** How severe, in words; null where it is not said. */
export type Case = readonly [says: string, severity: Severity | null, side: Side];

/** A row of the reference: its id, who says so and how well that is known, and jobs on both sides of its lines. */
export type Row = { readonly id: string; readonly from: string; readonly cases: readonly Case[] };

const USUAL: Points = [
  [1025, 1680],
  [1675, 1680],
];

/** What an id is said with of the ordinary job so changed; null where it is not said. */
export function said(
  id: string,
  { at = USUAL, holeMm = 40, fixing, setOut, ...changes }: Side,
): Severity | null {
  const cautions = cautionsOf({
    job: jobWith(changes),
    setOut: setOutAt(at, setOut),
    fixing: heldAt(holeMm, fixing),
  });
  return (severityOf(cautions, id) as Severity | undefined) ?? null;
}

/** Two marks level with each other, the first of them so far across. */
export const across = (x: number): Points => [
  [x, 1680],
  [1800, 1680],
];

/** Two marks at this height above the floor: the piece of the ordinary job reaches 880 below them and 240 above. */
export const up = (y: number): Points => [
  [1025, y],
  [1675, y],
];

/** The same with the bottom edge of the piece at this height. */
export const bottomAt = (bottom: number): Points => up(bottom + 880);
