import { kg, mm } from '../../../../core/quantity.ts';
import type { Accessory } from '../../../../core/wall/wall.ts';
import { bottomAt, type Row, up } from './row.ts';

const canvas = (mass: number) => ({ kind: 'canvas', glass: 'none', massKg: kg(mass) }) as const;
const plain = { glass: 'plain' } as const;
const bathroom = { wet: 'bathroom' } as const;
/** The piece begins at 930: a door 800 wide whose middle is at 230 ends 300 from it. */
const doorAt = (x: number) => {
  const door: Accessory = { kind: 'door', face: 'this', xMm: mm(x), yMm: mm(1000), widthMm: mm(800) };
  return { accessories: [door] };
};
const fire = (opening: number, depth: number) =>
  ({ place: { below: 'fireplace', openingTopMm: mm(opening) }, piece: { depthMm: mm(depth) } }) as const;

export const placeRows: readonly Row[] = [
  {
    id: 'C-GL-1',
    from: 'AD K 2013, by analogy (read-secondary)',
    cases: [
      ['bottom at 799', 'warn', { piece: plain, at: bottomAt(799) }],
      ['bottom at 800', null, { piece: plain, at: bottomAt(800) }],
      ['bottom at 1499, a door 300 off', 'warn', { piece: plain, at: bottomAt(1499), wall: doorAt(230) }],
      ['bottom at 1499, a door 301 off', null, { piece: plain, at: bottomAt(1499), wall: doorAt(229) }],
      ['bottom at 1500, a door 300 off', null, { piece: plain, at: bottomAt(1500), wall: doorAt(230) }],
      ['safety glass at 100', null, { at: bottomAt(100) }],
    ],
  },
  {
    id: 'C-GL-2',
    from: 'AS 1288 (read-secondary)',
    cases: [
      [
        'plain glass in an AU bathroom, bottom at 1999',
        'stop',
        { piece: plain, wall: bathroom, at: bottomAt(1999) },
      ],
      [
        'plain glass in an AU bathroom, bottom at 2000',
        null,
        { piece: plain, wall: bathroom, at: bottomAt(2000) },
      ],
      ['safety glass', null, { wall: bathroom }],
      ['glass nobody knows', 'warn', { piece: { glass: 'unknown' }, wall: bathroom }],
      [
        'over a basin, which a vanity may be',
        'warn',
        { piece: plain, wall: bathroom, place: { below: 'basin' } },
      ],
      [
        'over a basin, room unknown',
        'warn',
        { piece: plain, wall: { wet: 'unknown' }, place: { below: 'basin' } },
      ],
      ['in NZ', null, { building: { country: 'NZ' }, piece: plain, wall: bathroom }],
      ['in no bathroom', null, { piece: plain }],
    ],
  },
  {
    id: 'C-GL-3',
    from: 'common practice; 10 kg ours',
    cases: [
      ['plain glass of 10 kg', null, { piece: { ...plain, massKg: kg(10) } }],
      ['plain glass of 10.1 kg', 'note', { piece: { ...plain, massKg: kg(10.1) } }],
      ['acrylic of 24 kg', null, { piece: { glass: 'acrylic' } }],
    ],
  },
  {
    id: 'C-BZ-1',
    from: 'BS 7671 701, AS/NZS 3000 6.2 (read-secondary)',
    cases: [
      ['lit, in a bathroom', 'stop', { piece: { lit: true }, wall: bathroom }],
      ['lit, in no bathroom', null, { piece: { lit: true } }],
      ['not lit, in a bathroom', null, { piece: { lit: false }, wall: bathroom }],
    ],
  },
  {
    id: 'C-WA-1',
    from: 'ABCB 10.2.2 (read-secondary)',
    cases: [
      ['a shower wall at 1800', 'stop', { wall: { wet: 'shower' }, at: up(1800) }],
      ['a shower wall at 1801', 'warn', { wall: { wet: 'shower' }, at: up(1801) }],
      ['a dry wall at 1800', null, { at: up(1800) }],
    ],
  },
  {
    id: 'C-FP-1',
    from: 'IRC R1001.11 exc. 4 (read-secondary, 1/8 from memory), by analogy; bottom edge at 800',
    cases: [
      ['6 in above, 10 deep', null, fire(647.6, 10)],
      ['under 6 in above, 10 deep', 'stop', fire(648, 10)],
      ['240 above, 30 deep: an eighth', null, fire(560, 30)],
      ['239 above, 30 deep', 'stop', fire(561, 30)],
      ['12 in above, 60 deep', null, fire(495.2, 60)],
      ['under 12 in above, 60 deep', 'stop', fire(495.3, 60)],
      ['a fire whose opening nobody measured', null, { place: { below: 'fireplace' } }],
    ],
  },
  {
    id: 'C-FP-2',
    from: 'ours',
    cases: [
      ['over a fire', 'warn', { place: { below: 'fireplace' } }],
      ['over one not used', 'note', { place: { below: 'fireplace-unused' } }],
      ['over nothing', null, {}],
    ],
  },
  {
    id: 'C-FL-1',
    from: 'FEMA 2008 (read); 5 kg ours',
    cases: [
      ['5 kg over a sofa', null, { piece: canvas(5), place: { below: 'sofa' } }],
      ['5.1 kg over a sofa', 'warn', { piece: canvas(5.1), place: { below: 'sofa' } }],
      ['glass of 2 kg over a bed', 'warn', { piece: { ...plain, massKg: kg(2) }, place: { below: 'bed' } }],
      ['24 kg over nothing', null, {}],
    ],
  },
  {
    id: 'C-FL-2',
    from: 'ours',
    cases: [
      ['over a cot', 'stop', { place: { below: 'cot' } }],
      ['over a bed', null, { place: { below: 'bed' } }],
      ['nobody knows over what', null, { place: { below: 'unknown' } }],
    ],
  },
  {
    id: 'C-EQ-1',
    from: 'FEMA and the Earthquake Country Alliance (read)',
    cases: [
      ['where the ground moves', 'warn', { building: { seismic: true } }],
      ['where nobody said so', null, {}],
      ['in NZ', 'warn', { building: { country: 'NZ' } }],
      ['in NZ, told not', null, { building: { country: 'NZ', seismic: false } }],
    ],
  },
];
