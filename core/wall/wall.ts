import type { Millimetres } from '../quantity.ts';

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

export type Cores = 'solid' | 'perforated' | 'hollow' | 'unknown';

export type Finish = {
  kind: 'bare' | 'plaster' | 'render' | 'tile' | 'board' | 'unknown';
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
  whereabouts?: 'unknown';
};

export type DatumKind = 'floor' | 'mantel' | 'furniture' | 'ceiling' | 'nosing';

/** What heights are measured from. A stair's nosing line slopes by rise over going; a mantel or furniture has a width. */
export type WallDatum = {
  kind: DatumKind;
  aboveFloorMm?: Millimetres;
  fallMm?: Millimetres;
  riseMm?: Millimetres;
  goingMm?: Millimetres;
  climbs?: 'left' | 'right';
  widthMm?: Millimetres;
};

/** Coursing as measured: lower edge of a bed joint above the floor, left edge of a perpend at the marks, from the left end. */
type Courses = {
  gaugeMm?: Millimetres;
  firstBedMm?: Millimetres;
  jointMm?: Millimetres;
  /** A unit and one perpend. */
  lengthMm?: Millimetres;
  perpendMm?: Millimetres;
};

/** What a wall may be built round: a hole anywhere in it may meet some of it. */
export type Hidden = 'pocket-door' | 'cistern' | 'boiler' | 'flue' | 'meter' | 'wall-heating';

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
  /** The ceiling over the wall's width, positive when its right end is higher; `heightMm` is then that of its left end. */
  ceilingFallMm?: Millimetres;
  datum?: WallDatum;
  /** A moulding that takes hooks: sound when it was pulled by hand and did not move. */
  pictureRail?: 'sound' | 'loose' | 'none' | 'unknown';
  /** Thickness of the steel of steel studs. */
  steelMm?: Millimetres;
  studs?: { spacingMm?: Millimetres; firstMm?: Millimetres; widthMm?: Millimetres } | 'unknown';
  courses?: Courses;
  accessories?: Accessory[] | 'unknown';
  unplaced?: Unplaced[];
  farSide?: 'unknown' | 'seen';
  ends?: { left?: 'wall' | 'open'; right?: 'wall' | 'open' };
  wet?: 'no' | 'bathroom' | 'shower' | 'unknown';
  coating?: 'none' | 'textured' | 'unknown';
  asbestos?: 'tested-clear' | 'not-tested' | 'unknown';
  tensioned?: 'no' | 'possible' | 'scanned' | 'unknown';
  separating?: boolean | 'unknown';
  /** Insulation and a vapour seal may stand behind the sheet of an outside wall. */
  external?: boolean | 'unknown';
  /** Common property: a corridor or stair of flats, the outside, the structure. */
  common?: boolean | 'unknown';
  hides?: Hidden[];
  condition?: 'sound' | 'poor' | 'unknown';
};
