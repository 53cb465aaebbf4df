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
  fromTopMm?: Millimetres;
  seatToScrewMm?: Millimetres;
  standOffMm?: Millimetres;
};
