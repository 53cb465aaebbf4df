import type { JobSoFar } from '../core/job.ts';
import type { HangingSoFar } from '../core/piece/piece.ts';
import { difference, type Millimetres, mm, sum } from '../core/quantity.ts';

type Point = NonNullable<HangingSoFar['points']>[number];

/**
 * The job with `fromLeftMm` added to each hanger that was measured from the right or from the centre
 * (contract, section 4). Worked out anew from what was said, so it follows a corrected width.
 */
export function withHangersFromLeft(job: JobSoFar): JobSoFar {
  const { piece } = job;
  const width = piece?.widthMm;
  const points = piece?.hanging?.points;
  if (!piece?.hanging || width === undefined || !points?.some(saidFromElsewhere)) return job;
  return {
    ...job,
    piece: { ...piece, hanging: { ...piece.hanging, points: points.map((point) => fromLeft(point, width)) } },
  };
}

const saidFromElsewhere = (point: Point): boolean =>
  point.fromLeftMm === undefined && (point.fromRightMm !== undefined || point.fromCentreMm !== undefined);

function fromLeft(point: Point, width: Millimetres): Point {
  if (!saidFromElsewhere(point)) return point;
  if (point.fromRightMm !== undefined) return { fromLeftMm: difference(width, point.fromRightMm), ...point };
  const centre = mm(width / 2);
  return { fromLeftMm: sum(centre, point.fromCentreMm ?? mm(0)), ...point };
}
