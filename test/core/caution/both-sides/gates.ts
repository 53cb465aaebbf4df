import { kg } from '../../../../core/quantity.ts';
import type { Hidden } from '../../../../core/wall/wall.ts';
import type { Row } from './row.ts';

const builtRound = (...hides: Hidden[]) => ({ wall: { hides } });

const concrete = { baseMaterial: 'concrete' } as const;
const board = { baseMaterial: 'plasterboard-on-timber-studs' } as const;
const tensioned = (kind: 'flat' | 'house', said: 'no' | 'possible' | 'scanned' | 'unknown') =>
  ({ building: { kind }, wall: { ...concrete, tensioned: said } }) as const;
const shared = { separating: true } as const;

export const gatesRows: readonly Row[] = [
  {
    id: 'C-GT-1',
    from: 'scanning guidance (read-secondary)',
    cases: [
      ['concrete in a flat, unknown', 'stop', tensioned('flat', 'unknown')],
      ['concrete in a house, possible', 'stop', tensioned('house', 'possible')],
      ['concrete in a house, unknown', 'warn', tensioned('house', 'unknown')],
      ['concrete in a flat, scanned', null, tensioned('flat', 'scanned')],
      ['brick in a flat', null, { building: { kind: 'flat' } }],
    ],
  },
  {
    id: 'C-GT-2',
    from: 'NSW (read-secondary) and NZ (read) tenancy law',
    cases: [
      ['a tenant nobody gave leave', 'stop', { building: { tenure: 'tenant' } }],
      ['a tenant with a yes', null, { building: { tenure: 'tenant', consent: true } }],
      ['an owner', null, {}],
    ],
  },
  {
    id: 'C-GT-3',
    from: 'Planning (LBCA) Act 1990 s.7, from memory; 1919 ours',
    cases: [
      ['listed', 'stop', { building: { heritage: true } }],
      ['not listed', null, { building: { heritage: false } }],
      ['of 1918, nobody knows', 'warn', { building: { heritage: 'unknown', yearBuilt: 1918 } }],
      ['of 1919, nobody knows', null, { building: { heritage: 'unknown', yearBuilt: 1919 } }],
    ],
  },
  {
    id: 'C-GT-4',
    from: 'Party Wall etc. Act 1996 booklet (read-secondary)',
    cases: [
      ['a UK brick party wall', 'note', { building: { country: 'UK' }, wall: shared }],
      ['an AU one', null, { wall: shared }],
      ['a UK wall that is not shared', null, { building: { country: 'UK' }, wall: { separating: false } }],
    ],
  },
  {
    id: 'C-GT-5',
    from: 'from memory, no source; half the wall ours',
    cases: [
      ['brick 230, a hole of 114', 'warn', { wall: shared, holeMm: 114 }],
      ['brick 230, a hole of 115', 'stop', { wall: shared, holeMm: 115 }],
      ['board, into a stud', 'warn', { wall: { ...board, ...shared }, fixing: { fastener: 'stud-screw' } }],
      [
        'board, by a toggle',
        'stop',
        { wall: { ...board, ...shared }, fixing: { fastener: 'spring-toggle' } },
      ],
      [
        'board that separates nothing, by a toggle',
        null,
        { wall: board, fixing: { fastener: 'spring-toggle' } },
      ],
    ],
  },
  {
    id: 'C-GT-6',
    from: 'common property, from memory',
    cases: [
      ['a corridor of flats', 'stop', { building: { kind: 'flat' }, wall: { common: true } }],
      [
        'with a yes from who owns it',
        'note',
        { building: { kind: 'flat', consent: true }, wall: { common: true } },
      ],
      ['inside a flat', 'note', { building: { kind: 'flat' } }],
      ['a house', null, {}],
    ],
  },
  {
    id: 'C-GT-7',
    from: 'common practice',
    cases: [
      ...(['pocket-door', 'cistern', 'boiler', 'flue', 'meter'] as const).map(
        (each) => [`built round a ${each}`, 'stop', builtRound(each)] as const,
      ),
      ['built round nothing', null, builtRound()],
      ['wall heating, which is another row', null, builtRound('wall-heating')],
    ],
  },
  {
    id: 'C-GT-8',
    from: 'common practice',
    cases: [
      ['wall heating', 'stop', builtRound('wall-heating')],
      ['a steel frame', 'warn', { wall: { baseMaterial: 'plasterboard-on-steel-studs' } }],
      ['a timber frame outside', 'warn', { wall: { ...board, external: true } }],
      ['a timber frame inside', null, { wall: { ...board, external: false } }],
      ['outside, of brick', null, { wall: { external: true } }],
    ],
  },
  {
    id: 'C-GT-9',
    from: 'ours',
    cases: [
      ['50 kg', null, { piece: { massKg: kg(50) } }],
      ['50.1 kg', 'stop', { piece: { massKg: kg(50.1) } }],
      ['a public place', 'stop', { building: { kind: 'public' } }],
    ],
  },
];
