import type { Fixing } from '../fixing/fixing-shape.ts';
import { holds } from '../fixing/hand/in-hand.ts';
import type { Job } from '../job.ts';
import type { SetOut } from '../layout/set-out.ts';
import type { Actions } from '../plan-shape.ts';
import { fixingName } from './fixing-name.ts';
import { whichPieces } from './which-pieces.ts';

type Held = { job: Job; layout: SetOut; fixing: Fixing; actions: Actions };

/** Which piece asks most of one fixing: the largest pull and weight together at a mark. Its number from 0. */
export function hardestToHold(pieces: readonly Pick<Held, 'actions' | 'fixing'>[]): number {
  const most = pieces.map(({ actions }) =>
    Math.max(0, ...actions.perMark.map((each) => Math.hypot(each.shearN, each.tensionN))),
  );
  return most.indexOf(Math.max(...most));
}

/** Where pieces need different fixings: whether the strongest would do for all, so that one bit and one box serve. */
export function oneForAll(pieces: readonly Held[], strongestAt: number): string[] {
  const strongest = pieces[strongestAt]?.fixing;
  const name = strongest && fixingName(strongest);
  const alike = pieces.every((each) => each.fixing.fastener === strongest?.fastener);
  if (!strongest || !alike || pieces.every((each) => fixingName(each.fixing) === name)) return [];
  const { fastener, bit, plug, screw } = strongest;
  const inHand = { fastener, bit, ...(plug && { plug }), ...(screw && { screw }) };
  const others = pieces.flatMap((each, nth) => (fixingName(each.fixing) === name ? [] : [nth]));
  const serves = others.filter((nth) => {
    const { job, layout } = pieces[nth] as Held;
    return holds(job, layout, inHand).holds;
  });
  return serves.length === others.length
    ? [
        `To carry one bit and one box: ${name}, as for piece ${strongestAt + 1}, holds ${whichPieces(serves).toLowerCase()} too.`,
      ]
    : [];
}
