import { declaredCap, lowerCap, practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const IN_AERATED = 'aerated concrete: lines 1 to 4';
const HAND_TIGHT =
  'Rotary only, no waggle. Screw slowly by hand, stop at the first firm resistance, and never tighten again a plug that has turned. No ordinary short plug.';

const made = { fastener: 'aerated-plug', action: 'rotary', note: HAND_TIGHT } as const;
const PLUG_8 = {
  ...made,
  holeMm: 8,
  plugMm: 60,
  embedMm: 60,
  cap: lowerCap(practice(8, IN_AERATED), declaredCap(8, 'cored')),
  usualKg: 5,
} as const;
const PLUG_10 = {
  ...made,
  holeMm: 10,
  plugMm: 80,
  embedMm: 80,
  cap: lowerCap(practice(10, IN_AERATED), declaredCap(10, 'cored')),
  usualKg: 8,
} as const;

/**
 * Aerated concrete, block or panel: a plug made for it, at least 50 of the screw in the block, then resin, then
 * more points on a batten. Its coring is no matter: the unit is cast solid, and a panel's wires are met by feel.
 */
export const AERATED: readonly WalkRow[] = [
  // A keyhole takes a pan or round head only, and those are stocked short: the short end of the line.
  { ...PLUG_8, plugMm: 50, embedMm: 50, shank: 10, only: 'keyholes' },
  { ...PLUG_8, shank: 10 },
  { ...PLUG_8, shank: 12 },
  { ...PLUG_8, shank: 14 },
  { ...PLUG_10, shank: 14 },
  { ...PLUG_10, shank: 'coach-8' },
  {
    fastener: 'resin-stud',
    action: 'rotary',
    shank: 'stud-M8',
    holeMm: 10,
    embedMm: 100,
    cap: practice(15, IN_AERATED),
    usualKg: 12,
    note: 'Undercut or sleeve as the packet for aerated block says; vacuum the hole, no brush that bells it. No load before it has cured. Cut the stud to length; nut and washers.',
  },
  { ...PLUG_8, shank: 14, onBattenWholeKg: 40 },
  { ...PLUG_10, shank: 14, onBattenWholeKg: 40 },
];
