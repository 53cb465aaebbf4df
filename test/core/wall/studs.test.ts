import { expect, test } from 'vitest';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import { shiftOntoStuds } from '../../../core/wall/stud-shift.ts';
import { knownStuds, landing, studAt, studsBetween, TEN_GAUGE } from '../../../core/wall/studs.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { jobOf } from '../layout/a-job.ts';

// Studs 45 wide at 225, 675, 1125, 1575, 2025, 2475. A 10 gauge may be 22.5 - 3 x 4.83 = 8.01 off the middle.
const studs = { spacingMm: mm(450), firstMm: mm(225), widthMm: mm(45) };

test.each([
  ['on the middle of a stud', 1125, 4.83, true, 0, 1125],
  ['8 right of the middle, within 8.01', 1133, 4.83, true, 8, 1125],
  ['8.1 left of the middle, beyond 8.01', 1116.9, 4.83, false, -8.1, 1125],
  ['5 off with a 14 gauge: 22.5 - 3 x 6.15 = 4.05', 1130, 6.15, false, 5, 1125],
  ['left of the first stud', 0, 4.83, false, -225, 225],
])('a screw %s lands or not (EN 1995-1-1 table 8.2, 3 d, from memory)', (_, x, diameter, on, offBy, stud) => {
  const found = landing(mm(x), studs, mm(diameter));
  expect(found).toMatchObject({ on, studCentreMm: stud });
  expect(found.offBy).toBeCloseTo(offBy, 9);
});

test('the stud nearest to 900 is the one at 1125, half way going right', () => {
  expect(studAt(mm(900), studs)).toBe(1125);
});

test('between 600 and 1600 there are studs at 675, 1125 and 1575', () => {
  expect(studsBetween(mm(600), mm(1600), studs, 26)).toEqual([675, 1125, 1575]);
});

const room = { leftMm: mm(1000), rightMm: mm(1000) };

test.each<[string, number[], { leastMm: number; centredMm: number } | null]>([
  [
    'both 20 right of their studs go 20 left, 20 - 8.01 at least',
    [695, 1145],
    { leastMm: -11.99, centredMm: -20 },
  ],
  ['one 100 left of its stud goes 100 right', [1025], { leastMm: 91.99, centredMm: 100 }],
  ['one nearer to the next stud goes that way', [1375], { leastMm: 191.99, centredMm: 200 }],
  ['470 apart over 450: play of 10 each side is more than 8.01', [1115, 1585], null],
  ['460 apart over 450: 5 off each, already landed', [1120, 1580], { leastMm: 0, centredMm: 0 }],
  ['380 apart never land on 450', [1160, 1540], null],
])('marks %s', (_, xs, shift) => {
  const found = shiftOntoStuds(xs.map(mm), studs, TEN_GAUGE.value, room);
  if (shift === null) return expect(found).toBeNull();
  expect(found?.leastMm).toBeCloseTo(shift.leastMm, 9);
  expect(found?.centredMm).toBeCloseTo(shift.centredMm, 9);
});

test('a piece with 50 of wall to its left can’t go 100 that way', () => {
  const found = shiftOntoStuds([mm(775)], studs, TEN_GAUGE.value, { leftMm: mm(50), rightMm: mm(1000) });
  expect(found?.leastMm).toBeCloseTo(1125 - 775 - 8.01, 9);
});

test('in studs narrower than six diameters no screw of that size lands', () => {
  expect(shiftOntoStuds([mm(225)], { ...studs, widthMm: mm(25) }, TEN_GAUGE.value, room)).toBeNull();
});

test.each<[string, Partial<Wall>]>([
  ['nobody found them', { studs: 'unknown' }],
  ['their spacing is not known', { studs: { firstMm: mm(225) } }],
  ['the first is not known', { studs: { spacingMm: mm(450) } }],
  ['they would touch', { studs: { spacingMm: mm(40), firstMm: mm(225), widthMm: mm(45) } }],
  ['the wall is brick after all', { baseMaterial: 'clay-brick', studs }],
])('studs are not known when %s', (_, change) => {
  expect(knownStuds({ baseMaterial: 'plasterboard-on-timber-studs', ...change })).toBeNull();
});

// Marks of the plain job are at 1025 and 1675, 650 apart.
const stud = (change: Wall['studs']) =>
  setOut(jobOf({ wall: { baseMaterial: 'plasterboard-on-timber-studs', ...(change && { studs: change }) } }));

test('each mark says what it falls on, and the piece is told how far to move', () => {
  const layout = stud({ spacingMm: mm(325), firstMm: mm(55), widthMm: mm(45) });
  if (!layout.ok) throw new Error(layout.text);
  // Studs at 1030 and 1680: both marks 5 left of their middles.
  expect(layout.marks.map((mark) => mark.on)).toEqual([
    'stud at 1030 mm, 5 mm left of its middle',
    'stud at 1680 mm, 5 mm left of its middle',
  ]);
  const off = stud({ spacingMm: mm(325), firstMm: mm(65), widthMm: mm(45) });
  if (!off.ok) throw new Error(off.text);
  // Studs at 1040 and 1690: 15 left, inside the stud and too near its edge; 15 - 8.01 = 6.99, 7 to a tenth.
  expect(off.marks[0]?.on).toBe('too near the edge of the stud at 1040 mm, 15 mm left of its middle');
  expect(off.advice.join(' ')).toContain(
    'Moving the whole piece 15 mm to the right lands every mark (7 mm is the least',
  );
});

test('where no move lands both marks, a batten across studs is offered first', () => {
  const layout = stud({ spacingMm: mm(450), firstMm: mm(225), widthMm: mm(45) });
  expect(layout.ok && layout.advice.join(' ')).toContain(
    'No move of the piece lands all of them. A board or batten',
  );
});

test('a stud width that was not given counts as the narrow 35, and that is said', () => {
  const layout = stud({ spacingMm: mm(450), firstMm: mm(225) });
  expect(layout).toMatchObject({ ok: true, assumptions: [{ field: 'wall.studs.widthMm', value: 35 }] });
});

test('on studs nobody found, the search for them comes first', () => {
  const layout = stud('unknown');
  expect(layout.ok && layout.advice.join(' ')).toContain('Find the studs first');
});
