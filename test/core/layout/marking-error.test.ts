import fc from 'fast-check';
import { expect, test } from 'vitest';
import { markingTilt } from '../../../core/layout/marking-error.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import { jobOf } from './a-job.ts';

/** The plain piece on rings so far from both sides. */
const ringsIn = (inMm: number) =>
  setOut(
    jobOf({
      piece: {
        hanging: {
          by: 'rings',
          points: [
            { fromLeftMm: mm(inMm), fromTopMm: mm(240) },
            { fromRightMm: mm(inMm), fromTopMm: mm(240) },
          ],
        },
      },
    }),
  );

// Each end: drop 1, half a line 0.5, bit 1, so 5 for both; and 0.5 in a metre. As a rule sqrt(2 + 0.5 + 2 + level^2).
test.each([
  [650, 5.325, Math.sqrt(4.5 + 0.325 ** 2), 0.469, 0.189],
  [1000, 5.5, Math.sqrt(4.75), 0.315, 0.125],
  [120, 5.06, Math.sqrt(4.5 + 0.06 ** 2), 2.415, 1.013],
])(
  'marks %s apart come out level to %s mm at worst, %s as a rule: %s and %s degrees (our choice of errors, derived)',
  (span, worst, usual, worstDeg, usualDeg) => {
    const tilt = markingTilt(mm(span));
    expect(tilt.worstMm).toBeCloseTo(worst, 9);
    expect(tilt.usualMm).toBeCloseTo(usual, 9);
    expect(tilt.worst).toBeCloseTo(worstDeg, 3);
    expect(tilt.usual).toBeCloseTo(usualDeg, 3);
  },
);

test('a longer span is never more crooked, and the worst is never better than the rule', () => {
  const span = fc.integer({ min: 20, max: 5000 });
  fc.assert(
    fc.property(span, span, (one, other) => {
      const [short, long] = [markingTilt(mm(Math.min(one, other))), markingTilt(mm(Math.max(one, other)))];
      expect(long.worst).toBeLessThanOrEqual(short.worst);
      expect(long.usual).toBeLessThanOrEqual(short.usual);
      expect(short.worst).toBeGreaterThan(short.usual);
    }),
  );
});

/** Errors drawn within their limits never leave the worst, and nearly all lie within the rule for three of them. */
test('errors drawn at random stay within the worst, and two in three within the rule', () => {
  const within = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
  const errors = fc.tuple(...[1, 1, 0.5, 0.5, 1, 1, 0.325].map(within));
  const { worstMm, usualMm } = markingTilt(mm(650));
  const drawn = fc
    .sample(errors, { numRuns: 3000, seed: 11 })
    .map((all) => Math.abs(all.reduce((a, b) => a + b, 0)));
  expect(Math.max(...drawn)).toBeLessThanOrEqual(worstMm);
  expect(drawn.filter((off) => off <= usualMm).length).toBeGreaterThan(2000);
});

// 1 mm over 286.5 is 0.2 degrees.
test.each([
  [277, true],
  [276, false],
])('rings %s in from the sides of 840: the short span is said: %s', (inMm, said) => {
  const layout = ringsIn(inMm);
  expect(layout.ok && layout.advice.some((each) => each.startsWith('The marks are only'))).toBe(said);
});

test('rings 120 apart: a pencil line of 1 mm is atan(1 / 120) = 0.48 degrees, and 0.6 shows (Vision Res. 1990, read)', () => {
  const layout = ringsIn(360);
  expect(layout.ok && layout.advice.join(' ')).toContain(
    'The marks are only 120 mm apart: a pencil line (1 mm) out is 0.5 degrees, and 0.6 shows.',
  );
});

test('how level it will hang can be asked, with what went in', () => {
  const layout = ringsIn(95);
  expect(layout.ok && layout.why.find(({ of }) => of === 'tilt')).toMatchObject({
    inputs: { 'mark to mark': 650, 'error as a rule': '2.1 mm', 'error at worst': '5.3 mm' },
    result: '0.2 degrees as a rule, 0.5 at worst; 0.6 is seen',
  });
});
