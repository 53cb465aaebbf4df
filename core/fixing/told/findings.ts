import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { tensionFactor } from '../../piece/cord-tension.ts';
import { FLAT_CORD, ONE_HOOK } from '../../piece/hook-limits.ts';
import type { Load } from '../acting/actions.ts';

export type Finding = { id: string; text: string };

/** What the hanging itself gives cause to say, whatever the wall: ids of the caution rules. */
export function findingsOf(job: Job, setOut: SetOut, load: Load): Finding[] {
  const found: Finding[] = [];
  const { upTo, upToWidth } = ONE_HOOK.value;
  if (
    setOut.marks.length === 1 &&
    job.piece.hanging.by !== 'batten' &&
    (load.massKg > upTo || job.piece.widthMm > upToWidth)
  ) {
    found.push({
      id: 'C-HG-1',
      text: 'Use two hooks. It hangs straighter, and if one lets go the other may hold it.',
    });
  }
  const angle = setOut.cord?.legAngle;
  if (angle !== undefined && angle < FLAT_CORD.value) {
    const ofWeight = Math.round((tensionFactor(angle) / 2) * 10) / 10;
    found.push({
      id: 'C-HG-2',
      text: `That wire is nearly flat, so it pulls ${ofWeight} times the weight. Lengthen it or hang from the rings.`,
    });
  }
  return found;
}
