import { mm } from '../../../../core/quantity.ts';
import { between, of, until } from './by-year.ts';
import type { Row } from './row.ts';

const BOARD = { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'bare' } } as const;
const TILED = { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'tile' } } as const;
const NOTHING_DRILLED = { kind: 'none', action: 'none', diameterMm: mm(0), depthMm: mm(0) } as const;

export const dustAndLeadRows: readonly Row[] = [
  {
    id: 'C-PB-1',
    from: '40 CFR 745.83, SA Health, Defra (read); NZ and the rest from memory',
    cases: [
      ...until('paint', 'US', 1977, 'warn'),
      ...until('paint', 'AU', 1979, 'warn'),
      ...until('paint', 'UK', 1965, 'warn'),
      ...until('paint', 'NZ', 1979, 'warn'),
      ...until('paint', 'CA', 1977, 'warn'),
      ...until('paint', 'IE', 1965, 'warn'),
      ...until('paint', 'EU', 1979, 'warn'),
      ...until('paint', 'unknown', 1979, 'warn'),
      of('paint', 'UK', 'unknown', 'warn', {}),
    ],
  },
  {
    id: 'C-PB-2',
    from: 'SA Health (read), UK 1992 from memory',
    cases: [
      ...between('paint', 'AU', 1980, 1997, 'note'),
      ...between('paint', 'UK', 1966, 1992, 'note'),
      of('paint', 'US', 1978, null, {}),
    ],
  },
  {
    id: 'C-SI-1',
    from: '29 CFR 1926.1153 Table 1 (read-secondary); the mask ours',
    cases: [
      ['brick, no extraction', 'warn', { crew: { dustExtraction: false } }],
      ['brick, nobody knows', 'warn', { crew: { dustExtraction: 'unknown' } }],
      ['brick, extraction on', null, {}],
      ['plain board, no extraction', null, { wall: BOARD, crew: { dustExtraction: false } }],
      ['tiled board, no extraction', 'warn', { wall: TILED, crew: { dustExtraction: false } }],
    ],
  },
  {
    id: 'C-SI-2',
    from: '29 CFR 1926.1153 Table 1 (read-secondary)',
    cases: [
      ['brick, extraction on', 'note', {}],
      ['brick, no extraction', null, { crew: { dustExtraction: false } }],
      ['plain board, extraction on', null, { wall: BOARD }],
    ],
  },
  {
    id: 'C-SI-4',
    from: 'Australian amendments from 1 September 2024 (read-secondary)',
    cases: [
      ['brick in AU', 'warn', {}],
      ['plain board in AU', null, { wall: BOARD }],
      ...(['NZ', 'UK', 'US', 'unknown'] as const).map(
        (country) => [`brick in ${country}`, null, { building: { country } }] as const,
      ),
    ],
  },
  {
    id: 'C-PP-1',
    from: '29 CFR 1926.102, from memory',
    cases: [
      ['anything drilled', 'note', {}],
      ['a hook over a rail', null, { fixing: { fastener: 'picture-rail-hook', bit: NOTHING_DRILLED } }],
    ],
  },
];
