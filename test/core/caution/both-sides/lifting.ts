import { kg, mm } from '../../../../core/quantity.ts';
import { type Row, up } from './row.ts';

const alone = (mass: number, hanger: number, people = 1) =>
  ({ piece: { massKg: kg(mass) }, crew: { people }, at: up(hanger) }) as const;
/** Hands a third of the way up are at 1500: 23 x 25/40 x (1 - 0.003 x 75) x (0.82 + 4.5/75) = 9.80 kg. */
const HANDS_AT_1500 = up(1500 - 1120 / 3 + 880);
const mass = (kilos: number, crew: { people?: number; lifter?: boolean | 'unknown' } = {}) =>
  ({ piece: { massKg: kg(kilos) }, crew }) as const;

export const liftingRows: readonly Row[] = [
  {
    id: 'C-MH-1',
    from: 'NIOSH 94-110 (read-secondary), as the reference works it: 9.80 kg',
    cases: [
      ['9.8 kg with hands at 1500', null, { ...mass(9.8), at: HANDS_AT_1500 }],
      ['9.9 kg with hands at 1500', 'warn', { ...mass(9.9), at: HANDS_AT_1500 }],
    ],
  },
  {
    id: 'C-MH-2',
    from: 'HSE L23: two thirds of 10 + 10 above the shoulder, of 20 + 20 below it (read-secondary)',
    cases: [
      ['13.3 kg above the shoulder', null, { ...mass(13.3), at: HANDS_AT_1500 }],
      ['13.4 kg above the shoulder', 'warn', { ...mass(13.4), at: HANDS_AT_1500 }],
      ['26.6 kg below it', null, mass(26.6)],
      ['26.7 kg below it', 'warn', mass(26.7)],
      ['26.7 kg, two people and no lifter', 'stop', mass(26.7, { people: 2, lifter: false })],
      ['26.7 kg, two people, nobody knows of a lifter', 'warn', mass(26.7, { people: 2, lifter: 'unknown' })],
      ['26.7 kg, three people', 'warn', mass(26.7, { people: 3, lifter: false })],
      ['26.6 kg, two people and no lifter', null, mass(26.6, { people: 2, lifter: false })],
    ],
  },
  {
    id: 'C-MH-3',
    from: 'HSE INDG402, more than 10 kg (from memory); a ladder above 2000 ours',
    cases: [
      ['10.1 kg at 2001, alone', 'stop', alone(10.1, 2001)],
      ['10 kg at 2001, alone', null, alone(10, 2001)],
      ['10.1 kg at 2000, alone', null, alone(10.1, 2000)],
      ['10.1 kg at 2001, two', null, alone(10.1, 2001, 2)],
    ],
  },
  {
    id: 'C-MH-4',
    from: 'common practice',
    cases: [
      ['glass', 'note', {}],
      ['none', null, { piece: { kind: 'canvas', glass: 'none', widthMm: mm(840) } }],
    ],
  },
];
