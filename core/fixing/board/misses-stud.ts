import type { Millimetres } from '../../quantity.ts';
import { knownStuds, landing } from '../../wall/studs.ts';
import type { BoardPlace } from './board-place.ts';

/** Why a fastening that must be in a stud can't be put at the marks that carry; null when it can. */
export function missesStud({ job, setOut, load }: BoardPlace, diameterMm: Millimetres): string | null {
  if (job.piece.hanging.by === 'batten') return 'the piece hangs on a batten';
  const studs = knownStuds(job.wall);
  if (!studs) return 'where the studs are is not known; find them first, it is the better fixing';
  const carrying = setOut.marks.filter((_, at) => (load.actions.perMark[at]?.shearN ?? 0) > 0);
  const missing = carrying.filter((mark) => !landing(mark.fromLeftMm, studs, diameterMm).on);
  if (missing.length === 0) return null;
  const who = missing.map((mark) => mark.id).join(' and ');
  return `${missing.length === 1 ? 'mark' : 'marks'} ${who} can’t take it: not enough of the stud round the screw`;
}
