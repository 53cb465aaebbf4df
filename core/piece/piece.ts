import type { Kilograms, Millimetres } from '../quantity.ts';

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

/** What the piece hangs by; a bare "ring" is a ring of unknown kind. A sawtooth is a zigzag bracket over one nail. */
export type Hanger =
  | 'ring'
  | 'd-ring'
  | 'strap-ring'
  | 'screw-eye'
  | 'mirror-plate'
  | 'keyhole-plate'
  | 'keyhole-routed'
  | 'sawtooth';

/** What a cord is made of; of picture wire and string only the packet knows the strength. */
type CordKind = 'hard-drawn-steel' | 'stainless-wire' | 'picture-wire' | 'string';

export type Hanging =
  | ({ by: 'rings' | 'keyholes'; points: HangerPoint[]; hanger?: Hanger } & Seat)
  | ({
      by: 'cord';
      points: HangerPoint[];
      lengthMm?: Millimetres;
      riseMm?: Millimetres;
      hooksApartMm?: Millimetres;
      hanger?: Hanger;
      /** Breaking strength printed on the line's packet. */
      cordRatingN?: number;
      cordKind?: CordKind;
      /** Diameter of one solid wire. */
      cordMm?: Millimetres;
    } & Seat)
  | ({ by: 'batten'; fromTopMm: Millimetres; lengthMm: Millimetres } & Seat)
  /** `lowerRail`: a rail under the glass carries it, and the clips only hold it to the wall. */
  | ({ by: 'clips'; points: HangerPoint[]; lowerRail?: boolean | 'unknown' } & Seat);

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
  glass?: 'none' | 'plain' | 'safety' | 'acrylic' | 'unknown';
  lit?: boolean | 'unknown';
  comFromWallMm?: Millimetres;
  comFromLeftMm?: Millimetres;
  /** Thickness of the bumpers at its lower corners; 0 for none. */
  bumperMm?: Millimetres;
  hanging: Hanging;
};

/** Hangers said in part: "there's a wire across the back". */
export type HangingSoFar = {
  by?: Hanging['by'];
  hanger?: Hanger;
  points?: (Omit<HangerPoint, 'fromTopMm'> & { fromTopMm?: Millimetres })[];
  lengthMm?: Millimetres;
  riseMm?: Millimetres;
  hooksApartMm?: Millimetres;
  cordRatingN?: number;
  cordKind?: CordKind;
  cordMm?: Millimetres;
  lowerRail?: boolean | 'unknown';
  fromTopMm?: Millimetres;
  seatToScrewMm?: Millimetres;
  standOffMm?: Millimetres;
};
