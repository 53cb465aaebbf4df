import type { Hanging } from '../../../../core/piece/piece.ts';
import { degrees, kg, mm } from '../../../../core/quantity.ts';
import { type Row, up } from './row.ts';

const cord = (hooksApart?: number): Hanging => ({
  by: 'cord',
  points: [
    { fromLeftMm: mm(100), fromTopMm: mm(240) },
    { fromRightMm: mm(100), fromTopMm: mm(240) },
  ],
  ...(hooksApart !== undefined && { hooksApartMm: mm(hooksApart) }),
});
const sawtooth: Hanging = {
  by: 'rings',
  hanger: 'sawtooth',
  points: [{ fromCentreMm: mm(0), fromTopMm: mm(20) }],
};
const onCord = (mass: number, width: number, hooksApart?: number) =>
  ({ piece: { massKg: kg(mass), widthMm: mm(width), hanging: cord(hooksApart) } }) as const;
const frameOf = (material: 'mdf' | 'oak') =>
  ({ piece: { build: { frame: { material, widthMm: mm(40), thicknessMm: mm(18) } } } }) as const;
/** The plaster 13 and the plug 50 of the reference's worked figure. */
const plugged = (hole: number) =>
  ({
    holeMm: hole,
    fixing: { plug: { diameterMm: mm(8), lengthMm: mm(50) } },
    wall: { finish: { kind: 'plaster', thicknessMm: mm(13) } },
  }) as const;

export const wallAndHangingRows: readonly Row[] = [
  {
    id: 'C-WL-1',
    from: 'ours',
    cases: [
      ['a wall nobody can tell', 'stop', { wall: { baseMaterial: 'unknown' } }],
      ['a brick wall', null, {}],
    ],
  },
  {
    id: 'C-WL-2',
    from: 'NBS M20 clause 210: plaster carries nothing (read-secondary)',
    cases: [
      ['a hole of 63 for a plug of 50 behind 13 of plaster', null, plugged(63)],
      ['a hole of 62', 'warn', plugged(62)],
    ],
  },
  {
    id: 'C-WL-3',
    from: 'common practice',
    cases: [
      ['lath and plaster', 'warn', { wall: { baseMaterial: 'lath-and-plaster' } }],
      ['brick', null, {}],
    ],
  },
  {
    id: 'C-WL-4',
    from: 'common practice; 5 kg ours',
    cases: [
      [
        '5.1 kg on dabs',
        'warn',
        { piece: { massKg: kg(5.1) }, wall: { baseMaterial: 'plasterboard-on-dabs' } },
      ],
      ['5 kg on dabs', 'note', { piece: { massKg: kg(5) }, wall: { baseMaterial: 'plasterboard-on-dabs' } }],
      ['5.1 kg on brick', null, { piece: { massKg: kg(5.1) } }],
    ],
  },
  {
    id: 'C-WL-5',
    from: 'common practice',
    cases: [
      ['a wall that crumbles', 'stop', { wall: { condition: 'poor' } }],
      ['a sound wall', null, { wall: { condition: 'sound' } }],
      ['nobody looked', null, { wall: { condition: 'unknown' } }],
    ],
  },
  {
    id: 'C-HG-1',
    from: 'a page on handling paintings (read-secondary); 10 kg and 600 mm ours',
    cases: [
      ['one hook, 10 kg, 600 wide', null, onCord(10, 600)],
      ['one hook, 10.1 kg', 'warn', onCord(10.1, 600)],
      ['one hook, 601 wide', 'warn', onCord(10, 601)],
      ['two hooks, 24 kg', null, onCord(24, 840, 300)],
    ],
  },
  {
    id: 'C-HG-2',
    from: 'statics; 30 degrees ours',
    cases: [
      [
        'a cord at 30 degrees',
        null,
        { setOut: { cord: { riseMm: mm(173.2), legAngle: degrees(30), spreadMm: mm(600) } } },
      ],
      [
        'a cord at 29.9 degrees',
        'warn',
        { setOut: { cord: { riseMm: mm(172.5), legAngle: degrees(29.9), spreadMm: mm(600) } } },
      ],
    ],
  },
  {
    id: 'C-HG-3',
    from: 'common practice',
    cases: [
      ['a sawtooth, 5 kg', null, { piece: { massKg: kg(5), hanging: sawtooth } }],
      ['a sawtooth, 5.1 kg', 'stop', { piece: { massKg: kg(5.1), hanging: sawtooth } }],
    ],
  },
  {
    id: 'C-HG-4',
    from: 'common practice',
    cases: [
      ['rings in fibreboard', 'warn', frameOf('mdf')],
      ['rings in oak', null, frameOf('oak')],
    ],
  },
  {
    id: 'C-LV-3',
    from: 'NHBC 2020 9.1.3 (read); 300 mm ours; the ceiling at 2400',
    cases: [
      ['299 under the ceiling', 'note', { at: up(1861) }],
      ['300 under the ceiling', null, { at: up(1860) }],
      ['299 under a ceiling measured level', null, { at: up(1861), wall: { ceilingFallMm: mm(0) } }],
    ],
  },
];
