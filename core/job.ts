import type { Kilograms, Millimetres } from './quantity.ts';

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

/** Where a hanger is on the piece, as said: one across figure, and down from the top edge. */
export type HangerPoint = {
  fromLeftMm?: Millimetres;
  fromRightMm?: Millimetres;
  /** Right of the centre line positive. */
  fromCentreMm?: Millimetres;
  fromTopMm: Millimetres;
};

type Seat = {
  /** From where the hanger bears up to the screw's centre; positive when the screw is above. */
  seatToScrewMm?: Millimetres;
  /** From the finished face out to where the hanger bears. */
  standOffMm?: Millimetres;
};

/** A sawtooth is a zigzag bracket over one nail: for light pieces only. */
type Hanger = 'ring' | 'sawtooth';

export type Hanging =
  | ({ by: 'rings' | 'keyholes'; points: HangerPoint[]; hanger?: Hanger } & Seat)
  | ({
      by: 'cord';
      points: HangerPoint[];
      lengthMm?: Millimetres;
      riseMm?: Millimetres;
      hooksApartMm?: Millimetres;
    } & Seat)
  | ({ by: 'batten'; fromTopMm: Millimetres; lengthMm: Millimetres } & Seat)
  | ({ by: 'clips'; points: HangerPoint[] } & Seat);

/** A layer of the piece from which its mass can be estimated. */
export type Build = {
  glazing?: { material: 'glass' | 'acrylic' | 'polycarbonate'; thicknessMm: Millimetres };
  frame?: {
    material: 'softwood' | 'hardwood' | 'oak' | 'mdf' | 'aluminium' | 'steel';
    widthMm: Millimetres;
    thicknessMm: Millimetres;
  };
  backing?: {
    material: 'mdf' | 'hardboard' | 'plywood' | 'foam-board';
    thicknessMm: Millimetres;
  };
};

export type PieceKind = 'mirror' | 'picture' | 'canvas' | 'panel';

export type Piece = {
  kind: PieceKind;
  widthMm: Millimetres;
  heightMm: Millimetres;
  depthMm?: Millimetres;
  massKg?: Kilograms;
  build?: Build;
  glass?: 'none' | 'plain' | 'safety' | 'acrylic' | Unknown;
  lit?: boolean | Unknown;
  comFromWallMm?: Millimetres;
  comFromLeftMm?: Millimetres;
  hanging: Hanging;
};

export type BaseMaterial =
  | 'clay-brick'
  | 'concrete-block'
  | 'concrete'
  | 'aerated-concrete'
  | 'natural-stone'
  | 'plasterboard-on-timber-studs'
  | 'plasterboard-on-steel-studs'
  | 'plasterboard-on-dabs'
  | 'lath-and-plaster'
  | 'fibre-cement-on-studs'
  | 'timber'
  | 'unknown';

export type Cores = 'solid' | 'perforated' | 'hollow' | Unknown;

export type Finish = {
  kind: 'bare' | 'plaster' | 'render' | 'tile' | 'board' | Unknown;
  thicknessMm?: Millimetres;
};

export type AccessoryKind =
  | 'socket'
  | 'switch'
  | 'light'
  | 'thermostat'
  | 'heater'
  | 'consumer-unit'
  | 'blank-plate'
  | 'tap'
  | 'basin'
  | 'toilet'
  | 'shower'
  | 'radiator'
  | 'boiler'
  | 'gas'
  | 'window'
  | 'door'
  | 'pipe'
  | 'cable';

/** Centre of the plate or fixture; y from the finished floor; x from the left end of the face it is on. */
export type Accessory = {
  kind: AccessoryKind;
  face: 'this' | 'far';
  xMm: Millimetres;
  yMm: Millimetres;
  widthMm?: Millimetres;
  heightMm?: Millimetres;
};

/** A fitting that was told of without all of its place: nothing is drilled until that is known. */
export type Unplaced = Partial<Accessory> & {
  kind: AccessoryKind;
  /** Asked for, and nobody could say. */
  whereabouts?: Unknown;
};

export type DatumKind = 'floor' | 'mantel' | 'furniture' | 'ceiling' | 'nosing';

export type Wall = {
  baseMaterial: BaseMaterial;
  cores?: Cores;
  finish?: Finish;
  boardMm?: Millimetres;
  boardLayers?: number;
  voidMm?: Millimetres;
  thicknessMm?: Millimetres;
  widthMm: Millimetres;
  heightMm?: Millimetres;
  datum?: { kind: DatumKind; aboveFloorMm?: Millimetres; fallMm?: Millimetres };
  studs?: { spacingMm?: Millimetres; firstMm?: Millimetres; widthMm?: Millimetres } | Unknown;
  courses?: { gaugeMm?: Millimetres; firstBedMm?: Millimetres; jointMm?: Millimetres };
  accessories?: Accessory[] | Unknown;
  unplaced?: Unplaced[];
  farSide?: Unknown | 'seen';
  ends?: { left?: 'wall' | 'open'; right?: 'wall' | 'open' };
  wet?: 'no' | 'bathroom' | 'shower' | Unknown;
  coating?: 'none' | 'textured' | Unknown;
  asbestos?: 'tested-clear' | 'not-tested' | Unknown;
  tensioned?: 'no' | 'possible' | 'scanned' | Unknown;
  separating?: boolean | Unknown;
  condition?: 'sound' | 'poor' | Unknown;
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

export type Place = { across: Across; up: Up; below?: Below };

type Crew = {
  people?: number | Unknown;
  dustExtraction?: boolean | Unknown;
  /** A lifter, stand or temporary ledger that takes the weight. */
  lifter?: boolean | Unknown;
};

/** A rating printed on a packet, recorded with who said so; or the readings of a pull test on site. */
type Proof = {
  packetRatingN?: number;
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

/** Hangers said in part: "there's a wire across the back". */
export type HangingSoFar = {
  by?: Hanging['by'];
  hanger?: Hanger;
  points?: (Omit<HangerPoint, 'fromTopMm'> & { fromTopMm?: Millimetres })[];
  lengthMm?: Millimetres;
  riseMm?: Millimetres;
  hooksApartMm?: Millimetres;
  fromTopMm?: Millimetres;
  seatToScrewMm?: Millimetres;
  standOffMm?: Millimetres;
};
