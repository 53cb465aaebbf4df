import type { Job, JobSoFar } from '../core/job.ts';
import type { Hanging, HangingSoFar } from '../core/piece/piece.ts';

/** True when nothing about the hangers is left to ask. A cord says how far it pulls up, or its length. */
export function hangingIsWhole(hanging: HangingSoFar | undefined): hanging is HangingSoFar & Hanging {
  if (hanging?.by === undefined) return false;
  if (hanging.by === 'batten') return hanging.fromTopMm !== undefined && hanging.lengthMm !== undefined;
  const points = hanging.points ?? [];
  if (points.length === 0 || !points.every(pointIsWhole)) return false;
  if (hanging.by !== 'cord') return true;
  return points.length > 1 && (hanging.riseMm !== undefined || hanging.lengthMm !== undefined);
}

function pointIsWhole(point: NonNullable<HangingSoFar['points']>[number]): boolean {
  const across = point.fromLeftMm ?? point.fromRightMm ?? point.fromCentreMm;
  return across !== undefined && point.fromTopMm !== undefined;
}

/** The job when all that a plan requires is there (contract, section 4), else null. */
export function wholeJob(job: JobSoFar): Job | null {
  const { piece, wall, place } = job;
  if (piece?.kind === undefined || piece.widthMm === undefined || piece.heightMm === undefined) return null;
  if (piece.massKg === undefined && piece.build === undefined) return null;
  if (!hangingIsWhole(piece.hanging)) return null;
  if (wall?.baseMaterial === undefined || wall.widthMm === undefined) return null;
  if (place?.across === undefined || place.up?.mm === undefined) return null;
  return {
    ...job,
    piece: {
      ...piece,
      kind: piece.kind,
      widthMm: piece.widthMm,
      heightMm: piece.heightMm,
      hanging: piece.hanging,
    },
    wall: { ...wall, baseMaterial: wall.baseMaterial, widthMm: wall.widthMm },
    place: { ...place, across: place.across, up: place.up },
  };
}
