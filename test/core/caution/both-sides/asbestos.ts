import { between, of, since, until } from './by-year.ts';
import type { Row } from './row.ts';

const SHEET = { baseMaterial: 'fibre-cement-on-studs', finish: { kind: 'bare' } } as const;
const COATING = { coating: 'textured' } as const;
const JOINTS = { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'bare' } } as const;
const TILED = { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'tile' } } as const;

export const asbestosRows: readonly Row[] = [
  {
    id: 'C-AB-1',
    from: 'AU NT Government and UK HSE A0 (read), NZ and US (read-secondary), other lines from memory',
    cases: [
      ...until('a sheet', 'AU', 1990, 'stop', SHEET),
      ...until('a sheet', 'UK', 1999, 'stop', SHEET),
      ...until('a sheet', 'NZ', 1999, 'stop', SHEET),
      ...until('a sheet', 'US', 1990, 'stop', SHEET),
      ...until('a sheet', 'IE', 1999, 'stop', SHEET),
      ...until('a sheet', 'EU', 2004, 'stop', SHEET),
      ...until('a sheet', 'CA', 1990, 'stop', SHEET),
      ...until('a sheet', 'other', 2003, 'stop', SHEET),
      ...until('a sheet', 'unknown', 2003, 'stop', SHEET),
      ...until('a textured coating', 'AU', 1990, 'stop', COATING),
      ...until('a textured coating', 'UK', 1999, 'stop', COATING),
      ...until('a textured coating', 'NZ', 1999, 'stop', COATING),
      ...until('a textured coating', 'US', 1980, 'stop', COATING),
      ...until('filled joints', 'AU', 1990, 'stop', JOINTS),
      ...until('filled joints', 'US', 1980, 'stop', JOINTS),
      ...until('filled joints', 'unknown', 1990, 'stop', JOINTS),
      ...until('old tiles on a frame', 'UK', 1999, 'stop', TILED),
      of('a sheet', 'AU', 'unknown', 'stop', SHEET),
      of('a textured coating', 'UK', 'unknown', 'stop', COATING),
      of('filled joints', 'AU', 'unknown', null, JOINTS),
      of('plain brick', 'UK', 1965, null, {}),
      of('a sheet found clear by a laboratory', 'AU', 1974, null, { ...SHEET, asbestos: 'tested-clear' }),
    ],
  },
  {
    id: 'C-AB-2',
    from: 'NT Government, ban at the end of 2003 (read); ours',
    cases: [...between('a sheet', 'AU', 1991, 2003, 'stop', SHEET), of('a sheet', 'NZ', 2001, null, SHEET)],
  },
  {
    id: 'C-AB-3',
    from: 'ours',
    cases: [
      ...between('a textured coating', 'AU', 1991, 2003, 'warn', COATING),
      ...between('a textured coating', 'US', 1981, 1990, 'warn', COATING),
      ...between('filled joints', 'AU', 1991, 2003, 'warn', JOINTS),
      ...between('filled joints', 'US', 1981, 1990, 'warn', JOINTS),
      ...until('filled joints, which no line there names', 'UK', 1999, 'warn', JOINTS),
      of('tiles on a frame', 'AU', 'unknown', 'warn', TILED),
    ],
  },
  {
    id: 'C-AB-4',
    from: 'NT Government (read)',
    cases: [
      ...since('a sheet', 'AU', 2004, 'note', SHEET),
      ...since('a textured coating', 'UK', 2000, 'note', COATING),
      ...since('a textured coating', 'US', 1991, 'note', COATING),
    ],
  },
];
