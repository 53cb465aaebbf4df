import fc from 'fast-check';
import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import { planOf } from '../../../core/plan.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf } from './a-job.ts';

/** The plain piece beside a flight: rings 650 apart at 1025 and 1675, its left corner 95 left of mark A. */
const beside = (datum: Partial<NonNullable<Wall['datum']>>, centre = 1500) =>
  jobOf({
    wall: { datum: { kind: 'nosing', ...datum } },
    place: { up: { by: 'centre-at', mm: mm(centre) } },
  });
const flight = { riseMm: mm(180), goingMm: mm(250) } as const;

// Trade question 46, derived: the shift along the stairs is rise / going x distance across; 180 / 250 x 650 = 468.
test.each([
  ['climbs to the right: the nosing under B is 468 higher', 'right', 1820 - 468],
  ['climbs to the left: the nosing under B is 468 lower', 'left', 1820 + 468],
] as const)('a flight that %s (trade 46, rise / going x dx, derived)', (_, climbs, hereAtB) => {
  const layout = setOut(beside({ ...flight, climbs }, 1500));
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.marks.map((mark) => mark.upMm)).toEqual([1820, 1820]);
  expect(layout.marks[1]?.upHereMm).toBeCloseTo(hereAtB, 9);
  expect(layout.advice.join(' ')).toContain('would differ by 468 mm');
  expect(layout.advice.join(' ')).toContain('plumb up from it, and the frame hangs level');
});

test('the steps measure plumb up from the nosing line', () => {
  const { piece, place, wall } = beside({ ...flight, climbs: 'right', aboveFloorMm: mm(0) });
  const plan = planOf({
    building: { country: 'AU', yearBuilt: 2015, kind: 'house', tenure: 'owner' },
    piece: { ...piece, depthMm: mm(30), glass: 'safety' },
    wall: { ...wall, cores: 'solid', thicknessMm: mm(230), accessories: [] },
    place: { ...place, below: 'nothing' },
    crew: { people: 2 },
  });
  expect(plan.steps.join(' ')).toContain('1820 mm plumb up from the nosing line');
});

test('without the way it climbs the line is laid with a straight edge, and what would tell the tape is said', () => {
  const layout = setOut(beside(flight));
  expect(layout.ok && layout.marks.some((mark) => 'upHereMm' in mark)).toBe(false);
  expect(layout.ok && layout.advice.join(' ')).toContain('With the rise and going of a stair');
});

// Right corner 745 from mark A: 180 / 250 x 745 = 536.4 higher there, so a bottom at 500 is 36.4 under the line.
test('a corner below the nosing line does not fit, by how much it is below: 536.4 - 500', () => {
  const job = jobOf({
    wall: { datum: { kind: 'nosing', ...flight, climbs: 'right' } },
    place: { up: { by: 'bottom-above', mm: mm(500) } },
  });
  const layout = setOut(job);
  expect(layout).toMatchObject({ ok: false, id: 'C-FT-5' });
  expect(layout.ok ? 0 : layout.overByMm).toBeCloseTo(36.4, 9);
});

test('a fall said over the wall’s width stands before rise and going: 270 over 2700 is 65 over the marks', () => {
  const layout = setOut(beside({ ...flight, climbs: 'right', fallMm: mm(270) }));
  expect(layout.ok && layout.marks[1]?.upHereMm).toBeCloseTo(1820 - 65, 9);
});

test('a piece moved up the flight by d keeps its height above the nosing below its first mark (derived, any d)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1500 }), (by) => {
      const at = (edge: number) =>
        setOut({
          ...beside({ ...flight, climbs: 'right' }),
          place: { across: { by: 'left-edge', mm: mm(edge) }, up: { by: 'centre-at', mm: mm(1500) } },
        });
      const [here, there] = [at(100), at(100 + by)];
      if (!here.ok || !there.ok) throw new Error('does not fit');
      expect(there.marks[0]?.upHereMm).toBe(here.marks[0]?.upHereMm);
      expect(there.marks[1]?.upHereMm).toBeCloseTo(here.marks[1]?.upHereMm ?? Number.NaN, 6);
    }),
  );
});
