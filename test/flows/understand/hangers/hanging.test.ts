import { describe, expect, it } from 'vitest';
import type { JobSoFar } from '../../../../core/job.ts';
import { mm } from '../../../../core/quantity.ts';
import type { DisplayUnit } from '../../../../flows/reading.ts';
import { hear, outcome, pairs } from '../hear.ts';

/** Exact by definition (international yard and pound, 1959). */
const IN = 25.4;

type Points = number[][] | 'ask' | 'refused' | null;
type Row = [say: string, points: Points, unit?: DisplayUnit];

/** Invented sayings. A negative figure is from the right, 0.5 the middle, as in sayings.json. */
const BOTH = (across: number, down: number) => [
  [across, down],
  [-across, down],
];
const POINTS: Row[] = [
  ['95 in 240 down', BOTH(95, 240)],
  ['95 in, 240 down', BOTH(95, 240)],
  ['95in 240down', BOTH(95, 240)],
  ['95mm in 240mm down', BOTH(95, 240)],
  ['95 mil in and 240 mil down', BOTH(95, 240)],
  ['two rings 95 in and 240 down', BOTH(95, 240)],
  ['2 d rings, 95 in 240 down each', BOTH(95, 240)],
  ['two D-rings, each 95 in and 240 down', BOTH(95, 240)],
  ['pair of rings 95 in 240 down', BOTH(95, 240)],
  ['rings 95 in from each side, 240 down from the top', BOTH(95, 240)],
  ['rings 95 from each side and 240 from the top', BOTH(95, 240)],
  ['rings are 95 in from both edges and 240 below the top edge', BOTH(95, 240)],
  ['strap hangers 95 in either side, 240 down', BOTH(95, 240)],
  ['95 in both sides and 240 down', BOTH(95, 240)],
  ['240 down and 95 in both sides', BOTH(95, 240)],
  ['240 down, 95 in', BOTH(95, 240)],
  ['down 240, in 95 each side', BOTH(95, 240)],
  ['9.5cm in and 24cm down', BOTH(95, 240)],
  ['9,5 cm in and 24 cm down both sides', BOTH(95, 240)],
  ['9.5 cm in, 24 down', BOTH(95, 240)],
  ['ninety five in two forty down', BOTH(95, 240)],
  ['ninety in and two hundred and sixty down', BOTH(90, 260)],
  ['hundred in two hundred down', BOTH(100, 200)],
  ['rings 95 inside and 240 down', BOTH(95, 240)],
  ['rings 95 and 240 down', BOTH(95, 240)],
  ['95 in 240 down no 250 down', BOTH(95, 250)],
  ['95 in no sorry 98 in, 240 down', BOTH(98, 240)],
  ['95 in 240 down, sorry 98 in', BOTH(98, 240)],
  ['95 in 240 not 250 down', BOTH(95, 240)],
  ['four hangers, top pair 95 in 240 down', BOTH(95, 240)],
  // left and right
  [
    'left 95 in 240 down right 97 in 238 down',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    'right 97 in 238 down, left 95 in 240 down',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    'L 95 in 240 down, R 97 in 238 down',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    'left one 95 in, right one 97 in, both 240 down',
    [
      [95, 240],
      [-97, 240],
    ],
  ],
  [
    '95 in on the left, 97 in on the right, 240 down',
    [
      [95, 240],
      [-97, 240],
    ],
  ],
  [
    '95 in both sides, left 240 down right 238 down',
    [
      [95, 240],
      [-95, 238],
    ],
  ],
  [
    'left ring: 95 in, 240 down. right ring: 97 in, 238 down',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    'left is 9.5cm in 24cm down and right is 9.7cm in 23.8cm down',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    'rings 95 from the left and 97 from the right, 240 down',
    [
      [95, 240],
      [-97, 240],
    ],
  ],
  [
    'rings at 95 and 745 from the left, 240 down',
    [
      [95, 240],
      [745, 240],
    ],
  ],
  [
    'hooks 100, 400 and 700 from left, 80 down',
    [
      [100, 80],
      [400, 80],
      [700, 80],
    ],
  ],
  [
    '(95, 240) and (745, 240)',
    [
      [95, 240],
      [745, 240],
    ],
  ],
  [
    '(95,240) (745,240)',
    [
      [95, 240],
      [745, 240],
    ],
  ],
  [
    'left one 250 down right one 248 down, both 100 in',
    [
      [100, 250],
      [-100, 248],
    ],
  ],
  [
    '100 in, 250 down on the left, 253 down on the right',
    [
      [100, 250],
      [-100, 253],
    ],
  ],
  [
    '95mm from left side 240mm down; 95mm from right side 238mm down',
    [
      [95, 240],
      [-95, 238],
    ],
  ],
  [
    'first ring 100 from the left, second 740 from the left, both 250 down',
    [
      [100, 250],
      [740, 250],
    ],
  ],
  ['one ring each side, 100 in 250 down', BOTH(100, 250)],
  [
    '95 in 240 down left, 97 in 238 down right',
    [
      [95, 240],
      [-97, 238],
    ],
  ],
  [
    '95 in left, 97 in right, both 240 down',
    [
      [95, 240],
      [-97, 240],
    ],
  ],
  [
    'both 100 in, left 250 down, right 253 down',
    [
      [100, 250],
      [-100, 253],
    ],
  ],
  ['two, 95 in 240 down', BOTH(95, 240)],
  ['2, 95 in 240 down', BOTH(95, 240)],
  ['inset 95, drop 240', BOTH(95, 240)],
  ['each ring 95 in. drop is 240', BOTH(95, 240)],
  ['ninety five inches in, 10 inches down', 'ask'],
  ['ring each corner 50 in 60 down', BOTH(50, 60)],
  ['2 ring 10 cm from side and 24 cm from up', BOTH(100, 240)],
  ['about 4 inches in and a foot down', BOTH(4 * IN, 12 * IN)],
  ['strap hangers 100 in, 250 down, left one is 3 lower', 'ask'],
  // one in the middle
  ['one ring in the middle 30 down', [[0.5, 30]]],
  ['a single hook dead centre, 30 from the top', [[0.5, 30]]],
  ['sawtooth in the middle, 30 down', [[0.5, 30]]],
  ['hook in the centre 30 below the top', [[0.5, 30]]],
  ['1 d-ring top centre 30 down', [[0.5, 30]]],
  // inches
  ['3 in in, 9 in down', BOTH(3 * IN, 9 * IN)],
  ['3" in and 9" down', BOTH(3 * IN, 9 * IN)],
  ['3 inches in and 9 inches down', BOTH(3 * IN, 9 * IN)],
  ['3 1/2" in, 9 1/4" down', BOTH(3.5 * IN, 9.25 * IN)],
  ['3 1/2 in from each side and 9 1/4 in down', BOTH(3.5 * IN, 9.25 * IN)],
  ['3½" in from the sides, 9¼" down', BOTH(3.5 * IN, 9.25 * IN)],
  ['three and a half inches in, nine inches down', BOTH(3.5 * IN, 9 * IN)],
  ['D-rings 3 in from each side, 9 in from the top', BOTH(3 * IN, 9 * IN)],
  ['rings 3 inches from each side, 9 down', BOTH(3 * IN, 9 * IN)],
  [
    'left 3" in 9" down, right 3 1/8" in 9" down',
    [
      [3 * IN, 9 * IN],
      [-3.125 * IN, 9 * IN],
    ],
  ],
  ['3 in 9 down', BOTH(3 * IN, 9 * IN), 'in'],
  ['3 in from each side and 9 down', BOTH(3 * IN, 9 * IN), 'in'],
  ['95 in 240 down', BOTH(95, 240), 'in'],
  ['12 in 20 down', BOTH(120, 200), 'cm'],
  // keyholes
  ['two keyholes 65 in from each side, 42 down', BOTH(65, 42)],
  ['key holes 65 in 42 down both sides', BOTH(65, 42)],
  // asked, refused, nothing
  ['3 in 9 down', 'ask'],
  ['12 in 20 down', 'ask'],
  ['95 240', 'ask'],
  ['95', 'ask'],
  ['one ring 95 in 240 down', 'ask'],
  ['-95 in 240 down', 'refused'],
  ['95 in -240 down', 'refused'],
  ['95 km in 240 down', 'refused'],
  ['24 kg', 'refused'],
  ['dunno', null],
  ['boss will know', null],
];

function expectPoints(got: ReturnType<typeof outcome>, points: Points): void {
  if (!Array.isArray(points)) {
    expect(got).toBe(points);
    return;
  }
  const near = (each: number) => Math.round(each * 1e6) / 1e6;
  const read = pairs((got as Record<string, unknown>)['piece.hanging.points']);
  expect(read.map((pair) => pair.map(near))).toEqual(points.map((pair) => pair.map(near)));
}

type Whole = [say: string, hanging: Record<string, unknown>, partial: string | undefined];

const WHOLE: Whole[] = [
  ['rings, no idea where', { by: 'rings' }, 'piece.hanging.points'],
  ['one strap each side', { by: 'rings' }, 'piece.hanging.points'],
  ['z bar 50 down 600 long', { by: 'batten', fromTopMm: 50, lengthMm: 600 }, undefined],
  ['two D-rings', { by: 'rings' }, 'piece.hanging.points'],
  ['theres a cord', { by: 'cord' }, 'piece.hanging.points'],
  ['wire on the back, two hooks', { by: 'cord' }, 'piece.hanging.points'],
  ['split batten', { by: 'batten' }, 'piece.hanging.fromTopMm'],
  ['french cleat 60 down', { by: 'batten', fromTopMm: 60 }, 'piece.hanging.lengthMm'],
  ['split batten 60 down, 800 long', { by: 'batten', fromTopMm: 60, lengthMm: 800 }, undefined],
  ['batten 800 wide, 60 below the top', { by: 'batten', fromTopMm: 60, lengthMm: 800 }, undefined],
  ['no wire, two keyholes', { by: 'keyholes' }, 'piece.hanging.points'],
  ['clips top and bottom', { by: 'clips' }, 'piece.hanging.points'],
  ['cord, rings 100 in 150 down', { by: 'cord' }, 'piece.hanging.riseMm'],
  ['cord, rings 100 in 150 down, rises 90', { by: 'cord', riseMm: 90 }, 'piece.hanging.hooksApartMm'],
  ['cord, rings 100 in 150 down, 90 up, one hook', { by: 'cord', riseMm: 90, hooksApartMm: 0 }, undefined],
  [
    'wire 700 long, rings 100 in 150 down, single nail',
    { by: 'cord', lengthMm: 700, hooksApartMm: 0 },
    undefined,
  ],
  [
    'cord 800 long, rings 150 in 190 down, two hooks 300 apart',
    { by: 'cord', lengthMm: 800, hooksApartMm: 300 },
    undefined,
  ],
  [
    'string between rings 100 in and 150 down, comes to 60 from the top when pulled, one hook',
    { by: 'cord', riseMm: 90, hooksApartMm: 0 },
    undefined,
  ],
  ['rings 95 in 240 down, seat to screw 8', { by: 'rings', seatToScrewMm: 8 }, undefined],
  ['rings 95 in 240 down, stand off 6 mm', { by: 'rings', standOffMm: 6 }, undefined],
];

const RINGS: JobSoFar = {
  piece: {
    widthMm: mm(840),
    heightMm: mm(1200),
    hanging: {
      by: 'rings',
      points: [
        { fromLeftMm: mm(95), fromTopMm: mm(240) },
        { fromRightMm: mm(95), fromTopMm: mm(240) },
      ],
    },
  },
};

describe('how a piece hangs', () => {
  it.each(POINTS)('"%s" is %j', (say, points, unit) => {
    expectPoints(outcome(hear('piece.hanging', say, unit === undefined ? {} : { unit })), points);
  });

  it.each(WHOLE)('"%s" is %j, still to ask: %s', (say, hanging, partial) => {
    const heard = hear('piece.hanging', say);
    const [fact] = heard?.kind === 'facts' ? heard.facts : [];
    expect(fact?.value.piece?.hanging).toMatchObject(hanging);
    expect(fact?.partial).toBe(partial);
  });

  it.each([
    ['rings 95 in, a third of the way down', BOTH(95, 400)],
    ['rings 95 in and a quarter of the way down', BOTH(95, 300)],
    ['rings 95 in, halfway down', BOTH(95, 600)],
    ['rings 640 apart, 120 down', BOTH(100, 120)],
    ['230 down', BOTH(95, 230)],
    ['95 in 2400 down', 'ask'],
    ['900 in 240 down', 'ask'],
    ['they are 100 in', BOTH(100, 240)],
    [
      'the right one is 98 in 236 down',
      [
        [95, 240],
        [-98, 236],
      ],
    ],
  ] satisfies Row[])('"%s" is %j on a known 840 x 1200 with rings 95 in and 240 down', (say, points) => {
    expectPoints(outcome(hear('piece.hanging', say, { known: RINGS })), points);
  });

  it('keeps a cord a cord when its rings and its hook are told later', () => {
    const known: JobSoFar = { piece: { hanging: { by: 'cord' } } };
    expect(outcome(hear('piece.hanging', 'rings 100 in 150 down', { known }))).toMatchObject({
      'piece.hanging.by': 'cord',
    });
    expect(outcome(hear('piece.hanging', 'one hook', { known }))).toMatchObject({
      'piece.hanging.hooksApartMm': 0,
    });
  });

  it.each([
    ['canvas with a cord across the back', 'cord'],
    ['panel with two keyhole slots, concrete block wall', 'keyholes'],
    ['mirror, D-rings 3 in from each side and 8 in down', 'rings'],
    ['mirror on a split batten', 'batten'],
  ])('"%s" opens with %s', (say, by) => {
    expect(outcome(hear('piece.hanging', say, {}, null))).toMatchObject({ 'piece.hanging.by': by });
  });

  it.each([
    '24 kg mirror 840 x 1120 on brick',
    'left edge 450 from the left corner',
    '300 down from the ceiling',
    'centre 1500 above the floor',
    'two plug sockets 600 from the left, 300 up',
    'hook it on brick',
    'left ring 450 from the left',
    'rings 1500 off the floor',
    'hooks at 1600',
  ])('"%s" says nothing of the hangers', (say) => {
    expect(hear('piece.hanging', say, {}, 'place.across')).toBeNull();
  });

  it('names the readings when inches and millimetres both fit', () => {
    const heard = hear('piece.hanging', '3 in 9 down');
    expect(heard?.kind === 'ask' && heard.ask.readings[0]?.label).toBe('3 in (76.2 mm) and 9 in (228.6 mm)');
  });
});
