import type { GroupJob } from '../../group-job.ts';
import type { Mark } from '../../plan-shape.ts';
import { mm } from '../../quantity.ts';
import { onCourses } from '../course-advice.ts';
import type { PlacedMark } from '../cross-checks.ts';
import type { Fit } from '../fit.ts';
import { levelAdvice, levelOrParallel } from '../level-advice.ts';
import { onStuds } from '../stud-advice.ts';
import { usualHeightAdvice } from '../usual-height.ts';
import type { GroupFrames } from './group-frames.ts';
import { oneEndAdvice } from './one-end.ts';

/** What is said of all the marks together: one height carried across, one end to measure from, one move for studs and joints. */
export function groupAdvice(
  { arrange, building, pieces, place, wall }: GroupJob,
  fit: Fit,
  marks: readonly (readonly Mark[])[],
  { frames, cells }: GroupFrames,
): string[] {
  const all = marks.flat();
  const ends = [all[0], rightmost(all)].flatMap((mark) => mark ?? []);
  const alone = marks.flatMap((own, at) => (pieces[at]?.hanging.by === 'batten' ? [] : own.map(placed)));
  const room = { leftMm: fit.frame.leftMm, rightMm: mm(wall.widthMm - fit.frame.rightMm) };
  const studs = alone.length > 0 ? onStuds(alone, wall, room, undefined, 'group') : null;
  const courses = onCourses(all.map(placed), wall, fit.bottom.levelAboveFloorMm, building?.country, 'group');
  const { leftMm, rightMm, bottomMm, topMm } = fit.frame;
  const whole = { kind: 'picture', widthMm: mm(rightMm - leftMm), heightMm: mm(topMm - bottomMm) } as const;
  const row = cells.rows[0] ?? [];
  const lefts = row.flatMap((nth) => frames[nth]?.leftMm ?? []);
  const widths = row.flatMap((nth) => pieces[nth]?.widthMm ?? []);
  const lastRow = cells.rows.at(-1)?.length ?? 0;
  return [
    ...levelAdvice(ends, fit.datum, wall),
    ...(row.length > 1 ? [oneEndAdvice(lefts, widths, building?.country)] : []),
    ...levelOrParallel(fit, ends),
    ...usualHeightAdvice({ piece: whole, wall, place }, fit.frame, fit.bottom.levelAboveFloorMm),
    ...(pieces.length === 1 && arrange.spread === 'flush'
      ? ['One piece has no gap to share out, so it stands in the middle.']
      : []),
    ...(arrange.as === 'grid' && lastRow < cells.columns
      ? [`The last row has ${lastRow} of ${cells.columns}: it begins at the left, under the pieces above.`]
      : []),
    ...(studs?.advice ?? []),
    ...(courses?.advice ?? []),
  ];
}

const placed = ({ id, fromLeftMm, upMm, downMm }: Mark): PlacedMark => ({
  id,
  xMm: fromLeftMm,
  yMm: upMm ?? mm(0 - (downMm ?? 0)),
});

const rightmost = (marks: readonly Mark[]): Mark | undefined =>
  marks.reduce<Mark | undefined>(
    (best, mark) => (best === undefined || mark.fromLeftMm > best.fromLeftMm ? mark : best),
    undefined,
  );
