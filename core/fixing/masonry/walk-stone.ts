import { declaredCap, lowerCap, practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const IN_STONE = 'natural stone, soft: lines 2 to 4';
const IN_A_STONE =
  'In the middle of a stone bigger than a hand, never in a lime joint or near an arris. Rotary, with a steady feed and one dust colour to the full depth; if the bit drops after 100 to 150 mm the core is loose: go no further.';

const plug = { fastener: 'plug-and-screw', action: 'rotary', note: IN_A_STONE } as const;
const PLUG_8 = {
  ...plug,
  holeMm: 8,
  plugMm: 60,
  embedMm: 60,
  cap: lowerCap(practice(8, IN_STONE), declaredCap(8, 'solid')),
  usualKg: 6,
} as const;
const PLUG_10 = {
  ...plug,
  holeMm: 10,
  plugMm: 80,
  embedMm: 80,
  cap: lowerCap(practice(10, IN_STONE), declaredCap(10, 'solid')),
  usualKg: 10,
} as const;

const resin = (holeMm: number, note: string, sleeve?: true): WalkRow => ({
  fastener: 'resin-stud',
  action: 'rotary',
  shank: 'stud-M8',
  holeMm,
  embedMm: 100,
  cap: practice(12, IN_STONE),
  usualKg: 12,
  ...(sleeve && { sleeve }),
  note: `${note} ${IN_A_STONE}`,
});

const plugs: readonly WalkRow[] = [
  { ...PLUG_8, shank: 10, only: 'keyholes' },
  { ...PLUG_8, shank: 12 },
  { ...PLUG_8, shank: 14 },
  { ...PLUG_10, shank: 14 },
  { ...PLUG_10, shank: 'coach-8' },
];

/** Natural stone. A job does not say hard or soft, so the caps are those of soft stone. */
export const STONE: readonly WalkRow[] = [
  ...plugs,
  resin(
    10,
    'Brush and vacuum the hole three times; no load before the packet’s cure. Cut the stud to length; nut and washers.',
  ),
];

/** Rubble and stone that is not solid all through: the stud goes in a mesh sleeve, or the resin runs away. */
export const RUBBLE: readonly WalkRow[] = [
  ...plugs,
  resin(16, 'In a mesh sleeve 16 x 100, filled from the back. No load before it has cured.', true),
];
