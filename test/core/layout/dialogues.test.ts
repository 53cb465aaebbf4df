import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Job, Up } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { mm } from '../../../core/quantity.ts';
import { jobOf, pairs } from './a-job.ts';

type Dialogue = { id: string; expect: { marks: [number, number][] }; arithmetic: string };

const { dialogues }: { dialogues: Dialogue[] } = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/dialogues.json', import.meta.url), 'utf8'),
);

const INCH = 25.4;
const rings = (inMm: number, downMm: number): Hanging => ({
  by: 'rings',
  points: [
    { fromLeftMm: mm(inMm), fromTopMm: mm(downMm) },
    { fromRightMm: mm(inMm), fromTopMm: mm(downMm) },
  ],
});
const job = (wide: number, high: number, wall: number, up: Up, hanging: Hanging): Job =>
  jobOf({
    piece: { widthMm: mm(wide), heightMm: mm(high), hanging },
    wall: { widthMm: mm(wall) },
    place: { up },
  });
const centreAt = (at: number): Up => ({ by: 'centre-at', mm: mm(at) });
const bottomAbove = (at: number): Up => ({ by: 'bottom-above', mm: mm(at) });

const ceiling = job(640, 1180, 3050, { by: 'below-ceiling', mm: mm(260) }, rings(90, 255));
const mantel = job(840, 1120, 2700, bottomAbove(140), rings(95, 240));

/** What each person ends up having said, as a job; only what set-out reads. */
const SAID: Record<string, Job> = {
  'mantel-mirror': {
    ...mantel,
    wall: { ...mantel.wall, heightMm: mm(2400), datum: { kind: 'mantel', aboveFloorMm: mm(1100) } },
  },
  'inches-on-studs': job(24 * INCH, 36 * INCH, 120 * INCH, centreAt(58 * INCH), rings(3 * INCH, 9 * INCH)),
  'over-the-socket': job(700, 500, 3000, centreAt(1500), rings(100, 120)),
  'one-hook-on-a-cord': job(800, 600, 2600, centreAt(1450), {
    ...rings(100, 150),
    by: 'cord',
    riseMm: mm(90),
    hooksApartMm: mm(0),
  } as Hanging),
  keyholes: job(700, 500, 2800, centreAt(1480), { ...rings(65, 42), by: 'keyholes' } as Hanging),
  'two-hook-cord': job(1000, 700, 3400, centreAt(1550), {
    ...rings(150, 190),
    by: 'cord',
    lengthMm: mm(800),
    hooksApartMm: mm(300),
  } as Hanging),
  'below-a-ceiling': { ...ceiling, wall: { ...ceiling.wall, heightMm: mm(2420) } },
  'a-correction-in-the-middle': job(820, 1060, 2960, centreAt(1470), rings(85, 230)),
};

const told = dialogues.filter((each) => SAID[each.id] && each.expect.marks.length > 0);

test.each(told.map((each) => [each.id, each.arithmetic, each] as const))(
  'dialogue %s ends in its marks: %s',
  (id, _, each) => {
    const layout = setOut(SAID[id] as Job);
    if (!layout.ok) throw new Error(layout.text);
    expect(layout.marks).toHaveLength(each.expect.marks.length);
    for (const [at, [across, up]] of each.expect.marks.entries()) {
      expect(layout.marks[at]?.fromLeftMm).toBeCloseTo(across, 6);
      expect(layout.marks[at]?.upMm).toBeCloseTo(up, 6);
    }
  },
);

test('every dialogue that ends in marks is among them', () => {
  expect(told.map((each) => each.id)).toEqual(
    dialogues.filter((each) => each.expect.marks.length > 0).map((each) => each.id),
  );
});

test('dialogue over-the-socket puts its left mark straight above the socket: (3000 - 700) / 2 + 100 = 1250', () => {
  const layout = setOut(SAID['over-the-socket'] as Job);
  expect(layout.ok && pairs(layout.marks)[0]).toEqual([1250, 1500 + 250 - 120]);
});

test('the misread wall of 2690 would put the left mark of a-correction-in-the-middle at (2690 - 820) / 2 + 85 = 1020', () => {
  const misread = job(820, 1060, 2690, centreAt(1470), rings(85, 230));
  const layout = setOut(misread);
  expect(layout.ok && layout.marks[0]?.fromLeftMm).toBe(1020);
});

test('a mirror 140 over a mantel 1100 high keeps its heights from the mantel, and knows the floor is 1100 below', () => {
  const layout = setOut(SAID['mantel-mirror'] as Job);
  expect(layout).toMatchObject({ ok: true, datumAboveFloorMm: 1100, frame: { bottomMm: 140, topMm: 1260 } });
});
