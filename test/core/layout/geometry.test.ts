import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tiltOf } from '../../../core/layout/level.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { diagonals } from '../../../core/layout/square.ts';
import { riseOfCord } from '../../../core/piece/cord.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { mm } from '../../../core/quantity.ts';
import { jobOf } from './a-job.ts';

/** Second opinion: @flatten-js/core 1.6.15, a plane geometry library that knows nothing of pictures. */
const { point, segment, circle, box, vector } = Flatten;

const length = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

const ringsJob = fc
  .record({
    wall: length(1500, 6000),
    wide: length(300, 1400),
    high: length(300, 1800),
    bottom: length(0, 1500),
    inLeft: length(0, 140),
    inRight: length(0, 140),
    downLeft: length(0, 250),
    downRight: length(0, 250),
    fall: length(-40, 40),
  })
  .map((each) => {
    const hanging: Hanging = {
      by: 'rings',
      points: [
        { fromLeftMm: mm(each.inLeft), fromTopMm: mm(each.downLeft) },
        { fromRightMm: mm(each.inRight), fromTopMm: mm(each.downRight) },
      ],
    };
    const job = jobOf({
      piece: { widthMm: mm(each.wide), heightMm: mm(each.high), hanging },
      wall: { widthMm: mm(each.wall), datum: { kind: 'nosing', fallMm: mm(each.fall) } },
      place: { up: { by: 'bottom-above', mm: mm(each.bottom) } },
    });
    return { ...each, job };
  });

test('the frame moved onto the wall as a box carries its rings to the marks, and the tape between them is a segment', () => {
  fc.assert(
    fc.property(ringsJob, ({ job, wall, wide, high, bottom, inLeft, inRight, downLeft, downRight }) => {
      const layout = setOut(job);
      if (!layout.ok) throw new Error(layout.text);
      const toWall = vector(wall / 2 - wide / 2, bottom);
      const frame = box(0, 0, wide, high).translate(toWall);
      expect(layout.frame.leftMm).toBeCloseTo(frame.xmin, 6);
      expect(layout.frame.rightMm).toBeCloseTo(frame.xmax, 6);
      expect(layout.frame.topMm).toBeCloseTo(frame.ymax, 6);
      const rings = [point(inLeft, high - downLeft), point(wide - inRight, high - downRight)].map((ring) =>
        ring.translate(toWall),
      );
      for (const [at, ring] of rings.entries()) {
        expect(layout.marks[at]?.fromLeftMm).toBeCloseTo(ring.x, 6);
        expect(layout.marks[at]?.upMm).toBeCloseTo(ring.y, 6);
      }
      const [a = point(), b = point()] = rings;
      expect(layout.crossChecks[0]?.expectMm).toBeCloseTo(segment(a, b).length, 6);
    }),
  );
});

test('a tape straight below a mark reads to where the upright through it meets the sloping datum', () => {
  fc.assert(
    fc.property(ringsJob, ({ job, wall, fall }) => {
      fc.pre(fall !== 0);
      const layout = setOut(job);
      if (!layout.ok) throw new Error(layout.text);
      const [a] = layout.marks;
      const slope = segment(point(0, 0), point(wall, fall));
      const belowA = slope.intersect(upright(a?.fromLeftMm ?? 0))[0]?.y ?? Number.NaN;
      for (const mark of layout.marks) {
        const below = slope.intersect(upright(mark.fromLeftMm))[0]?.y ?? Number.NaN;
        expect(mark.upHereMm).toBeCloseTo((mark.upMm ?? Number.NaN) + belowA - below, 6);
      }
    }),
  );
});

const upright = (x: number) => segment(point(x, -1000), point(x, 1000));

test('a cord over one hook peaks where circles of half its length about the rings cross; over two, about ring and hook', () => {
  fc.assert(
    fc.property(length(200, 1500), length(1, 400), length(0, 180), (spread, slack, apart) => {
      const cord = riseOfCord(mm(spread + slack), mm(spread), mm(apart));
      if (!cord.ok) throw new Error(cord.because);
      // The leg from the left ring reaches the hook whose upright stands (spread - apart) / 2 away.
      const leg = (spread + slack - apart) / 2;
      const hook = segment(point((spread - apart) / 2, 0), point((spread - apart) / 2, 2000));
      const [peak] = circle(point(0, 0), leg).intersect(hook);
      expect(cord.riseMm).toBeCloseTo(peak?.y ?? Number.NaN, 6);
      const angle = (vector(1, 0).angleTo(vector(point(0, 0), peak ?? point())) * 180) / Math.PI;
      expect(cord.legAngle).toBeCloseTo(angle, 6);
    }),
  );
});

test('a tilt is the angle of the segment between two marks', () => {
  fc.assert(
    fc.property(length(-50, 50), length(100, 2000), (dy, span) => {
      const slope = segment(point(0, 0), point(span, dy)).slope;
      const signed = slope > Math.PI ? slope - 2 * Math.PI : slope;
      expect(tiltOf(mm(dy), mm(span))).toBeCloseTo((signed * 180) / Math.PI, 9);
    }),
  );
});

test('diagonals are the segments between opposite corners of a sheared frame', () => {
  fc.assert(
    fc.property(length(200, 2000), length(200, 2000), length(0, 20), (wide, high, shear) => {
      const found = diagonals(mm(wide), mm(high), mm(shear));
      expect(found.longMm).toBeCloseTo(segment(point(0, 0), point(wide + shear, high)).length, 6);
      expect(found.shortMm).toBeCloseTo(segment(point(wide, 0), point(shear, high)).length, 6);
    }),
  );
});
