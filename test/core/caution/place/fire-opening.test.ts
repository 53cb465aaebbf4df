import { expect, test } from 'vitest';
import type { Piece } from '../../../../core/piece/piece.ts';
import { planOf } from '../../../../core/plan.ts';
import { mm } from '../../../../core/quantity.ts';
import { jobWith, saidOf } from '../ordinary-job.ts';

/** The ordinary mirror, its bottom 800 above the floor, over a fire whose opening ends so far below it. */
const overFire = (
  gapMm: number,
  piece: Partial<Piece>,
  below: 'fireplace' | 'fireplace-unused' = 'fireplace',
) => saidOf(jobWith({ piece, place: { below, openingTopMm: mm(800 - gapMm) } }));
const stopped = (cautions: ReturnType<typeof saidOf>) => cautions.find(({ id }) => id === 'C-FP-1');

// 6 in = 152.4: nothing within. 12 in = 304.8: any depth from there. Between: an eighth of the gap, 25 deep needs 200.
test.each([
  [152.3, 1, true],
  [152.4, 19.05, false],
  [152.4, 19.1, true],
  [199.9, 25, true],
  [200, 25, false],
  [304.7, 40, true],
  [304.8, 400, false],
])(
  '%s mm above a fire’s opening, %s deep, stops: %s (IRC R1001.11 by analogy; the eighth from memory)',
  (gap, depthMm, stops) => {
    expect(stopped(overFire(gap, { depthMm: mm(depthMm) }))?.severity).toBe(stops ? 'stop' : undefined);
  },
);

test('how much to raise it is said: 30 deep wants 8 x 30 = 240, so 40 more than the 200 there are', () => {
  expect(stopped(overFire(200, { depthMm: mm(30) }))?.clears).toBe(
    'Raise it by 40 mm, or a piece no more than 25 mm deep, or choose another wall.',
  );
});

test('within 6 in no piece is thin enough: 400 deep wants the 12 in, 304.8 - 100 more', () => {
  expect(stopped(overFire(100, { depthMm: mm(400) }))?.clears).toBe(
    'Raise it by 204.8 mm, or choose another wall.',
  );
});

test('a mirror in a steel frame does not burn, and a fire that is never lit burns nothing', () => {
  const build = { frame: { material: 'steel', widthMm: mm(30), thicknessMm: mm(20) } } as const;
  expect(stopped(overFire(100, { depthMm: mm(30), build }))).toBeUndefined();
  expect(stopped(overFire(100, { depthMm: mm(30), build, kind: 'picture' }))?.severity).toBe('stop');
  expect(stopped(overFire(100, { depthMm: mm(30) }, 'fireplace-unused'))).toBeUndefined();
});

test('over a mantel the opening is still measured from the floor: 1200 + 140 - 1100 = 240 clears 30 deep', () => {
  const at = (openingTopMm: number) =>
    planOf(
      jobWith({
        wall: { heightMm: mm(3000), datum: { kind: 'mantel', aboveFloorMm: mm(1200) } },
        place: {
          up: { by: 'bottom-above', mm: mm(140) },
          below: 'fireplace',
          openingTopMm: mm(openingTopMm),
        },
      }),
    );
  expect(stopped(at(1100).cautions)).toBeUndefined();
  expect(stopped(at(1101).cautions)?.severity).toBe('stop');
  expect(at(1101).marks).toEqual([]);
});

test('a piece in front of the opening is told so', () => {
  expect(stopped(overFire(-300, { depthMm: mm(30) }))?.text).toContain(
    'its bottom edge is 300 mm below the top of the opening',
  );
});
