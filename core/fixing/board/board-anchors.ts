import { type Kilograms, kg } from '../../quantity.ts';
import { type Sourced, sourced } from '../../sources.ts';
import type { Fastener } from '../fastener.ts';
import type { Bit } from '../fixing-shape.ts';
import type { Shank } from '../masonry/walk-row.ts';

/** A fixing that holds in the board alone. No public document rates any of them. */
export type BoardAnchor = {
  readonly fastener: Fastener;
  readonly name: string;
  readonly shank: Shank;
  readonly holeMm: number;
  readonly action: Bit['action'];
  readonly usualKg: number;
  readonly cap: Sourced<Kilograms>;
  /** In a sheet of 10 mm or so. */
  readonly capThin: Sourced<Kilograms>;
  /** In two sheets; none where it is for one sheet only. */
  readonly capTwo?: Sourced<Kilograms>;
  readonly voidMm: number;
  readonly toggle: boolean;
  /** The sheets it is for, where they are not plasterboard's. */
  readonly sheet?: { readonly leastMm: number; readonly mostMm: number };
  /** Not over a bed or a seat. */
  readonly notOverPeople?: true;
  readonly note: string;
};

const AT = 'board anchors, 13 mm board, and in 10 mm board';
const cap = (value: number): Sourced<Kilograms> =>
  sourced(kg(value), 'common-practice', AT, 'common-practice');

/** Its bar goes in sideways and is drawn up by straps. */
export const STRAP_TOGGLE: BoardAnchor = {
  fastener: 'strap-toggle',
  name: 'strap toggle, M5',
  shank: 'bolt-M5',
  holeMm: 13,
  action: 'rotary',
  usualKg: 10,
  cap: cap(15),
  capThin: cap(10),
  capTwo: cap(20),
  voidMm: 50,
  toggle: true,
  note: 'Bar through sideways, collar tight, straps snapped off; a washer under the hanger.',
};

/** Two sprung wings on a bolt. */
export const SPRING_TOGGLE: BoardAnchor = {
  fastener: 'spring-toggle',
  name: 'spring toggle, M5',
  shank: 'bolt-M5',
  holeMm: 16,
  action: 'rotary',
  usualKg: 10,
  cap: cap(15),
  capThin: cap(10),
  capTwo: cap(20),
  voidMm: 75,
  toggle: true,
  note: 'Hanger and plate washer on the bolt first; the washer must cover the hole, or the bolt sags.',
};

/** Metal sleeve whose legs fold behind the sheet. */
export const EXPANDING_SLEEVE: BoardAnchor = {
  fastener: 'expanding-sleeve-anchor',
  name: 'expanding sleeve, M5',
  shank: 'bolt-M5',
  holeMm: 10,
  action: 'rotary',
  usualKg: 8,
  cap: cap(12),
  capThin: cap(8),
  voidMm: 60,
  toggle: false,
  note: 'Grip to suit the board, measured at the hole; set it until it firms, hanger on last.',
};

/** Board anchors from the lightest up. */
export const BOARD_ANCHORS: readonly BoardAnchor[] = [
  {
    fastener: 'screw-in-anchor',
    name: 'screw-in board anchor',
    shank: 8,
    holeMm: 8,
    action: 'rotary',
    usualKg: 6,
    cap: cap(10),
    capThin: cap(6),
    voidMm: 40,
    toggle: false,
    notOverPeople: true,
    note: 'Turn it in by hand, square, until the rim is flush, and stop: spinning means it holds nothing.',
  },
  EXPANDING_SLEEVE,
  STRAP_TOGGLE,
  SPRING_TOGGLE,
];

/** Whole piece on board alone; with three or more toggles. */
export const BOARD_ONLY = sourced(
  { wholeKg: 20, withTogglesKg: 30, toggles: 3 },
  'common-practice',
  'plasterboard on timber studs: total on board only',
  'common-practice',
);

/** Sheets these anchors are for. */
export const SHEET = sourced(
  { thinnestMm: 9, thinUpToMm: 11, oneSheetUpToMm: 16 },
  'common-practice',
  AT,
  'common-practice',
);
/** Under a tile, half. */
export const UNDER_TILE = sourced(
  1 / 2,
  'common-practice',
  'tile over plasterboard: cap half',
  'common-practice',
);
