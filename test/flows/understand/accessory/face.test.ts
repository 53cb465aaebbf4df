import { expect, test } from 'vitest';
import type { Accessory } from '../../../../core/wall/wall.ts';
import { understand } from '../../../../flows/understand/understand.ts';

/** A wrong face or a lost fitting can put a hole into a cable. Invented sayings; figures worked out by hand. */
type Spot = [kind: string, face: 'this' | 'far', x: number, y: number];
const SAYINGS: [said: string, spots: Spot[]][] = [
  ['gpo 300 up 600 from left this side, nothin other side', [['socket', 'this', 600, 300]]],
  ['one double socket 400 from the left 300 up, nothing behind', [['socket', 'this', 400, 300]]],
  ['socket 400 from the left 300 up. the other side is clear', [['socket', 'this', 400, 300]]],
  [
    'two sockets, 300 up, one at 500 and one at 2200 from the left. other side clear',
    [
      ['socket', 'this', 500, 300],
      ['socket', 'this', 2200, 300],
    ],
  ],
  [
    'socket 600 along 300 up on this face, switch 400 along 1200 up on the far face',
    [
      ['socket', 'this', 600, 300],
      ['switch', 'far', 400, 1200],
    ],
  ],
  [
    'socket 600 from the left 300 up. other side is the hall, light switch 900 from the left 1200 up',
    [
      ['socket', 'this', 600, 300],
      ['switch', 'far', 900, 1200],
    ],
  ],
  ['switch 400 from the left 1200 up when im in the hall', [['switch', 'far', 400, 1200]]],
  ['nothing on this side, socket on the other side 700 from the left 300 up', [['socket', 'far', 700, 300]]],
];

const heard = (said: string, accessories?: Accessory[]) =>
  understand(said, {
    awaiting: 'wall.accessories',
    known: {
      piece: { kind: 'mirror' },
      wall: { baseMaterial: 'clay-brick', ...(accessories && { accessories }) },
    },
    unit: 'mm',
    lastAnswered: 'piece.massKg',
    hasPlan: false,
  });

const spotsOf = (said: string, before?: Accessory[]): Spot[] | null => {
  const list = heard(said, before).facts.find(({ question }) => question === 'wall.accessories')?.value.wall
    ?.accessories;
  return Array.isArray(list) ? list.map(({ kind, face, xMm, yMm }) => [kind, face, xMm, yMm]) : null;
};

test.each(SAYINGS)('"%s" puts each fitting on its own face', (said, spots) => {
  expect(spotsOf(said)).toEqual(spots);
});

test('a fitting told later on another face is one more', () => {
  const [first] = heard('socket 600 from the left 300 up').facts;
  const before = first?.value.wall?.accessories as Accessory[];
  expect(spotsOf('switch on the other side 900 from the left 1200 up', before)).toEqual([
    ['socket', 'this', 600, 300],
    ['switch', 'far', 900, 1200],
  ]);
});
