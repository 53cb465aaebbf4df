import { describe, expect, test } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { expectHeard, hear } from '../as-said.ts';
import { at, jobOf } from '../score.ts';

type Spot = readonly [kind: string, face: 'this' | 'far', x: number, y: number];
type Row = { say: string; spots: readonly Spot[]; farSide?: string };

/** Invented by us, after the contract's own words for fittings. */
const ROWS: Row[] = [
  { say: 'none', spots: [] },
  { say: 'no', spots: [] },
  { say: 'nothing on it', spots: [] },
  { say: 'none on either side of that wall', spots: [], farSide: 'seen' },
  { say: 'no sockets or switches on either face', spots: [], farSide: 'seen' },
  { say: 'nothing on both sides', spots: [], farSide: 'seen' },
  { say: "none this side, don't know about the other side", spots: [], farSide: 'unknown' },
  { say: 'none on this side', spots: [], farSide: 'unknown' },
  { say: "nothing this side, haven't looked at the other", spots: [], farSide: 'unknown' },
  { say: 'one socket on this side, 1250 from the left and 300 up', spots: [['socket', 'this', 1250, 300]] },
  { say: 'switch 1250 from the left, 1100 up', spots: [['switch', 'this', 1250, 1100]] },
  { say: 'light swich 200 from the left 1100 up', spots: [['switch', 'this', 200, 1100]] },
  { say: 'GPO 600 from the left, 300 off the floor', spots: [['socket', 'this', 600, 300]] },
  { say: 'outlet 24 in from the left and 16 in up', spots: [['socket', 'this', 609.6, 406.4]] },
  { say: 'power point at 800, 300', spots: [['socket', 'this', 800, 300]] },
  { say: 'thermostat 1500 up and 300 from the left', spots: [['thermostat', 'this', 300, 1500]] },
  { say: 'radiator 1.4 m from the left, 350 up', spots: [['radiator', 'this', 1400, 350]] },
  {
    say: 'two sockets, 400 and 2200 from the left, both 300 up',
    spots: [
      ['socket', 'this', 400, 300],
      ['socket', 'this', 2200, 300],
    ],
  },
  {
    say: 'double socket 600 from left 300 high and a wall light 1400 from the left 1800 up',
    spots: [
      ['socket', 'this', 600, 300],
      ['light', 'this', 1400, 1800],
    ],
  },
  {
    say: 'switch 1250 from the left, 1100 up; another on the other side at 900 from the left, 1100 up',
    spots: [
      ['switch', 'this', 1250, 1100],
      ['switch', 'far', 900, 1100],
    ],
    farSide: 'seen',
  },
  {
    say: 'none here, one socket on the other side 700 from the left 450 up',
    spots: [['socket', 'far', 700, 450]],
    farSide: 'seen',
  },
  {
    say: "socket 900 from the left 300 up, don't know about the other side",
    spots: [['socket', 'this', 900, 300]],
    farSide: 'unknown',
  },
];

describe('what is on the wall, as said', () => {
  test.each(ROWS)('"$say" (invented)', ({ say, spots, farSide }) => {
    const job = jobOf(hear(say, 'wall.accessories'));
    const list = at(job, 'wall.accessories');
    expect(list).toHaveLength(spots.length);
    spots.forEach(([kind, face, x, y], index) => {
      expect(Array.isArray(list) && list[index]).toMatchObject({ kind, face });
      expect(Array.isArray(list) && at(list[index], 'xMm')).toBeCloseTo(x, 1);
      expect(Array.isArray(list) && at(list[index], 'yMm')).toBeCloseTo(y, 1);
    });
    expect(at(job, 'wall.farSide')).toBe(farSide);
  });

  test.each([
    "there's a power point under it",
    'a window on the right',
    'socket 300 up',
    'yes, a switch',
    'socket 500 from the right, 300 up',
  ])('"%s" is told in part, and where it is is still to be asked', (say) => {
    const { facts } = hear(say, 'wall.accessories');
    expect(facts.map(({ question, partial }) => [question, typeof partial])).toEqual([
      ['wall.accessories', 'string'],
    ]);
    expect(facts[0]?.value.wall?.accessories).toBeUndefined();
    expect(facts[0]?.value.wall?.unplaced).toHaveLength(1);
  });

  test.each(["don't know", "haven't looked", 'not sure', 'no idea mate', "I'll have to check"])(
    '"%s" is not known, never none',
    (say) => {
      expectHeard(hear(say, 'wall.accessories'), 'dont-know');
      expect(hear(say, 'wall.accessories').facts).toEqual([]);
    },
  );

  test('told in passing, the other face is not looked at yet', () => {
    const job = jobOf(hear('mirror 24 kg, socket 600 from the left and 300 up', null));
    expect(at(job, 'wall.accessories')).toEqual([{ kind: 'socket', face: 'this', xMm: 600, yMm: 300 }]);
    expect(at(job, 'wall.farSide')).toBe('unknown');
  });

  test('from the right end counts once the width is known: 3000 - 500 = 2500', () => {
    const reading = hear('socket 500 from the right, 300 up', 'wall.accessories', {
      known: { wall: { widthMm: mm(3000) } },
    });
    expect(at(jobOf(reading), 'wall.accessories')).toEqual([
      { kind: 'socket', face: 'this', xMm: 2500, yMm: 300 },
    ]);
  });
});
