import type { JobSoFar } from '../../core/job.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { mm } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';
import { inUnit } from './in-unit.ts';
import { length } from './length.ts';
import { sentence } from './sentence.ts';

/** Half of what a figure is rounded to before it is said. */
const ROUNDED = 0.5;

/** True for a figure that was said rounded: "119 N" of 118.9. */
export const isRoundedTo = (said: string, figure: string): boolean =>
  Math.abs(Number(said) - Number(figure)) <= ROUNDED;

type Told = { text: string; holds: string };

/**
 * The figures of a plan that follow from others by one step, each with that step: checks of the tape, distances
 * from the right, heights above the floor.
 */
export function otherFigures(plan: Plan, { wall }: JobSoFar, unit: DisplayUnit): Told[] {
  const said = (text: string, holds: string): Told => ({ text: sentence(text), holds });
  const above = wall?.datum?.aboveFloorMm;
  const width = wall?.widthMm;
  return [
    ...plan.crossChecks.map(({ text, expectMm, toleranceMm }) => {
      const is = length(expectMm, unit);
      const within = length(toleranceMm, unit);
      return said(
        `${text}: ${is}. It is a check with the tape, reckoned from the same marks and frame by another way; more than ${within} off, and one of them is wrong`,
        is,
      );
    }),
    ...plan.marks.flatMap(({ id, fromLeftMm, fromRightMm }) => {
      const is = length(fromRightMm, unit);
      if (width === undefined) return [];
      return said(
        `mark ${id} from the right: ${is}. It is the wall's width less what it is from the left: ${length(width, unit)} less ${length(fromLeftMm, unit)}`,
        is,
      );
    }),
    ...plan.marks.flatMap(({ id, upMm }) => {
      if (upMm === undefined || above === undefined || above === 0) return [];
      const is = length(mm(upMm + above), unit);
      return said(
        `mark ${id} above the floor: ${is}. It is ${length(upMm, unit)} above where you measure from, and that is ${length(above, unit)} above the floor`,
        is,
      );
    }),
  ];
}

/** The warnings that name a figure. */
export const warnsOf = (plan: Plan, unit: DisplayUnit): (Plan['cautions'][number] & { said: string })[] =>
  plan.cautions
    .filter(({ severity }) => severity !== 'note')
    .map((each) => ({ ...each, said: inUnit(each.text, unit) }));
