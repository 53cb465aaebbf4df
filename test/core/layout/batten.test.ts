import { expect, test } from 'vitest';
import { evenScrews } from '../../../core/layout/batten.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf } from './a-job.ts';

test.each<[string, number, number[]]>([
  ['1000 long: four, (1000 - 100) / 3 = 300 apart', 1000, [50, 350, 650, 950]],
  ['1500 long: 1400 / 400 is over 3, so five 350 apart', 1500, [50, 400, 750, 1100, 1450]],
  ['850 long: four, exactly 250 apart', 850, [50, 300, 550, 800]],
  ['700 long: four would be 200 apart, so three 300 apart', 700, [50, 350, 650]],
  ['400 long: two', 400, [50, 350]],
  ['80 long: one in the middle', 80, [40]],
])('a batten on masonry %s (trade 1.1 line 5, common practice)', (_, length, screws) => {
  expect(evenScrews({ fromLeftMm: mm(0), toLeftMm: mm(length) })).toEqual(screws);
});

const hung = (wall: Partial<Wall>, lengthMm = 800) =>
  setOut(
    jobOf({
      piece: { hanging: { by: 'batten', fromTopMm: mm(120), lengthMm: mm(lengthMm) } },
      wall: { heightMm: mm(2400), ...wall },
    }),
  );

test('the wall half is centred behind the frame, its seat at the line: 1350 -/+ 400, 1920 - 120', () => {
  const layout = hung({});
  expect(layout).toMatchObject({ ok: true, batten: { fromLeftMm: 950, toLeftMm: 1750, upMm: 1800 } });
  expect(layout.ok && layout.advice.join(' ')).toContain(
    'There are 480 mm above the frame for lifting it on',
  );
  expect(layout.ok && layout.advice.join(' ')).toContain('a spacer of the same thickness');
});

const studWall = (spacingMm: number, firstMm: number): Partial<Wall> => ({
  baseMaterial: 'plasterboard-on-timber-studs',
  studs: { spacingMm: mm(spacingMm), firstMm: mm(firstMm), widthMm: mm(45) },
});

test('on known studs its screws are the studs it crosses, clear of its ends: 1125 and 1575', () => {
  const layout = hung(studWall(450, 225));
  if (!layout.ok) throw new Error(layout.text);
  expect(layout.marks.map((mark) => [mark.fromLeftMm, mark.upMm, mark.on])).toEqual([
    [1125, 1800, 'stud at 1125 mm'],
    [1575, 1800, 'stud at 1575 mm'],
  ]);
  expect(layout.advice.join(' ')).toContain('two screws in each stud');
});

test('a batten that reaches one stud only is told to be longer', () => {
  const layout = hung(studWall(600, 150), 500);
  expect(layout.ok && layout.advice.join(' ')).toContain('fewer than two of the studs');
});

test('a batten with more screws than letters is more than one sets out', () => {
  const layout = setOut(
    jobOf({
      piece: { widthMm: mm(12000), hanging: { by: 'batten', fromTopMm: mm(120), lengthMm: mm(12000) } },
      wall: { widthMm: mm(13000) },
    }),
  );
  expect(layout).toMatchObject({ ok: false, id: 'C-FT-10' });
});
