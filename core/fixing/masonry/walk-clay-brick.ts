import { declaredCap, lowerCap, practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const IN_SOLID = 'clay brick, solid: lines 2 to 6';
const CAP_6 = lowerCap(practice(6, IN_SOLID), declaredCap(6, 'solid'));
const CAP_8 = lowerCap(practice(15, IN_SOLID), declaredCap(8, 'solid'));
const CAP_10 = lowerCap(practice(20, IN_SOLID), declaredCap(10, 'solid'));

const solid = { fastener: 'plug-and-screw', action: 'hammer-after-finish' } as const;
const PLUG_6 = { ...solid, holeMm: 6, plugMm: 30, embedMm: 30, cap: CAP_6, usualKg: 4 } as const;
const PLUG_8 = { ...solid, holeMm: 8, plugMm: 50, embedMm: 50, cap: CAP_8, usualKg: 12 } as const;
const PLUG_10 = { ...solid, holeMm: 10, plugMm: 60, embedMm: 60, cap: CAP_10, usualKg: 18 } as const;

/** Clay brick, hard all through: lines 2 to 6 of the trade's walk. */
export const SOLID_BRICK: readonly WalkRow[] = [
  { ...PLUG_6, shank: 10 },
  { ...PLUG_8, shank: 10, only: 'keyholes' },
  { ...PLUG_8, shank: 12 },
  { ...PLUG_8, shank: 14 },
  { ...PLUG_10, shank: 14 },
  { ...PLUG_10, shank: 'coach-8' },
  { ...PLUG_8, shank: 14, onBattenWholeKg: 50 },
  {
    fastener: 'resin-stud',
    action: 'hammer-after-finish',
    shank: 'stud-M8',
    holeMm: 10,
    embedMm: 80,
    cap: practice(30, IN_SOLID),
    usualKg: 25,
    note: 'Brush and vacuum the hole three times; no load before the packet’s cure. Cut the stud to length; nut and washers.',
  },
];

const IN_CORED = 'clay brick, perforated: lines 1 to 4';
const cored = { fastener: 'hollow-unit-plug' } as const;
const LONG_8 = {
  ...cored,
  holeMm: 8,
  plugMm: 60,
  embedMm: 60,
  cap: lowerCap(practice(10, IN_CORED), declaredCap(8, 'cored')),
  usualKg: 7,
} as const;
const LONG_10 = {
  ...cored,
  holeMm: 10,
  plugMm: 80,
  embedMm: 80,
  cap: lowerCap(practice(10, IN_CORED), declaredCap(10, 'cored')),
  usualKg: 7,
} as const;
/** The short end of the same line, for a wall that 80 would go too far through. */
const SHORT_10 = { ...LONG_10, plugMm: 60, embedMm: 60 } as const;
const HAND_TIGHT = 'Tighten by hand until it bites, no further. Two or more sudden drops, or cold air: stop.';

const coredRows = (action: WalkRow['action'], sleeveMm: number): readonly WalkRow[] => [
  {
    fastener: 'plug-and-screw',
    action,
    shank: 10,
    holeMm: 6,
    plugMm: 40,
    embedMm: 40,
    cap: lowerCap(practice(5, IN_CORED), declaredCap(6, 'cored')),
    usualKg: 3,
    note: `A plug for all materials, that knots behind a web; never a short rigid one. ${HAND_TIGHT}`,
  },
  { ...LONG_8, action, shank: 10, only: 'keyholes', note: HAND_TIGHT },
  { ...LONG_8, action, shank: 12, note: HAND_TIGHT },
  { ...LONG_8, action, shank: 14, note: HAND_TIGHT },
  { ...LONG_10, action, shank: 14, note: HAND_TIGHT },
  { ...SHORT_10, action, shank: 14, note: HAND_TIGHT },
  {
    fastener: 'resin-stud',
    action,
    shank: 'stud-M8',
    holeMm: 16,
    embedMm: sleeveMm,
    sleeve: true,
    cap: practice(20, IN_CORED),
    usualKg: 15,
    note: `In a mesh sleeve 16 x ${sleeveMm}, filled from the back; the packet must be for this unit. No load before it has cured.`,
  },
  { ...LONG_8, action, shank: 14, onBattenWholeKg: 40, note: HAND_TIGHT },
];

/** Clay brick with holes, cores or frogs: rotary only. Its sleeve is the shortest of line 3, which a brick of 110 takes. */
export const PERFORATED_BRICK = coredRows('rotary', 80);
/**
 * Coring unknown: what holds in either, drilled rotary as if perforated until each hole says it is solid. Its
 * sleeve is longer, since nobody knows where the webs are; in a wall too thin for that, a plug that each hole
 * has to earn comes before a hole of 16 mm nearly through.
 */
export const UNKNOWN_BRICK = coredRows('rotary-until-known', 85);
