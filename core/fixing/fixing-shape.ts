import type { Millimetres, Newtons } from '../quantity.ts';
import type { Fastener } from './fastener.ts';

export type FailureMode =
  | 'screw-bending'
  | 'screw-shear'
  | 'screw-tension'
  | 'plug-cap'
  | 'packet-rating'
  | 'pull-test'
  | 'timber-lateral'
  | 'timber-withdrawal'
  | 'concrete-cone'
  | 'masonry'
  | 'anchor-cap';

export type Governing = {
  mode: FailureMode;
  resistanceN: Newtons;
  /** Ids of sources. */
  basis: string[];
  /** True where the number is a cap of common practice or our choice and no source gives one. */
  noSource?: boolean;
};

export type Bit = {
  kind: 'masonry' | 'wood' | 'metal' | 'tile' | 'none';
  action: 'rotary' | 'hammer-after-finish' | 'rotary-until-known' | 'none';
  diameterMm: Millimetres;
  depthMm: Millimetres;
};

export type Fixing = {
  fastener: Fastener;
  count: number;
  /** What holds a board or batten to its studs, where that is not wood screws. */
  heldBy?: Fastener;
  bit: Bit;
  pilot?: { diameterMm: Millimetres; depthMm: Millimetres };
  plug?: { diameterMm: Millimetres; lengthMm: Millimetres };
  screw?: {
    gauge?: number;
    diameterMm: Millimetres;
    lengthMm: Millimetres;
    head: 'pan' | 'round' | 'countersunk' | 'hex' | 'washer';
  };
  /** With an added board: the screws that hold the hangers to it. */
  hangerScrews?: number;
  /** Anything the shopper must match: board thickness, void, washer. */
  note?: string;
  governing: Governing;
  utilisation: number;
};
