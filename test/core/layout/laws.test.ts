import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Across, Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { SetOut } from '../../../core/layout/set-out.ts';
import type { HangerPoint, Hanging } from '../../../core/piece/piece.ts';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import { readableJob, wildJob } from './any-job.ts';

const runs = { numRuns: 400 };

/** A job seen in a mirror that stands at the wall's end: left is right and the datum falls the other way. */
function mirrored(job: Job): Job {
  const { piece, wall, place } = job;
  const across = (at: Millimetres): Millimetres => mm(wall.widthMm - at);
  const face = { this: across, far: across };
  return {
    ...job,
    piece: { ...piece, hanging: mirroredHanging(piece.hanging) },
    wall: {
      ...wall,
      ...(wall.datum && {
        datum: { ...wall.datum, ...(wall.datum.fallMm !== undefined && { fallMm: mm(-wall.datum.fallMm) }) },
      }),
      ...(Array.isArray(wall.accessories) && {
        accessories: wall.accessories.map((each) => ({ ...each, xMm: face[each.face](each.xMm) })),
      }),
    },
    place: { ...place, across: mirroredAcross(place.across, across) },
  };
}

function mirroredHanging(hanging: Hanging): Hanging {
  if (!('points' in hanging)) return hanging;
  const points: HangerPoint[] = hanging.points.map(
    ({ fromLeftMm, fromRightMm, fromCentreMm, fromTopMm }) => ({
      fromTopMm,
      ...(fromLeftMm !== undefined && { fromRightMm: fromLeftMm }),
      ...(fromRightMm !== undefined && { fromLeftMm: fromRightMm }),
      ...(fromCentreMm !== undefined && { fromCentreMm: mm(-fromCentreMm) }),
    }),
  );
  return { ...hanging, points };
}

function mirroredAcross(said: Across, across: (at: Millimetres) => Millimetres): Across {
  switch (said.by) {
    case 'centre':
      return said;
    case 'left-edge':
      return { by: 'right-edge', mm: said.mm };
    case 'right-edge':
      return { by: 'left-edge', mm: said.mm };
    case 'centre-at':
      return { by: 'centre-at', mm: across(said.mm) };
    case 'between':
      return { by: 'between', fromMm: across(said.toMm), toMm: across(said.fromMm) };
  }
}

/** A job on a wall that is so much longer at its left end. */
function lengthened(job: Job, by: number): Job {
  const shifted = (at: Millimetres): Millimetres => mm(at + by);
  const { wall, place } = job;
  const said = place.across;
  const across: Across =
    said.by === 'centre'
      ? { by: 'centre-at', mm: mm(wall.widthMm / 2 + by) }
      : said.by === 'between'
        ? { by: 'between', fromMm: shifted(said.fromMm), toMm: shifted(said.toMm) }
        : said.by === 'right-edge'
          ? said
          : { ...said, mm: shifted(said.mm) };
  const { accessories, studs, datum, ...rest } = wall;
  return {
    ...job,
    wall: {
      ...rest,
      widthMm: shifted(wall.widthMm),
      ...(datum && {
        datum: {
          ...datum,
          ...(datum.fallMm !== undefined && {
            fallMm: mm((datum.fallMm * (wall.widthMm + by)) / wall.widthMm),
          }),
        },
      }),
      ...(typeof studs === 'object' && {
        studs: { ...studs, ...(studs.firstMm !== undefined && { firstMm: shifted(studs.firstMm) }) },
      }),
      ...(Array.isArray(accessories) && {
        accessories: accessories.map((each) =>
          each.face === 'this' ? { ...each, xMm: shifted(each.xMm) } : each,
        ),
      }),
    },
    place: { ...place, across },
  };
}

const placed = (layout: SetOut): number[][] =>
  layout.marks
    .map((mark) => [mark.fromLeftMm, mark.fromRightMm, mark.upMm ?? 0, mark.downMm ?? 0])
    .sort((one, other) => (one[0] ?? 0) - (other[0] ?? 0) || (one[2] ?? 0) - (other[2] ?? 0));

function same(one: readonly number[][], other: readonly number[][]): void {
  expect(one).toHaveLength(other.length);
  for (const [at, row] of one.entries()) {
    for (const [of, figure] of row.entries()) expect(figure).toBeCloseTo(other[at]?.[of] ?? Number.NaN, 6);
  }
}

/** A sloping datum is nominal at the leftmost mark, which is another one in the mirror: only level ones mirror. */
const level = (job: Job): Job => {
  const { fallMm: _, ...datum } = job.wall.datum ?? { kind: 'floor' as const };
  const { studs: _studs, ...wall } = job.wall;
  return { ...job, wall: { ...wall, datum } };
};

/** Which of two figures is less; the noise of decimals in a computer tells nothing. */
const apart = (one = 0, other = 0): number => (Math.abs(one - other) < 1e-6 ? 0 : one - other);

test('a job in the mirror has its marks in the mirror, or does not fit either, by as much', () => {
  fc.assert(
    fc.property(readableJob.map(level), (job) => {
      const layout = setOut(job);
      const mirror = setOut(mirrored(job));
      expect(mirror.ok).toBe(layout.ok);
      if (layout.ok && mirror.ok) {
        const swapped = placed(mirror).map(([left = 0, right = 0, up = 0, down = 0]) => [
          right,
          left,
          up,
          down,
        ]);
        same(
          swapped.sort((one, other) => apart(one[0], other[0]) || apart(one[2], other[2])),
          placed(layout),
        );
      } else if (!layout.ok && !mirror.ok) {
        expect(mirror.id).toBe(layout.id);
        expect(mirror.overByMm).toBeCloseTo(layout.overByMm, 6);
      }
    }),
    runs,
  );
});

test('a wall longer at its left end moves the left figures by that much, and nothing else', () => {
  fc.assert(
    fc.property(readableJob, fc.integer({ min: 1, max: 3000 }), (job, by) => {
      const layout = setOut(job);
      fc.pre(layout.ok);
      const longer = setOut(lengthened(job, by));
      if (!layout.ok || !longer.ok) throw new Error(longer.ok ? '' : longer.text);
      same(
        placed(longer),
        placed(layout).map(([left = 0, ...rest]) => [left + by, ...rest]),
      );
      for (const [at, mark] of longer.marks.entries()) {
        const here = layout.marks[at]?.upHereMm;
        if (here !== undefined) expect(mark.upHereMm).toBeCloseTo(here, 6);
      }
      const { leftMm, rightMm, bottomMm, topMm } = layout.frame;
      same([Object.values(longer.frame)], [[leftMm + by, rightMm + by, bottomMm, topMm]]);
    }),
    runs,
  );
});

test('from the left plus from the right is the wall’s width, and up is down from the ceiling, at every mark', () => {
  fc.assert(
    fc.property(readableJob, (job) => {
      const layout = setOut(job);
      fc.pre(layout.ok);
      if (!layout.ok) return;
      for (const mark of layout.marks) {
        expect(mark.fromLeftMm + mark.fromRightMm).toBeCloseTo(job.wall.widthMm, 6);
        if (mark.downMm !== undefined && mark.upMm !== undefined) {
          expect(mark.downMm + mark.upMm).toBeCloseTo(job.wall.heightMm ?? Number.NaN, 6);
        }
      }
    }),
    runs,
  );
});

test('what fits is on the wall, and what does not is over by a number that is not below nothing', () => {
  fc.assert(
    fc.property(readableJob, (job) => {
      const layout = setOut(job);
      if (!layout.ok) {
        expect(layout.overByMm).toBeGreaterThanOrEqual(0);
        return;
      }
      expect(layout.frame.leftMm).toBeGreaterThanOrEqual(-1e-6);
      expect(layout.frame.rightMm).toBeLessThanOrEqual(job.wall.widthMm + 1e-6);
      expect(layout.marks.length).toBeGreaterThan(0);
      const asked = layout.why.map((why) => why.of);
      for (const { id } of layout.marks)
        expect(asked).toEqual(expect.arrayContaining([`mark ${id} across`, `mark ${id} up`]));
      expect(layout.marks.map((mark) => mark.fromLeftMm)).toEqual(
        layout.marks.map((mark) => mark.fromLeftMm).toSorted((one, other) => one - other),
      );
    }),
    runs,
  );
});

test('no job of any figures makes set-out throw', () => {
  fc.assert(
    fc.property(wildJob, (job) => {
      expect(() => setOut(job)).not.toThrow();
    }),
    { numRuns: 1500 },
  );
});

test('enough of the jobs tried fit for the laws to have been tried', () => {
  const fitting = fc.sample(readableJob, { numRuns: 400, seed: 7 }).filter((job) => setOut(job).ok);
  expect(fitting.length).toBeGreaterThan(60);
});
