import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { feetAndInches, toSixteenths } from '../../../core/layout/inch.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { SetOut } from '../../../core/layout/set-out.ts';
import { planOf } from '../../../core/plan.ts';
import { mm } from '../../../core/quantity.ts';
import { readableJob } from './any-job.ts';

const runs = { numRuns: 300 };

/** The same piece at a left edge and a bottom, said outright. */
const at = (job: Job, leftMm: number, bottomMm: number) =>
  setOut({
    ...job,
    place: { across: { by: 'left-edge', mm: mm(leftMm) }, up: { by: 'bottom-above', mm: mm(bottomMm) } },
  });

/** A datum that is level, so that a move sideways changes no height; battens choose their studs by place. */
const movable = readableJob
  .filter(({ piece }) => piece.hanging.by !== 'batten')
  .map((job): Job => ({ ...job, wall: { ...job.wall, datum: { kind: 'floor' } } }));

test('the piece moved by d moves its marks by d, and nothing between them', () => {
  fc.assert(
    fc.property(
      movable,
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 200 }),
      (job, dx, dy) => {
        const [here, there] = [at(job, 200, 700), at(job, 200 + dx, 700 + dy)];
        fc.pre(here.ok && there.ok);
        if (!here.ok || !there.ok) return;
        for (const [nth, mark] of here.marks.entries()) {
          expect(there.marks[nth]?.fromLeftMm).toBeCloseTo(mark.fromLeftMm + dx, 6);
          expect(there.marks[nth]?.upMm).toBeCloseTo((mark.upMm ?? Number.NaN) + dy, 6);
        }
        const spans = (layout: SetOut) =>
          layout.crossChecks.filter(({ text }) => / to /.test(text)).map((each) => each.expectMm);
        for (const [nth, span] of spans(here).entries()) expect(spans(there)[nth]).toBeCloseTo(span, 6);
      },
    ),
    runs,
  );
});

test('a longer drop never raises a mark, and a higher seat never lowers one', () => {
  fc.assert(
    fc.property(movable, fc.integer({ min: 1, max: 60 }), (job, more) => {
      const { hanging } = job.piece;
      if (!('points' in hanging) || hanging.by === 'cord') return;
      const lower = {
        ...hanging,
        points: hanging.points.map((each) => ({ ...each, fromTopMm: mm(each.fromTopMm + more) })),
      };
      const seated = { ...hanging, seatToScrewMm: mm((hanging.seatToScrewMm ?? 0) + more) };
      const [plain, dropped, raised] = [hanging, lower, seated].map((each) =>
        at({ ...job, piece: { ...job.piece, hanging: each } }, 100, 700),
      );
      if (!plain?.ok || !dropped?.ok || !raised?.ok) return;
      for (const [nth, { upMm = mm(0) }] of plain.marks.entries()) {
        expect(dropped.marks[nth]?.upMm).toBeCloseTo(upMm - more, 6);
        expect(raised.marks[nth]?.upMm).toBeCloseTo(upMm + more, 6);
      }
    }),
    runs,
  );
});

/** Every length of a job rounded to what a tape in sixteenths shows; names end in Mm, or are `mm` itself. */
function inSixteenths<T>(value: T, name = ''): T {
  if (typeof value === 'number' && /(?:Mm|^mm)$/.test(name))
    return feetAndInches(0, toSixteenths(mm(value)).inches) as T;
  if (Array.isArray(value)) return value.map((each) => inSixteenths(each, name)) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inSixteenths(each, key)])) as T;
}

// Rounding to a sixteenth is never worse than 0.79375 mm (layout 12, derived). Figures across that add up to a mark:
// wall width halved, piece width halved or whole, two of a stretch halved, one hanger: under four of them; up: three and the seat.
test('a job read with a tape in inches is the same job in millimetres, to what four readings round away', () => {
  fc.assert(
    fc.property(
      movable.filter(({ piece }) => piece.hanging.by !== 'cord'),
      (job) => {
        const [metric, inches] = [setOut(job), setOut(inSixteenths(job))];
        if (!metric.ok || !inches.ok) return;
        // Hangers a hair apart may change places when they are rounded, so each mark looks for its own.
        for (const mark of metric.marks) {
          const off = inches.marks.map((each) =>
            Math.max(
              Math.abs(each.fromLeftMm - mark.fromLeftMm),
              Math.abs((each.upMm ?? 0) - (mark.upMm ?? 0)),
            ),
          );
          expect(Math.min(...off)).toBeLessThanOrEqual(4 * 0.79375);
        }
      },
    ),
    runs,
  );
});

test('a plan that stops gives no mark, no check, no step, no advice and no fixing; one that does not fit stops', () => {
  fc.assert(
    fc.property(readableJob, (job) => {
      const plan = planOf(job);
      if (!setOut(job).ok) expect(plan.verdict).toBe('stop');
      if (plan.verdict !== 'stop') return;
      const { marks, crossChecks, steps, advice, fixing } = plan;
      expect({ marks, crossChecks, steps, advice, fixing }).toEqual({
        marks: [],
        crossChecks: [],
        steps: [],
        advice: [],
        fixing: null,
      });
      expect(plan.clear.length).toBeGreaterThan(0);
    }),
    { numRuns: 150 },
  );
});
