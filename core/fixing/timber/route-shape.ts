import type { Assumption } from '../../plan-shape.ts';
import type { Megapascals, Millimetres, Newtons } from '../../quantity.ts';
import type { Basis } from '../../sources.ts';
import type { Gauge, RootDiameter } from '../steel/screw-sizes.ts';

/** A screw in unknown softwood as one route reckons it: what the yield modes need, and from yield to what may act for good. */
export type RoutedScrew = {
  readonly d: RootDiameter;
  readonly bearing: Megapascals;
  readonly bendingYield: Megapascals;
  readonly lengthInWoodMm: Millimetres;
  /** What may act for good = load at yield x this; 0 where the screw is not deep enough. */
  readonly forGood: number;
  readonly withdrawalN: Newtons;
};

/** A whole way of reckoning a screw in softwood: never a part of one with a part of the other. */
export type TimberRoute = {
  readonly id: 'NDS' | 'EC5';
  readonly name: string;
  readonly screw: (gauge: Gauge, inWoodMm: Millimetres, lengthMm: Millimetres) => RoutedScrew | null;
  /** A screw right through a board: no route has a penetration for it, so its whole thickness bears, and no more. */
  readonly rightThrough: (gauge: Gauge, thicknessMm: Millimetres) => RoutedScrew | null;
  readonly basis: readonly Basis[];
  readonly taken: readonly Assumption[];
};
