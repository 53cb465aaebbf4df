import { knownStuds, landing, studAt } from '../../wall/studs.ts';
import { nominalOf } from '../steel/screw-sizes.ts';
import type { BoardPlace } from './board-place.ts';

/** Marks that carry and have timber behind them: none, some, all; or one where neither holds. */
export function timberMarks({ job, setOut, load }: BoardPlace): readonly string[] | 'all' | 'edge' {
  const studs = knownStuds(job.wall);
  if (!studs) return [];
  const on: string[] = [];
  let carrying = 0;
  for (const [at, mark] of setOut.marks.entries()) {
    if (!((load.actions.perMark[at]?.shearN ?? 0) > 0)) continue;
    carrying += 1;
    if (landing(mark.fromLeftMm, studs, nominalOf(10).nominalMm).on) on.push(mark.id);
    else if (Math.abs(mark.fromLeftMm - studAt(mark.fromLeftMm, studs)) <= studs.widthMm / 2) return 'edge';
  }
  return carrying > 0 && on.length === carrying ? 'all' : on;
}
