import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobSoFar } from '../../../../core/job.ts';
import { mm } from '../../../../core/quantity.ts';
import type { Accessory, Unplaced } from '../../../../core/wall/wall.ts';
import type { QuestionName } from '../../../../flows/question.ts';
import { hear } from '../as-said.ts';

const SOCKET: Accessory = { kind: 'socket', face: 'this', xMm: mm(600), yMm: mm(300) };
const SWITCH: Accessory = { kind: 'switch', face: 'far', xMm: mm(900), yMm: mm(1200) };
const SOMEWHERE: Unplaced = { kind: 'switch', face: 'far' };

/** Told before: a socket 600 across and 300 up on this face. */
const ADDED: [say: string, awaiting: QuestionName | null, told: Accessory[]][] = [
  ['theres also a switch on the other side 900 from the left 1200 up', 'piece.size', [SOCKET, SWITCH]],
  ['forgot a socket, 1800 from the left 300 up', 'piece.massKg', [SOCKET, { ...SOCKET, xMm: mm(1800) }]],
  ['another socket 1800 from the left 300 up', 'place.across', [SOCKET, { ...SOCKET, xMm: mm(1800) }]],
  ['socket 600 from the left 300 up', 'piece.size', [SOCKET]],
  ['the socket is at 700 not 600', 'piece.size', [{ ...SOCKET, xMm: mm(700) }]],
  ['actually the socket is 700 from the left 350 up', 'confirm', [{ ...SOCKET, xMm: mm(700), yMm: mm(350) }]],
  ['actually theres a switch 900 from the left 1200 up on the far side', 'confirm', [SOCKET, SWITCH]],
];

/** Asked where the switch on the other side is. */
const ANSWERED: [say: string, placed: Accessory[], unplaced: Unplaced[]][] = [
  ['900 from the left and 1200 up', [SOCKET, SWITCH], []],
  ['900, 1200', [SOCKET, SWITCH], []],
  ['the switch is 900 from the left, 1200 up', [SOCKET, SWITCH], []],
  ['its 1200 up', [SOCKET], [{ ...SOMEWHERE, yMm: mm(1200) }]],
  ['900 from the left', [SOCKET], [{ ...SOMEWHERE, xMm: mm(900) }]],
  [
    'the switch is 900 from the left 1200 up and theres a light on this side 1500 from the left 1900 up',
    [SOCKET, SWITCH, { kind: 'light', face: 'this', xMm: mm(1500), yMm: mm(1900) }],
    [],
  ],
];

const known = (unplaced?: Unplaced[]): JobSoFar => ({
  wall: { accessories: [SOCKET], ...(unplaced && { unplaced }) },
});

const without = (list: readonly object[] | undefined) =>
  list?.map((each) => Object.fromEntries(Object.entries(each).sort()));

describe('a fitting told later', () => {
  test.each(ADDED)(
    '"%s" while %s is open adds to the list or corrects it (invented)',
    (say, awaiting, told) => {
      const { facts } = hear(say, awaiting, { known: known(), lastAnswered: 'piece.massKg' });
      const list = facts.find(({ question }) => question === 'wall.accessories')?.value.wall?.accessories;
      expect(without(list === 'unknown' ? undefined : list) ?? [SOCKET]).toEqual(without(told));
    },
  );

  test.each(ANSWERED)('"%s" answers where the switch is (invented)', (say, placed, unplaced) => {
    const { facts } = hear(say, 'wall.accessories', { known: known([SOMEWHERE]) });
    const wall = facts.find(({ question }) => question === 'wall.accessories')?.value.wall;
    const list = wall?.accessories;
    expect(without(list === 'unknown' ? undefined : list)).toEqual(without(placed));
    expect(without(wall?.unplaced)).toEqual(without(unplaced));
  });

  test('a bare figure is how high, once only that is missing', () => {
    const { facts } = hear('1200', 'wall.accessories', { known: known([{ ...SOMEWHERE, xMm: mm(900) }]) });
    expect(without(facts[0]?.value.wall?.accessories as Accessory[])).toEqual(without([SOCKET, SWITCH]));
  });

  test.each(["don't know", 'no idea where the switch is', 'not sure'])('"%s" drops nothing', (say) => {
    const { facts, intent } = hear(say, 'wall.accessories', { known: known([SOMEWHERE]) });
    expect([facts, intent]).toEqual([[], 'dont-know']);
  });

  test.each(['nothing', 'none on either side', 'no sockets or switches on either side'])(
    '"%s" does not unsay it without being asked',
    (say) => {
      const { facts, asks } = hear(say, 'wall.accessories', { known: known() });
      expect(facts).toEqual([]);
      expect(asks.map(({ question }) => question)).toEqual(['wall.accessories']);
    },
  );

  test('a correction that may be of two is asked about', () => {
    const two: JobSoFar = { wall: { accessories: [SOCKET, { ...SOCKET, xMm: mm(1800) }] } };
    const { facts, asks } = hear('actually the socket is 700 from the left, 300 up', 'confirm', {
      known: two,
    });
    expect(facts).toEqual([]);
    expect(asks[0]?.readings).toHaveLength(3);
  });
});

const KINDS = ['socket', 'switch', 'thermostat', 'radiator', 'wall light', 'fuse box'] as const;
const fitting = fc.record({
  name: fc.constantFrom(...KINDS),
  x: fc.integer({ min: 10, max: 28 }).map((at) => at * 100),
  y: fc.integer({ min: 2, max: 18 }).map((at) => at * 100 + 50),
  form: fc.constantFrom(
    (name: string, x: number, y: number) => `${name} ${x} from the left, ${y} up`,
    (name: string, x: number, y: number) => `a ${name} ${y} up and ${x} from the left`,
    (name: string, x: number, y: number) => `${name} at ${x} along ${y} off the floor`,
    (name: string, x: number, y: number) => `one ${name} ${x}mm from left hand end ${y}mm above the floor`,
    (name: string, x: number, y: number) => `${name} (${x} from left, ${y} up)`,
  ),
});
const face = fc.constantFrom<'this' | 'far'>('this', 'far');
const joint = fc.constantFrom(', ', '; ', '. ', '\n', ' and ', '\n- ', ', and ');
const NAMED = {
  this: ['this side', 'on this side', 'here'],
  far: ['other side', 'on the far face', 'on the other side', 'next door'],
} as const;

describe('whatever is listed, in whatever order', () => {
  test('every fitting named with its place is on the list, on its own face, and none beside', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fitting, face, fc.nat(2)), { minLength: 1, maxLength: 5 }),
        joint,
        (all, between) => {
          const words = all.map(([{ name, x, y, form }, side, n]) => `${form(name, x, y)} ${NAMED[side][n]}`);
          const { facts } = hear(words.join(between), 'wall.accessories');
          const wall = facts.find(({ question }) => question === 'wall.accessories')?.value.wall;
          const list = Array.isArray(wall?.accessories) ? wall.accessories : [];
          const told = new Set(all.map(([{ name, x, y }, side]) => `${name} ${side} ${x} ${y}`));
          expect(wall?.unplaced ?? []).toEqual([]);
          expect(list.map(({ face: on, xMm, yMm }) => `${on} ${xMm} ${yMm}`)).toEqual(
            [...told].map((each) => each.replace(/^.*? (?=this|far)/, '')),
          );
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a face named before its fitting is that one, and an empty one puts nothing anywhere', () => {
    fc.assert(
      fc.property(
        fitting,
        face,
        fc.nat(2),
        fc.constantFrom('nothing', 'none', 'clear', 'empty'),
        fc.boolean(),
        joint,
        (one, side, n, empty, first, between) => {
          const other = side === 'this' ? 'far' : 'this';
          const told = `${NAMED[side][n] ?? ''} ${one.form(one.name, one.x, one.y)}`;
          const clear = first ? `${empty} ${NAMED[other][n] ?? ''}` : `${NAMED[other][n] ?? ''} ${empty}`;
          for (const said of [`${told}${between}${clear}`, `${clear}${between}${told}`]) {
            const { facts } = hear(said, 'wall.accessories');
            const wall = facts.find(({ question }) => question === 'wall.accessories')?.value.wall;
            expect([said, wall?.accessories]).toMatchObject([said, [{ face: side, xMm: one.x, yMm: one.y }]]);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
