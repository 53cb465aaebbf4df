import { expect, test } from 'vitest';
import type { Up } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf } from './a-job.ts';

const below = (at: number): Up => ({ by: 'below-ceiling', mm: mm(at) });
const set = (wall: Partial<Wall>, up?: Up) => setOut(jobOf({ wall, ...(up && { place: { up } }) }));

// Marks of the plain job are at 1025 and 1675 of 2700, 650 apart, 1680 up.
test.each([
  ['rises 27 to the right: 27 x 650 / 2700 = 6.5 less on the tape at B', 27, 1673.5],
  ['falls 27 to the right: 6.5 more on the tape at B', -27, 1686.5],
])('a floor that %s', (_, fall, hereAtB) => {
  const layout = set({ datum: { kind: 'floor', fallMm: mm(fall) } });
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.marks.map((mark) => mark.upMm)).toEqual([1680, 1680]);
  expect(layout.marks[0]?.upHereMm).toBe(1680);
  expect(layout.marks[1]?.upHereMm).toBeCloseTo(hereAtB, 9);
  expect(layout.crossChecks.at(-1)).toMatchObject({ text: 'B up from the floor straight below it' });
  expect(layout.advice[0]).toBe(
    'Measure up at A only and carry the height across with a level; do not measure up twice.',
  );
  expect(layout.advice[1]).toContain('would differ by 6.5 mm');
  expect(layout.why.find(({ of }) => of === 'mark B up here')).toMatchObject({
    of: 'mark B up here',
    inputs: { fall, 'mark A across': 1025 },
  });
});

test('a level floor leaves one height to measure, and no second figure', () => {
  const layout = set({ datum: { kind: 'floor', fallMm: mm(0) } });
  expect(layout.ok && layout.marks.some((mark) => 'upHereMm' in mark)).toBe(false);
});

test('from a ceiling 2500 high marks are given down from it and up from the floor: 450 + 240 down, 2500 - 690 up', () => {
  const layout = set({ datum: { kind: 'ceiling' }, heightMm: mm(2500) }, below(450));
  expect(layout).toMatchObject({
    ok: true,
    datumAboveFloorMm: 0,
    frame: { topMm: 2050, bottomMm: 930 },
    marks: [
      { downMm: 690, upMm: 1810 },
      { downMm: 690, upMm: 1810 },
    ],
  });
});

test('from a ceiling of unknown height marks are given down only, and the floor is not known', () => {
  const layout = set({ datum: { kind: 'ceiling' } }, below(450));
  expect(layout).toMatchObject({
    ok: true,
    datumAboveFloorMm: null,
    frame: { topMm: -450, bottomMm: -1570 },
  });
  expect(layout.ok && layout.marks.map((mark) => [mark.downMm, mark.upMm])).toEqual([
    [690, undefined],
    [690, undefined],
  ]);
});

test('with the ceiling as datum only a distance below it is a height', () => {
  expect(set({ datum: { kind: 'ceiling' }, heightMm: mm(2500) })).toMatchObject({ ok: false, id: 'C-FT-9' });
});

test('a distance below the ceiling can’t be brought to the floor while the ceiling’s height is not known', () => {
  expect(set({}, below(300))).toMatchObject({ ok: false, id: 'C-FT-9' });
});

test('set below the ceiling over a mantel of unknown height, marks come down from the ceiling and it is said', () => {
  const layout = set({ datum: { kind: 'mantel' }, heightMm: mm(2400) }, below(300));
  expect(layout).toMatchObject({
    ok: true,
    datumAboveFloorMm: 0,
    marks: [{ downMm: 540, upMm: 1860 }, { downMm: 540 }],
    assumptions: [{ field: 'wall.datum.kind', value: 'ceiling' }],
  });
});

test('a mantel of unknown height still gives marks, up from the mantel, with the floor unknown', () => {
  const layout = set({ datum: { kind: 'mantel' }, heightMm: mm(2400) });
  expect(layout).toMatchObject({
    ok: true,
    datumAboveFloorMm: null,
    marks: [{ upMm: 1680 }, { upMm: 1680 }],
  });
});

// Over the 840 of the frame a ceiling that falls 20 over 2700 runs out by 20 x 840 / 2700 = 6.2.
test.each([
  ['250 below a ceiling that runs out', 250, -20, true],
  ['350 below it, the gap is wide enough', 350, -20, false],
  ['250 below a ceiling that runs out by 5 over the wall, 1.6 over the frame', 250, 5, false],
])('level or parallel is asked %s', (_, gap, fall, asked) => {
  const layout = set({ datum: { kind: 'ceiling', fallMm: mm(fall) }, heightMm: mm(2400) }, below(gap));
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.advice.some((each) => each.startsWith('Level or parallel?'))).toBe(asked);
  if (asked) expect(layout.advice.join(' ')).toContain('runs out by 6.2 mm');
});
