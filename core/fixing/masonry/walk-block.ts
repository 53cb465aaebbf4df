import { declaredCap, lowerCap, practice } from '../proof/caps.ts';
import type { WalkRow } from './walk-row.ts';

const IN_SOLID = 'concrete block, solid, light aggregate: lines 1 to 4';
const plug = { fastener: 'plug-and-screw', action: 'rotary' } as const;
const PLUG_6 = {
  ...plug,
  holeMm: 6,
  plugMm: 30,
  embedMm: 30,
  cap: lowerCap(practice(4, IN_SOLID), declaredCap(6, 'solid')),
  usualKg: 4,
} as const;
const PLUG_8 = {
  ...plug,
  holeMm: 8,
  plugMm: 50,
  embedMm: 50,
  cap: lowerCap(practice(8, IN_SOLID), declaredCap(8, 'solid')),
  usualKg: 10,
} as const;
const PLUG_10 = {
  ...plug,
  holeMm: 10,
  plugMm: 80,
  embedMm: 80,
  cap: lowerCap(practice(12, IN_SOLID), declaredCap(10, 'solid')),
  usualKg: 15,
} as const;

/**
 * Concrete block, solid. A job does not say dense or light, so the caps are those of light aggregate and
 * the drill stays on rotary: clinker empties under a hammer.
 */
export const SOLID_BLOCK: readonly WalkRow[] = [
  { ...PLUG_6, shank: 10 },
  { ...PLUG_8, shank: 10, only: 'keyholes' },
  { ...PLUG_8, shank: 12 },
  { ...PLUG_8, shank: 14 },
  { ...PLUG_10, shank: 14 },
  { ...PLUG_10, shank: 'coach-8' },
  { ...PLUG_8, shank: 14, onBattenWholeKg: 50 },
  {
    fastener: 'resin-stud',
    action: 'rotary',
    shank: 'stud-M8',
    holeMm: 10,
    embedMm: 80,
    cap: practice(15, IN_SOLID),
    usualKg: 25,
    note: 'Brush and vacuum the hole three times; no load before the packet’s cure. Cut the stud to length; nut and washers.',
  },
];

const IN_HOLLOW = 'concrete block, hollow: lines 1, 3 and 4';
const hollowRows = (
  action: WalkRow['action'],
  toggles: readonly WalkRow[],
  sleeveKg: number,
): readonly WalkRow[] => {
  const knotting = {
    fastener: 'hollow-unit-plug',
    action,
    holeMm: 8,
    plugMm: 50,
    embedMm: 50,
    cap: lowerCap(practice(8, IN_HOLLOW), declaredCap(8, 'cored')),
    usualKg: 6,
    note: 'A plug that knots behind a face shell of 25 or more. Hand-tight; no hammer on a face shell.',
  } as const;
  return [
    { ...knotting, shank: 10 },
    { ...knotting, shank: 12 },
    { ...knotting, shank: 14 },
    ...toggles,
    {
      fastener: 'resin-stud',
      action,
      shank: 'stud-M8',
      holeMm: 16,
      embedMm: 80,
      sleeve: true,
      cap: practice(sleeveKg, IN_HOLLOW),
      usualKg: sleeveKg,
      note: 'In a mesh sleeve 16 x 80, filled from the back; the packet must be for this unit. No load before it has cured.',
    },
    { ...knotting, shank: 14, onBattenWholeKg: 40 },
  ];
};

const TOGGLE: WalkRow = {
  fastener: 'spring-toggle',
  action: 'rotary',
  shank: 'bolt-M5',
  holeMm: 16,
  embedMm: 25,
  voidMm: 70,
  cap: practice(15, IN_HOLLOW),
  usualKg: 10,
  note: 'Hanger and plate washer on the bolt first; the washer must cover the hole. Not where the cell is filled.',
};

/** Concrete block with cells. */
export const HOLLOW_BLOCK = hollowRows('rotary', [TOGGLE], 20);
/** Cells unknown: what holds in either. */
export const UNKNOWN_BLOCK = hollowRows('rotary-until-known', [], 15);
