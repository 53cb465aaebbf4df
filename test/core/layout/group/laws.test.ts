import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GroupJob } from '../../../../core/group-job.ts';
import { overlap } from '../../../../core/layout/group/group-move.ts';
import { setOutGroup } from '../../../../core/layout/group/group-set-out.ts';
import { toSixteenths } from '../../../../core/layout/inch.ts';
import { setOut } from '../../../../core/layout/marks.ts';
import type { Frame } from '../../../../core/plan-shape.ts';
import { mm } from '../../../../core/quantity.ts';
import { groupOf, pictureOf } from './a-group.ts';

const piece = fc
  .tuple(
    fc.integer({ min: 2000, max: 9000 }),
    fc.integer({ min: 2000, max: 9000 }),
    fc.integer({ min: 0, max: 150 }),
  )
  .map(([width, height, drop]) => pictureOf(width / 10, height / 10, drop));
const pieces = fc.array(piece, { minLength: 1, maxLength: 7 });
const wall = fc.integer({ min: 20000, max: 90000 }).map((tenths) => tenths / 10);
const spread = fc.constantFrom('ends' as const, 'flush' as const);
const align = fc.constantFrom('centre' as const, 'top' as const, 'bottom' as const, 'hangers' as const);

const framesIn = (job: GroupJob): Frame[] | null => {
  const group = setOutGroup(job);
  return group.ok ? group.pieces.map(({ layout }) => layout.frame) : null;
};

test('walk the wall: the widths and equal gaps of a row come to the wall again (geometry, derived)', () => {
  fc.assert(
    fc.property(pieces, wall, spread, align, (own, wallMm, how, level) => {
      const frames = framesIn(groupOf(wallMm, own, { as: 'row', spread: how, align: level }));
      fc.pre(frames !== null);
      const edges = [0, ...frames.flatMap((frame) => [frame.leftMm, frame.rightMm]), wallMm];
      const gaps = edges.flatMap((edge, at) => (at % 2 === 1 ? [edge - (edges[at - 1] ?? 0)] : []));
      const walked =
        gaps.reduce((all, gap) => all + gap, 0) + own.reduce((all, each) => all + each.widthMm, 0);
      expect(walked).toBeCloseTo(wallMm, 6);
      const inner = how === 'flush' && own.length > 1 ? gaps.slice(1, -1) : gaps;
      for (const gap of inner) expect(gap).toBeCloseTo(inner[0] ?? 0, 6);
      if (how === 'flush' && own.length > 1)
        expect([gaps[0], gaps.at(-1)]).toEqual([0, expect.closeTo(0, 6)]);
    }),
  );
});

test('in sixteenths each edge is off by half of one at most, however many pieces stand before it (25.4 exactly)', () => {
  fc.assert(
    fc.property(pieces, wall, spread, (own, wallMm, how) => {
      const frames = framesIn(groupOf(wallMm, own, { as: 'row', spread: how }));
      fc.pre(frames !== null);
      for (const frame of frames) {
        const tape = (toSixteenths(frame.leftMm).sixteenths * 25.4) / 16;
        expect(Math.abs(tape - frame.leftMm)).toBeLessThanOrEqual(0.79375 + 1e-6);
      }
      // Re-added on the tape, gap by gap and width by width, the rounded edges end at the rounded end of the wall.
      const edges = [0, ...frames.flatMap((each) => [each.leftMm, each.rightMm]), wallMm];
      const tape = edges.map((edge) => toSixteenths(mm(edge)).sixteenths);
      const steps = tape.slice(1).map((edge, at) => edge - (tape[at] ?? 0));
      expect(steps.reduce((all, step) => all + step, 0)).toBe(toSixteenths(mm(wallMm)).sixteenths);
    }),
  );
});

test('no two pieces of any arrangement cover a common part, and none leaves the wall', () => {
  fc.assert(
    fc.property(
      pieces,
      wall,
      fc.constantFrom('row' as const, 'column' as const, 'grid' as const),
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: 1, max: 4 }),
      align,
      (own, wallMm, as, gap, columns, level) => {
        const job = groupOf(wallMm, own, {
          as,
          gapMm: mm(gap),
          ...(as === 'grid' && { columns }),
          align: as === 'column' ? 'centre' : level,
        });
        const frames = framesIn(job);
        fc.pre(frames !== null);
        for (const [at, one] of frames.entries()) {
          expect(one.leftMm).toBeGreaterThanOrEqual(-1e-6);
          expect(one.rightMm).toBeLessThanOrEqual(wallMm + 1e-6);
          for (const other of frames.slice(at + 1)) expect(overlap(one, other)).toBe(false);
        }
      },
    ),
  );
});

test('one piece in a group has the marks it has alone, by number and letter', () => {
  fc.assert(
    fc.property(piece, wall, align, (own, wallMm, level) => {
      const { arrange: _, pieces: __, ...rest } = groupOf(wallMm, [own], { as: 'row', gapMm: mm(75) });
      const alone = setOut({ ...rest, piece: own });
      const group = setOutGroup(groupOf(wallMm, [own], { as: 'row', gapMm: mm(75), align: level }));
      expect(group.ok).toBe(alone.ok);
      if (!group.ok || !alone.ok) return;
      const marks = group.pieces[0]?.layout.marks ?? [];
      expect(marks.map((each) => each.id)).toEqual(alone.marks.map((each) => `1${each.id}`));
      for (const [at, mark] of marks.entries()) {
        expect(mark.fromLeftMm).toBeCloseTo(alone.marks[at]?.fromLeftMm ?? 0, 6);
        expect(mark.upMm).toBeCloseTo(alone.marks[at]?.upMm ?? 0, 6);
      }
    }),
  );
});

test('aligned by hangers, the first marks of a row are on one level (geometry, derived)', () => {
  fc.assert(
    fc.property(pieces, wall, (own, wallMm) => {
      const group = setOutGroup(groupOf(wallMm, own, { as: 'row', gapMm: mm(20), align: 'hangers' }));
      fc.pre(group.ok);
      const levels = group.pieces.map(({ layout }) => layout.marks[0]?.upMm ?? Number.NaN);
      for (const level of levels) expect(level).toBeCloseTo(levels[0] ?? 0, 6);
    }),
  );
});
