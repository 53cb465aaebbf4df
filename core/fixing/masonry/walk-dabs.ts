import { practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const ON_DABS = 'plasterboard on dabs: lines 2 to 4';
const SNUG =
  'Feel first with a 6 mm hole: write down board, gap and block. Rotary till the block is known. Tighten only until it is snug and never draw the board in; pack the gap where the board gives. Stop if the bit drops again, or on cold air, foil, foam or a cable: they run free in that gap.';

const framePlug = {
  fastener: 'frame-plug',
  action: 'rotary-until-known',
  plugMm: 50,
  embedMm: 50,
  spans: true,
  usualKg: 5,
  note: SNUG,
} as const;

/** Board with air behind it over masonry: through board and gap into the block, which alone carries. */
export const OVER_A_GAP: readonly WalkRow[] = [
  { ...framePlug, holeMm: 8, shank: 14, cap: practice(7, ON_DABS) },
  { ...framePlug, holeMm: 10, shank: 'coach-8', cap: practice(10, ON_DABS) },
  { ...framePlug, holeMm: 10, shank: 'coach-8', cap: practice(10, ON_DABS), onBattenWholeKg: 30 },
  {
    fastener: 'resin-stud',
    action: 'rotary-until-known',
    shank: 'stud-M10',
    holeMm: 16,
    embedMm: 80,
    sleeve: true,
    cap: practice(15, ON_DABS),
    usualKg: 12,
    note: `Resin in the block, in a mesh sleeve 16 x 80 where it is hollow, and a rigid spacer tube across the gap, so that nut and washer clamp against the tube and not the board. ${SNUG}`,
  },
];
