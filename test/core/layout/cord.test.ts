import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { mm } from '../../../core/quantity.ts';
import { jobOf, pairs } from './a-job.ts';

type Cord = Omit<Extract<Hanging, { by: 'cord' }>, 'by' | 'points'>;

/** On the plain job, whose rings are 650 apart, 240 down, their middle at 1350; top of the frame 1920. */
const cord = (change: Cord, right = 240) =>
  setOut(
    jobOf({
      piece: {
        hanging: {
          by: 'cord',
          points: [
            { fromLeftMm: mm(95), fromTopMm: mm(240) },
            { fromRightMm: mm(95), fromTopMm: mm(right) },
          ],
          ...change,
        },
      },
    }),
  );

test.each<[string, Cord, number[][], number, number]>([
  [
    'one hook, rise measured: 1920 - 240 + 200; atan(200 / 325)',
    { riseMm: mm(200), hooksApartMm: mm(0) },
    [[1350, 1880]],
    200,
    31.6075,
  ],
  [
    'one hook, length 750: sqrt(375^2 - 325^2) = sqrt(35000) = 187.0829; acos(325 / 375)',
    { lengthMm: mm(750), hooksApartMm: mm(0) },
    [[1350, 1867.0829]],
    187.0829,
    29.9264,
  ],
  [
    'two hooks 250 apart, length 770: legs 260 over 200, sqrt(260^2 - 200^2) = 166.1325; acos(200 / 260)',
    { lengthMm: mm(770), hooksApartMm: mm(250) },
    [
      [1225, 1846.1325],
      [1475, 1846.1325],
    ],
    166.1325,
    39.7151,
  ],
  [
    'two hooks as far apart as the rings: legs upright, (850 - 650) / 2 = 100',
    { lengthMm: mm(850), hooksApartMm: mm(650) },
    [
      [1025, 1780],
      [1675, 1780],
    ],
    100,
    90,
  ],
])('a cord over %s', (_, change, marks, rise, angle) => {
  const layout = cord(change);
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.marks).toHaveLength(marks.length);
  for (const [at, [across = 0, up = 0]] of marks.entries()) {
    expect(layout.marks[at]?.fromLeftMm).toBeCloseTo(across, 9);
    expect(layout.marks[at]?.upMm).toBeCloseTo(up, 3);
  }
  expect(layout.cord?.riseMm).toBeCloseTo(rise, 3);
  expect(layout.cord?.legAngle).toBeCloseTo(angle, 3);
  expect(layout.cord?.spreadMm).toBe(650);
});

test.each<[string, Cord, number]>([
  ['30 shorter than its rings are apart', { lengthMm: mm(620), hooksApartMm: mm(0) }, 30],
  ['exactly as long as its rings are apart', { lengthMm: mm(650), hooksApartMm: mm(0) }, 0],
  ['with hooks 50 further apart than the rings', { lengthMm: mm(900), hooksApartMm: mm(700) }, 50],
  ['that does not rise', { riseMm: mm(0) }, 0],
  ['that hangs 40 below its rings', { riseMm: mm(-40) }, 40],
  ['whose rise and length nobody measured', {}, 0],
])('a cord can’t be one %s', (_, change, over) => {
  expect(cord(change)).toMatchObject({ ok: false, id: 'C-FT-8', overByMm: over });
});

test('a cord on one ring is no cord', () => {
  const hanging: Hanging = {
    by: 'cord',
    points: [{ fromLeftMm: mm(95), fromTopMm: mm(240) }],
    riseMm: mm(90),
  };
  expect(setOut(jobOf({ piece: { hanging } }))).toMatchObject({ ok: false, id: 'C-FT-8' });
});

test('how many hooks was not said: one is taken, and that is said', () => {
  const layout = cord({ riseMm: mm(200) });
  expect(layout).toMatchObject({
    ok: true,
    assumptions: [{ field: 'piece.hanging.hooksApartMm', value: 0 }],
  });
});

test('rings 10 uneven under a cord: the hook is set from their mean, and evening them is advised', () => {
  const layout = cord({ riseMm: mm(200), hooksApartMm: mm(0) }, 250);
  expect(layout.ok && pairs(layout.marks)).toEqual([[1350, 1920 - 245 + 200]]);
  expect(layout.ok && layout.advice.join(' ')).toContain('10 mm uneven');
});

test('a rise of 260 over a drop of 240 shows the hook 20 above the frame', () => {
  const layout = cord({ riseMm: mm(260), hooksApartMm: mm(0) });
  expect(layout.ok && layout.advice.join(' ')).toContain('show 20 mm above the frame');
});

test('a length that gives another rise than the one measured is told, and the measured one stands', () => {
  const layout = cord({ riseMm: mm(150), lengthMm: mm(750), hooksApartMm: mm(0) });
  expect(layout.ok && layout.cord?.riseMm).toBe(150);
  expect(layout.ok && layout.advice.join(' ')).toContain('it would rise 187.1 mm');
});

test.each([
  ['on one hook, 30 off its middle', 0, true],
  ['on two hooks', 300, false],
])('weight 450 from the left of an 840 piece %s', (_, apart, crooked) => {
  const hanging: Hanging = {
    by: 'cord',
    points: [
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromRightMm: mm(95), fromTopMm: mm(240) },
    ],
    riseMm: mm(200),
    hooksApartMm: mm(apart),
  };
  const layout = setOut(jobOf({ piece: { hanging, comFromLeftMm: mm(450) } }));
  expect(layout.ok && layout.advice.some((each) => each.includes('30 mm to one side of the hook'))).toBe(
    crooked,
  );
});

test('the rise of a cord of 750 can be asked about, with what went in', () => {
  const layout = cord({ lengthMm: mm(750), hooksApartMm: mm(0) });
  const whys = layout.ok ? layout.why : [];
  expect(whys.find((why) => why.of === 'cord rise')).toMatchObject({
    inputs: { 'cord length': 750, 'ring to ring': 650, 'hooks apart': 0 },
    result: '187.1 mm',
  });
  expect(whys.find((why) => why.of === 'cord angle')?.result).toBe('29.9 degrees from level');
});
