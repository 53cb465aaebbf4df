import { mm } from '../../../../core/quantity.ts';
import type { Accessory } from '../../../../core/wall/wall.ts';
import { across, type Row, up } from './row.ts';

/** Its plate, 146 wide by our choice, ends 73 to the right: at 1098. */
const socket: Accessory = { kind: 'socket', face: 'this', xMm: mm(1025), yMm: mm(300) };
/** As the far side's tape reads it: 2700 - 1675 = 1025 on this side. */
const farSocket: Accessory = { ...socket, face: 'far', xMm: mm(1675) };
/** 100 wide and 75 more: its strip ends at 500 + 50 + 75 = 625. */
const basin: Accessory = { kind: 'basin', face: 'this', xMm: mm(500), yMm: mm(850), widthMm: mm(100) };
const withSocket = { accessories: [socket] };
const studs = { baseMaterial: 'plasterboard-on-timber-studs' } as const;

export const servicesRows: readonly Row[] = [
  {
    id: 'C-SV-1',
    from: 'BS 7671 522.6.202 (read-secondary), AS/NZS 3000 3.9.4.3 (from memory)',
    cases: [
      ['on the edge of the plate’s strip', 'stop', { at: across(1098), wall: withSocket }],
      ['1 mm past the strip', null, { at: across(1099), wall: withSocket }],
      ['level with the plate’s upper edge, 300 + 43', 'stop', { at: up(343), wall: withSocket }],
      ['1 mm above that', null, { at: [[1400, 344]], wall: withSocket }],
      ['150 from the corner', 'stop', { at: across(150) }],
      ['151 from the corner', null, { at: across(151) }],
      ['150 from an open end', null, { at: across(150), wall: { ends: { left: 'open' } } }],
      ['150 under the ceiling', 'stop', { at: up(2250) }],
      ['151 under the ceiling', null, { at: up(2249) }],
      ...(['UK', 'NZ', 'IE', 'EU', 'other', 'unknown'] as const).map(
        (country) =>
          [`150 under the ceiling in ${country}`, 'stop', { at: up(2250), building: { country } }] as const,
      ),
      ...(['US', 'CA'] as const).map(
        (country) =>
          [`150 under the ceiling in ${country}`, null, { at: up(2250), building: { country } }] as const,
      ),
      ['20 above the floor, which has no band', null, { at: up(20) }],
      [
        'behind a far socket in a wall of 100',
        'stop',
        { at: across(1025), wall: { accessories: [farSocket], thicknessMm: mm(100) } },
      ],
      [
        'behind a far socket in a wall of 101',
        null,
        { at: across(1025), wall: { accessories: [farSocket], thicknessMm: mm(101) } },
      ],
    ],
  },
  {
    id: 'C-SV-2',
    from: 'margins of 50 and 75 and the bit’s radius of 4, ours',
    cases: [
      ['54 clear of the strip in Australia', 'warn', { at: across(1152), wall: withSocket }],
      ['55 clear of the strip in Australia', null, { at: across(1153), wall: withSocket }],
      ...(['US', 'CA', 'unknown'] as const).flatMap(
        (country) =>
          [
            [`79 clear in ${country}`, 'warn', { at: across(1177), wall: withSocket, building: { country } }],
            [`80 clear in ${country}`, null, { at: across(1178), wall: withSocket, building: { country } }],
          ] as const,
      ),
    ],
  },
  {
    id: 'C-SV-3',
    from: 'BS 7671 522.6.202; NEC 300.4: board + 31.75 (both read-secondary)',
    cases: [
      ['a hole of 50', null, { holeMm: 50 }],
      ['a hole of 51', 'warn', { holeMm: 51 }],
      [
        'US half-inch board, 44.45',
        null,
        { holeMm: 44.45, building: { country: 'US' }, wall: { ...studs, boardMm: mm(12.7) } },
      ],
      [
        'US half-inch board, 44.5',
        'warn',
        { holeMm: 44.5, building: { country: 'US' }, wall: { ...studs, boardMm: mm(12.7) } },
      ],
      [
        'US board on steel studs, 44.5',
        'warn',
        {
          holeMm: 44.5,
          building: { country: 'US' },
          wall: { baseMaterial: 'plasterboard-on-steel-studs', boardMm: mm(12.7) },
        },
      ],
      [
        'two US boards of 15.9, 51: more than 50 anywhere',
        'warn',
        { holeMm: 51, building: { country: 'US' }, wall: { ...studs, boardMm: mm(15.9), boardLayers: 2 } },
      ],
      [
        'UK board, 44.5',
        null,
        { holeMm: 44.5, building: { country: 'UK' }, wall: { ...studs, boardMm: mm(12.5) } },
      ],
    ],
  },
  {
    id: 'C-SV-4',
    from: 'BS 7671 522.6.202(i), read-secondary; ours',
    cases: [
      ['neither face looked at', 'stop', { wall: { accessories: 'unknown' } }],
      ['both faces looked at', null, {}],
      ['a far side not looked at, 100 thick', 'stop', { wall: { farSide: 'unknown', thicknessMm: mm(100) } }],
      ['a far side not looked at, 101 thick', null, { wall: { farSide: 'unknown', thicknessMm: mm(101) } }],
      ['a switch somewhere', 'stop', { wall: { unplaced: [{ kind: 'switch' }] } }],
    ],
  },
  {
    id: 'C-SV-6',
    from: 'one fixture wide and 75 each side, ours',
    cases: [
      ['on the edge of a basin’s strip', 'stop', { at: across(625), wall: { accessories: [basin] } }],
      ['1 mm past it', null, { at: across(626), wall: { accessories: [basin] } }],
      ['in no line with it', null, { wall: { accessories: [basin] } }],
    ],
  },
  {
    id: 'C-SV-7',
    from: '15th edition of 1981 (read-secondary); US by NEC 300.4(D) exception 2',
    cases: [
      ['wired in 1980', 'warn', { building: { country: 'UK', yearBuilt: 1980 } }],
      ['wired in 1981', null, { building: { country: 'UK', yearBuilt: 1981 } }],
      ['of 1900, rewired in 1981', null, { building: { country: 'UK', yearBuilt: 1900, rewiredYear: 1981 } }],
      [
        'of 1900, rewired in 1980',
        'warn',
        { building: { country: 'UK', yearBuilt: 1900, rewiredYear: 1980 } },
      ],
      ['of unknown year', 'warn', { building: { country: 'UK', yearBuilt: 'unknown' } }],
      ...(['US', 'CA', 'unknown'] as const).map(
        (country) => [`of 2015 in ${country}`, 'warn', { building: { country, yearBuilt: 2015 } }] as const,
      ),
      ...(['AU', 'NZ', 'IE', 'EU', 'other'] as const).map(
        (country) => [`of 2015 in ${country}`, null, { building: { country, yearBuilt: 2015 } }] as const,
      ),
    ],
  },
  {
    id: 'C-SV-8',
    from: 'national law, from memory',
    cases: [
      ['it needs mains', 'stop', { piece: { lit: true } }],
      ['it needs none', null, { piece: { lit: false } }],
      ['nobody knows', null, { piece: { lit: 'unknown' } }],
    ],
  },
];
