import type { Country, Unknown } from '../job.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Gauge } from './steel/screw-sizes.ts';

/** Lengths on the shelf, by gauge: pan heads, and countersunk or batten screws, which come longer. */
type Shelf = {
  readonly pan: Record<Gauge, readonly number[]>;
  readonly long: Record<Gauge, readonly number[]>;
  readonly coach: readonly number[];
};

const inch = (...lengths: number[]): number[] => lengths.map((each) => each * MM_PER_INCH);
const SHORT_INCH = inch(0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3);
const LONG_INCH = inch(1.25, 1.5, 2, 2.5, 3, 3.5, 4);
const METRIC_5 = [30, 40, 50, 60, 70, 80, 90, 100];
const METRIC_6 = [40, 50, 60, 70, 80, 90, 100, 120, 150];

const SHELVES = sourced(
  {
    AU: {
      pan: {
        6: [13, 16, 20, 25, 32, 38],
        8: [13, 16, 20, 25, 32, 38, 50],
        10: [16, 20, 25, 32, 38, 50, 65, 75],
        12: [25, 32, 38, 50, 65, 75],
        14: [25, 32, 38, 50, 65, 75],
      },
      long: {
        6: [],
        8: [25, 32, 40, 50, 65, 75],
        10: [40, 50, 65, 75, 100],
        12: [],
        14: [50, 65, 75, 100, 125, 150],
      },
      coach: [50, 65, 75, 100],
    },
    UK: {
      pan: { 6: [16, 20, 25, 30, 40, 50], 8: SHORT_INCH, 10: SHORT_INCH, 12: SHORT_INCH, 14: SHORT_INCH },
      long: { 6: [], 8: [20, 25, 30, 40, 50, 60, 70], 10: METRIC_5, 12: [], 14: METRIC_6 },
      coach: [50, 60, 75, 80, 100],
    },
    US: {
      pan: { 6: SHORT_INCH, 8: SHORT_INCH, 10: SHORT_INCH, 12: SHORT_INCH, 14: SHORT_INCH },
      long: { 6: [], 8: inch(1, 1.25, 1.5, 2, 2.5, 3), 10: LONG_INCH, 12: LONG_INCH, 14: LONG_INCH },
      coach: inch(1.5, 2, 2.5, 3, 4),
    },
  } satisfies Record<string, Shelf>,
  'common-practice',
  'stocked lengths; ask the shelf',
  'common-practice',
);

/** More than this over what is wanted: deepen the hole or take another plug. */
const MOST_OVER = sourced(mm(15), 'common-practice', 'rule of screw length', 'common-practice');

/** Whose shelf a country is reckoned to have. */
export function shelfOf(country: Country | Unknown | undefined): 'AU' | 'UK' | 'US' {
  if (country === 'US' || country === 'CA') return 'US';
  return country === 'UK' || country === 'IE' || country === 'EU' ? 'UK' : 'AU';
}

/**
 * Which head will do: a pan head, or where none is long enough a countersunk one with a washer under it;
 * a pan or round head alone, as a keyhole needs; countersunk, as a batten takes it.
 */
export type HeadWanted = 'pan-first' | 'pan-only' | 'countersunk';

/** A screw off the shelf, mm. `washer` where only a countersunk one is long enough. */
export type StockedScrew = { readonly screwMm: Millimetres; readonly washer: boolean };

/** The stocked screw of a gauge for a wanted length and head; null when the shelf has none that long. Millimetres. */
export function stockedScrew(
  shelf: 'AU' | 'UK' | 'US',
  head: HeadWanted,
  gauge: Gauge | 'coach-8',
  leastMm: Millimetres,
  diameterMm: Millimetres,
): StockedScrew | null {
  const from: Shelf = SHELVES.value[shelf];
  const find = (lengths: readonly number[], washer: boolean): StockedScrew | null => {
    const screwMm = stockedLength(lengths, leastMm, diameterMm);
    return screwMm === null ? null : { screwMm, washer };
  };
  if (gauge === 'coach-8') return find(from.coach, false);
  const pan = head === 'countersunk' ? null : find(from.pan[gauge], false);
  return pan ?? (head === 'pan-only' ? null : find(from.long[gauge], head === 'pan-first'));
}

/**
 * The stocked length for a wanted one: at least `least`, one diameter more where that costs no more than 15 mm,
 * else the next length up. Nothing when the shelf has none that long. Millimetres.
 */
function stockedLength(
  lengths: readonly number[],
  leastMm: Millimetres,
  diameterMm: Millimetres,
): Millimetres | null {
  const generous = lengths.find((each) => each >= leastMm + diameterMm);
  if (generous !== undefined && generous - leastMm <= MOST_OVER.value) return mm(generous);
  const bare = lengths.find((each) => each >= leastMm);
  return bare === undefined ? null : mm(bare);
}
