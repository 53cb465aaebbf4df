import type { HangingSoFar, Piece } from './piece/piece.ts';
import type { Millimetres } from './quantity.ts';
import type { Wall } from './wall/wall.ts';

/**
 * A job: what is hung, on what, where, by whom. Lengths in millimetres, masses in kilograms.
 * Absent means unknown; most fields also take the word "unknown", which means the person was asked.
 */
export type Unknown = 'unknown';

export type Country = 'AU' | 'NZ' | 'UK' | 'US' | 'IE' | 'CA' | 'EU' | 'other';

export type Building = {
  country?: Country | Unknown;
  yearBuilt?: number | Unknown;
  rewiredYear?: number | Unknown;
  kind?: 'house' | 'flat' | 'public' | Unknown;
  tenure?: 'owner' | 'tenant' | 'client' | Unknown;
  consent?: boolean | Unknown;
  heritage?: boolean | Unknown;
  /** True where earthquakes are reckoned with. */
  seismic?: boolean | Unknown;
};

/** From the wall's left end, but a right edge from its right end. */
export type Across =
  | { by: 'centre' }
  | { by: 'left-edge' | 'right-edge' | 'centre-at'; mm: Millimetres }
  | { by: 'between'; fromMm: Millimetres; toMm: Millimetres };

export type Up = {
  by: 'bottom-above' | 'centre-at' | 'top-at' | 'below-ceiling';
  mm: Millimetres;
};

export type Below =
  | 'nothing'
  | 'bed'
  | 'sofa'
  | 'cot'
  | 'basin'
  | 'fireplace'
  | 'fireplace-unused'
  | 'walkway'
  | Unknown;

export type Place = {
  across: Across;
  up: Up;
  below?: Below;
  /** Top of a fire's opening above the finished floor. */
  openingTopMm?: Millimetres;
};

type Crew = {
  people?: number | Unknown;
  dustExtraction?: boolean | Unknown;
  /** A lifter, stand or temporary ledger that takes the weight. */
  lifter?: boolean | Unknown;
};

/** A rating printed on a packet, recorded with who said so; or the readings of a pull test on site. */
type Proof = {
  /** A working load, each. */
  packetRatingN?: number;
  /** A breaking load, each, and what it is divided by; 5 where the packet gives no factor. */
  packetUltimateN?: number;
  packetFactor?: number;
  pullTestN?: number[];
  saidBy?: string;
};

export type Job = {
  building?: Building;
  piece: Piece;
  wall: Wall;
  place: Place;
  crew?: Crew;
  proof?: Proof;
};

/** What is known so far in a conversation: a job with anything missing. */
export type JobSoFar = {
  building?: Building;
  piece?: Partial<Omit<Piece, 'hanging'>> & { hanging?: HangingSoFar };
  wall?: Partial<Wall>;
  place?: Partial<Place>;
  crew?: Crew;
  proof?: Proof;
};
