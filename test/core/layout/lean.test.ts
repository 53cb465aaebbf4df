import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import { turnsOnOneHook } from '../../../core/layout/off-centre.ts';
import type { Piece } from '../../../core/piece/piece.ts';
import { planOf } from '../../../core/plan.ts';
import { mm } from '../../../core/quantity.ts';
import { stepsOf } from '../../../core/steps.ts';
import { jobOf } from './a-job.ts';

const ring = (across: number, drop: number) => ({ fromLeftMm: mm(across), fromTopMm: mm(drop) });
const on = (change: Partial<Piece>, rings = [ring(95, 240), ring(745, 240)], standOffMm?: number) =>
  jobOf({
    piece: {
      hanging: {
        by: 'rings',
        points: rings,
        ...(standOffMm !== undefined && { standOffMm: mm(standOffMm) }),
      },
      ...change,
    },
  });
const said = (job: ReturnType<typeof on>) => {
  const layout = setOut(job);
  if (!layout.ok) throw new Error(layout.text);
  return { advice: layout.advice.join(' '), lean: layout.why.find(({ of }) => of === 'lean')?.result };
};

// Safety 10, derived: 12 at 800 is asin(12 / 800) = 0.86 degrees. Rings 320 down on 1120 are 800 above the bottom.
test('a stand-off of 12 at 800 leans 0.86 degrees, said to a tenth; equal bumpers take it away', () => {
  const rings = [ring(95, 320), ring(745, 320)];
  expect(said(on({}, rings, 12)).advice).toContain(
    'It leans 0.9 degrees forward: bumpers of 12 mm at both lower corners set it upright.',
  );
  expect(said(on({}, rings, 12)).lean).toBe('0.9 degrees, its middle 8.4 mm further out');
  const level = said(on({ bumperMm: mm(12) }, rings, 12));
  expect(level.advice).not.toContain('leans');
  expect(level.lean).toBe('0 degrees, its middle 0 mm further out');
});

test.each([
  [9, 'is not worth a line: asin(9 / 880) = 0.586', false],
  [10, 'is: asin(10 / 880) = 0.651', true],
])('a stand-off of %s at 880 %s (0.6 degrees, our choice for a lean)', (standOff, _, leans) => {
  expect(said(on({}, undefined, standOff)).advice.includes('leans')).toBe(leans);
});

test('bumpers thicker than the hangers stand off tip it back', () => {
  expect(said(on({ bumperMm: mm(10) })).advice).toContain(
    'The bumpers are 4 mm thicker than the hangers stand off',
  );
});

test('on the wall the bumpers are a step, as thick as the hangers stand off, unless they are on already', () => {
  const steps = (job: ReturnType<typeof on>) => {
    const whole = {
      ...job,
      wall: { ...job.wall, cores: 'solid' as const, thicknessMm: mm(230), accessories: [] },
    };
    return stepsOf(
      whole,
      planOf({ ...whole, building: { country: 'AU', yearBuilt: 2010 }, crew: { people: 2 } }),
    ).join(' ');
  };
  expect(steps(on({}, undefined, 8))).toContain(
    'Bumpers of 8 mm on both lower corners, as thick as the hangers stand off. Two hands on the frame',
  );
  expect(steps(on({ bumperMm: mm(8) }, undefined, 8))).not.toContain('Bumpers');
});

// Safety 10, derived: 24 kg on rings at 200 and 1000 with the weight at 520 is 14.4 and 9.6.
test('24 kg with its weight at 520 between rings at 200 and 1000: the left ring carries 14.4 kg', () => {
  const job = on({ widthMm: mm(1200), comFromLeftMm: mm(520) }, [ring(200, 240), ring(1000, 240)]);
  expect(said(job).advice).toContain(
    'The weight is off the middle: the left hanger carries 14.4 kg of 24 kg.',
  );
});

test.each([
  ['in the middle', 420, false],
  ['32 off it: 0.5 + 32 / 650 = 0.549 of it on one ring', 452, false],
  ['33 off it: 0.551', 453, true],
])('a weight %s is told: (our choice, 55 in 100)', (_, com, told) => {
  expect(said(on({ comFromLeftMm: mm(com) })).advice.includes('off the middle')).toBe(told);
});

test('a weight outside the rings lifts the far one off', () => {
  const advice = said(on({ comFromLeftMm: mm(60) })).advice;
  expect(advice).toContain('The weight is outside the hangers, to the left: the other one lifts off.');
});

// Hook 240 below the top of 1120: 320 above the middle. atan(30 / 320) = 5.36 degrees.
test('on one ring 30 off the weight it hangs atan(30 / 320) = 5.4 degrees crooked (statics, derived)', () => {
  expect(said(on({ comFromLeftMm: mm(450) }, [ring(420, 240)])).advice).toContain(
    'The weight is 30 mm to one side of the hook: on one hook it will hang crooked, 5.4 degrees down on the right. Use two.',
  );
});

test('hung below its weight on one hook a piece turns over', () => {
  expect(turnsOnOneHook(mm(30), mm(-10))).toBeNull();
  expect(said(on({ comFromLeftMm: mm(450) }, [ring(420, 700)])).advice).toContain('it will turn over');
});

// Safety 10, derived: W e / h. 24 kg, 200 out, rings 880 above the bottom: 24 x 200 / 880 = 5.45 kg.
test.each([
  [132, false],
  [200, true],
])(
  '%s deep with its rings 880 above the bottom: the outward pull is said: %s (15 in 100, our choice)',
  (depth, told) => {
    const { advice } = said(on({ depthMm: mm(depth) }));
    expect(advice.includes('pulls 5.5 kg outward')).toBe(told);
  },
);
