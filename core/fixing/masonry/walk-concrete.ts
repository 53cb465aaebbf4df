import { declaredCap, lowerCap, practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const IN_CONCRETE = 'concrete: lines 1 to 4';
const plug = { fastener: 'plug-and-screw', action: 'hammer-after-finish' } as const;
const PLUG_6 = {
  ...plug,
  holeMm: 6,
  plugMm: 30,
  embedMm: 30,
  cap: lowerCap(practice(10, IN_CONCRETE), declaredCap(6, 'solid')),
  usualKg: 6,
} as const;
const PLUG_8 = {
  ...plug,
  holeMm: 8,
  plugMm: 50,
  embedMm: 50,
  cap: lowerCap(practice(20, IN_CONCRETE), declaredCap(8, 'solid')),
  usualKg: 15,
} as const;

/** Concrete, once tensioned steel is ruled out: lines 1 to 4 of the trade's walk. */
export const CONCRETE: readonly WalkRow[] = [
  { ...PLUG_6, shank: 10 },
  { ...PLUG_8, shank: 10, only: 'keyholes' },
  { ...PLUG_8, shank: 12 },
  { ...PLUG_8, shank: 14 },
  {
    fastener: 'concrete-screw',
    action: 'hammer-after-finish',
    shank: 'concrete-screw-6',
    holeMm: 5,
    embedMm: 40,
    cap: practice(20, IN_CONCRETE),
    usualKg: 15,
    note: 'Bit as on the packet, vacuum the hole, drive once: never twice in one hole.',
  },
  { ...PLUG_8, shank: 14, onBattenWholeKg: 50 },
  {
    fastener: 'resin-stud',
    action: 'hammer-after-finish',
    shank: 'stud-M8',
    holeMm: 10,
    embedMm: 80,
    cap: practice(30, IN_CONCRETE),
    usualKg: 30,
    note: 'Brush and vacuum the hole three times; no load before the packet’s cure. Cut the stud to length; nut and washers.',
  },
];
