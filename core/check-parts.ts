import type { InHand } from './fixing/hand/hand.ts';
import type { HandVerdict } from './fixing/hand/in-hand.ts';
import { holds } from './fixing/hand/in-hand.ts';
import { forPieces, saidOnce } from './group/which-pieces.ts';
import type { GroupJob } from './group-job.ts';
import type { Job } from './job.ts';
import { setOutGroup } from './layout/group/group-set-out.ts';
import { setOut } from './layout/marks.ts';
import type { SetOut } from './layout/set-out.ts';
import { type Pair, tiltBetween } from './measured-marks.ts';
import type { Degrees } from './quantity.ts';

/** One piece as it was planned, alone or among others. */
export type Part = { job: Job; layout: SetOut };

/** The pieces of a job that is set out; null where it can't be. */
export function partsOf(job: Job | GroupJob): Part[] | null {
  if ('pieces' in job) {
    const group = setOutGroup(job);
    return group.ok ? group.pieces : null;
  }
  const layout = setOut(job);
  return layout.ok ? [{ job, layout }] : null;
}

/** The tilt of the piece that would hang most crooked; null where no piece has two marks measured. */
export function worstTilt(parts: readonly Part[], pairs: readonly Pair[]): Degrees | null {
  const tilts = parts.flatMap(({ layout }) => {
    const own = pairs.filter(({ planned }) => layout.marks.some((mark) => mark.id === planned.id));
    return tiltBetween(own) ?? [];
  });
  return tilts.reduce<Degrees | null>(
    (worst, tilt) => (worst === null || Math.abs(tilt) > Math.abs(worst) ? tilt : worst),
    null,
  );
}

/** Whether the fixing in the hand holds every piece; the words name those it does not hold alike. */
export function holdsAll(parts: readonly Part[], inHand: InHand): HandVerdict {
  const verdicts = parts.map(({ job, layout }) => holds(job, layout, inHand));
  const used = verdicts.flatMap((each) => each.utilisation ?? []);
  const texts = saidOnce(
    verdicts.map((each) => [each.text]),
    (text) => text,
    (text, pieces) => forPieces(pieces, text),
  );
  return {
    holds: verdicts.every((each) => each.holds),
    utilisation: used.length === verdicts.length ? Math.max(...used) : null,
    text: texts.join(' '),
  };
}
