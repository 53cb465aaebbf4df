import { expect, test } from 'vitest';
import type { Job, Up } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { mm } from '../../../core/quantity.ts';
import type { Accessory, Wall } from '../../../core/wall/wall.ts';
import { jobOf } from './a-job.ts';

const up = (by: Up['by'], at: number): Up => ({ by, mm: mm(at) });
const wall = (change: Partial<Wall>, height?: Up): Job =>
  jobOf({ wall: change, ...(height && { place: { up: height } }) });
const window = (
  xMm: number,
  yMm: number,
  widthMm: number,
  heightMm: number,
  face: 'this' | 'far' = 'this',
): Accessory[] => [
  { kind: 'window', face, xMm: mm(xMm), yMm: mm(yMm), widthMm: mm(widthMm), heightMm: mm(heightMm) },
];
const ring = (fromLeftMm: number, fromTopMm: number): Hanging => ({
  by: 'rings',
  points: [{ fromLeftMm: mm(fromLeftMm), fromTopMm: mm(fromTopMm) }],
});
const keyhole: Hanging = { by: 'keyholes', points: [{ fromLeftMm: mm(95), fromTopMm: mm(-5) }] };
const batten = (fromTopMm: number, lengthMm: number): Hanging => ({
  by: 'batten',
  fromTopMm: mm(fromTopMm),
  lengthMm: mm(lengthMm),
});

// The plain frame: 930 to 1770 across, 800 to 1920 up.
test.each<[string, Job, string, number]>([
  ['40 wider than the wall: 840 - 800', wall({ widthMm: mm(800) }), 'C-FT-1', 40],
  [
    'past the left end: 0 - (200 - 420)',
    jobOf({ place: { across: { by: 'centre-at', mm: mm(200) } } }),
    'C-FT-2',
    220,
  ],
  [
    'past the right end: 2000 + 840 - 2700',
    jobOf({ place: { across: { by: 'left-edge', mm: mm(2000) } } }),
    'C-FT-2',
    140,
  ],
  [
    'wider than the space between: 840 - 700',
    jobOf({ place: { across: { by: 'between', fromMm: mm(900), toMm: mm(1600) } } }),
    'C-FT-3',
    140,
  ],
  ['through the ceiling: 800 + 1120 - 1900', wall({ heightMm: mm(1900) }), 'C-FT-4', 20],
  [
    'through the ceiling over a mantel: 1100 + 800 + 1120 - 2400',
    wall({ heightMm: mm(2400), datum: { kind: 'mantel', aboveFloorMm: mm(1100) } }),
    'C-FT-4',
    620,
  ],
  [
    'above the ceiling it is set from',
    wall({ datum: { kind: 'ceiling' } }, up('below-ceiling', -10)),
    'C-FT-4',
    10,
  ],
  ['below the floor: 0 - (500 - 560)', wall({}, up('centre-at', 500)), 'C-FT-5', 60],
  [
    'below the mantel it stands over',
    wall({ datum: { kind: 'mantel' } }, up('bottom-above', -30)),
    'C-FT-5',
    30,
  ],
  [
    'on a floor that rises 27 over 2700 toward its far corner, 745 from A: 7.45',
    wall({ datum: { kind: 'floor', fallMm: mm(27) } }, up('bottom-above', 0)),
    'C-FT-5',
    7.45,
  ],
  [
    'below the floor, hung from the ceiling: 1000 - 300 - 1120',
    wall({ datum: { kind: 'ceiling' }, heightMm: mm(1000) }, up('below-ceiling', 300)),
    'C-FT-5',
    420,
  ],
  [
    'over a window to the right by its nearest edge: 1770 - 1700',
    wall({ accessories: window(2000, 1500, 600, 900) }),
    'C-FT-6',
    70,
  ],
  [
    'over a window above, seen from a mantel: 1100 + 1920 - (3300 - 300)',
    wall({ datum: { kind: 'mantel', aboveFloorMm: mm(1100) }, accessories: window(1350, 3300, 600, 600) }),
    'C-FT-6',
    20,
  ],
  [
    'over a window told of on the far face, which goes through the wall: 2700 - 700 = 2000, its left edge 1700',
    wall({ accessories: window(700, 1500, 600, 900, 'far') }),
    'C-FT-6',
    70,
  ],
  [
    'on a ring past its own right side: 900 - 840',
    jobOf({ piece: { hanging: ring(900, 240) } }),
    'C-FT-7',
    60,
  ],
  ['on a ring past its own left side', jobOf({ piece: { hanging: ring(-15, 240) } }), 'C-FT-7', 15],
  [
    'on a ring below its own bottom: 1200 - 1120',
    jobOf({ piece: { hanging: ring(95, 1200) } }),
    'C-FT-7',
    80,
  ],
  ['on a keyhole above its own top', jobOf({ piece: { hanging: keyhole } }), 'C-FT-7', 5],
  ['on a batten wider than itself: 900 - 840', jobOf({ piece: { hanging: batten(100, 900) } }), 'C-FT-7', 60],
])('a piece does not fit %s', (_, job, id, over) => {
  const layout = setOut(job);
  expect(layout).toMatchObject({ ok: false, id });
  expect(layout.ok ? Number.NaN : layout.overByMm).toBeCloseTo(over, 9);
  expect(layout.ok ? '' : layout.clears).not.toBe('');
});

test.each<[string, Job]>([
  ['exactly as wide as the wall', wall({ widthMm: mm(840) })],
  ['with its top exactly at the ceiling', wall({ heightMm: mm(1920) })],
  ['standing exactly on the floor', wall({}, up('bottom-above', 0))],
  ['edge to edge with a window: 1770 = 2070 - 300', wall({ accessories: window(2070, 1500, 600, 900) })],
  [
    'across from a far window that lies beside it here: 2700 - 630 = 2070, its left edge 1770',
    wall({ accessories: window(630, 1500, 600, 900, 'far') }),
  ],
  ['on a plate that stands above its top', jobOf({ piece: { hanging: ring(95, -20) } })],
  [
    'standing on a mantel that rises 3 over 2700, 0.9 under its far corner, which a level does not show',
    wall({ datum: { kind: 'mantel', fallMm: mm(3) } }, up('bottom-above', 0)),
  ],
  ['below a nosing, where there is wall still', wall({ datum: { kind: 'nosing' } }, up('centre-at', 300))],
])('a piece fits %s', (_, job) => {
  expect(setOut(job)).toMatchObject({ ok: true });
});

test.each<[string, Job]>([
  ['a wall of no width', wall({ widthMm: mm(0) })],
  ['a wall of negative width', wall({ widthMm: mm(-2700) })],
  ['a height that is not a number', wall({}, up('centre-at', Number.NaN))],
  ['an endless drop', jobOf({ piece: { hanging: ring(95, Number.POSITIVE_INFINITY) } })],
  ['a batten of no length', jobOf({ piece: { hanging: batten(100, 0) } })],
])('%s is no length to measure out', (_, job) => {
  expect(setOut(job)).toMatchObject({ ok: false, id: 'C-FT-0' });
});

test('a seat read as 900 above the hanger would put the screw through the ceiling: 1680 + 900 - 2400', () => {
  const plain = wall({ heightMm: mm(2400) });
  const job = {
    ...plain,
    piece: { ...plain.piece, hanging: { ...plain.piece.hanging, seatToScrewMm: mm(900) } },
  };
  expect(setOut(job)).toMatchObject({ ok: false, id: 'C-FT-4', overByMm: 180 });
});

test('a window nobody measured keeps only its middle clear, and that is said', () => {
  const job = wall({ accessories: [{ kind: 'window', face: 'this', xMm: mm(2400), yMm: mm(1500) }] });
  const layout = setOut(job);
  expect(layout.ok && layout.advice.join(' ')).toContain('The size of the window is not known');
});

test('over a mantel of unknown height a window in line with the piece is left to be looked at', () => {
  const layout = setOut(wall({ datum: { kind: 'mantel' }, accessories: window(1350, 1500, 600, 900) }));
  expect(layout.ok && layout.advice.join(' ')).toContain('see that it does not cover the window');
});
