import { expect, test } from 'vitest';
import { cautionsOf } from '../../../core/caution/rules.ts';
import type { Up } from '../../../core/job.ts';
import { ceilingOver, lowestCeiling } from '../../../core/layout/ceiling.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf } from './a-job.ts';

/** The plain piece, 840 wide from 930 to 1770 and 1120 high, under a ceiling 2400 at the left of 2700. */
const under = (fall: number, up: Up, wall: Partial<Wall> = {}) =>
  setOut(jobOf({ wall: { heightMm: mm(2400), ceilingFallMm: mm(fall), ...wall }, place: { up } }));
const below = (at: number): Up => ({ by: 'below-ceiling', mm: mm(at) });
const top = (at: number): Up => ({ by: 'top-at', mm: mm(at) });

test('a ceiling that rises 540 over 2700 is 2400 + 540 x 930 / 2700 = 2586 over 930 (derived)', () => {
  const wall = { heightMm: mm(2400), ceilingFallMm: mm(540), widthMm: mm(2700) };
  expect(ceilingOver(wall, mm(930))).toBeCloseTo(2586, 9);
  expect(lowestCeiling(wall, mm(930), mm(1770))).toBeCloseTo(2586, 9);
  expect(lowestCeiling({ ...wall, ceilingFallMm: mm(-540) }, mm(930), mm(1770))).toBeCloseTo(2046, 9);
});

// Falling 540: 2400 - 540 x 1770 / 2700 = 2046 at the frame's right corner, which is the lower one.
test.each([
  [540, 2586 - 100],
  [-540, 2046 - 100],
])('100 below a ceiling that runs out by %s is 100 below the lower corner (our choice)', (fall, topMm) => {
  const layout = under(fall, below(100));
  expect(layout.ok && layout.frame.topMm).toBeCloseTo(topMm, 9);
});

test.each([
  [2046, true],
  [2047, true],
  [2049, false],
])('a top at %s under a ceiling 2046 at the lower corner fits: %s, within what a tape reads', (at, fits) => {
  const layout = under(-540, top(at));
  expect(layout.ok).toBe(fits);
  if (!layout.ok) expect(layout).toMatchObject({ id: 'C-FT-4', overByMm: expect.closeTo(at - 2046, 6) });
});

test('over furniture of unknown height marks come down from the ceiling at mark A: 2400 - 540 x 1025 / 2700 = 2195', () => {
  const layout = under(-540, below(100), { datum: { kind: 'furniture' } });
  if (!layout.ok) throw new Error(layout.text);
  // Top 2046 - 100 = 1946, ring 240 below it: 1706 up, 2195 - 1706 = 489 down.
  expect(layout.marks[0]).toMatchObject({ upMm: expect.closeTo(1706, 9), downMm: expect.closeTo(489, 9) });
});

// A ceiling that falls 27 over 2700 runs out 8.4 over the frame; B is 650 from A: 6.5.
test.each([
  ['250 below, falling 27', -27, 250, 'B goes 6.5 mm lower'],
  ['250 below, rising 27', 27, 250, 'B goes 6.5 mm higher'],
])('level or parallel is asked %s, and what parallel would be is said', (_, fall, gap, follows) => {
  const layout = under(fall, below(gap));
  expect(layout.ok && layout.advice.join(' ')).toMatch(/Level or parallel\?.*8\.4 mm/);
  expect(layout.ok && layout.advice.join(' ')).toContain(follows);
});

test.each([
  ['350 below it', -27, 350],
  ['250 below one that runs out by 1.6 over the frame', -5, 250],
  ['250 below an attic ceiling, 11 degrees', -540, 250],
])('level or parallel is not asked %s', (_, fall, gap) => {
  const layout = under(fall, below(gap));
  expect(layout.ok && layout.advice.join(' ')).not.toContain('Level or parallel');
});

test('with the ceiling as datum its fall is the same field or the datum’s own, at mark A', () => {
  const own = under(0, below(450), { datum: { kind: 'ceiling', fallMm: mm(-27) } });
  const plain = under(-27, below(450), { datum: { kind: 'ceiling' } });
  expect(own.ok && own.marks).toEqual(plain.ok && plain.marks);
  expect(own.ok && own.advice).toEqual(plain.ok && plain.advice);
});

test('the band under the ceiling is measured from the ceiling over the hole (BS 7671 522.6.202, read-secondary)', () => {
  // Ceiling 2195 over A and 2065 over B; marks at 1900 are 295 and 165 below it: B is 15 from the band's 150.
  const job = jobOf({
    wall: { heightMm: mm(2400), ceilingFallMm: mm(-540), accessories: [], thicknessMm: mm(230) },
    piece: {
      hanging: {
        by: 'rings',
        points: [
          { fromLeftMm: mm(95), fromTopMm: mm(100) },
          { fromRightMm: mm(95), fromTopMm: mm(100) },
        ],
      },
    },
    place: { up: top(2000) },
  });
  const said = cautionsOf({
    job: { ...job, building: { country: 'UK' } },
    setOut: setOut(job),
    fixing: null,
  });
  expect(said.find(({ id }) => id === 'C-SV-2')?.text).toMatch(/B .*15 mm/);
});
