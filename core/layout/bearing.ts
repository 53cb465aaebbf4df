import type { Assumption } from '../plan-shape.ts';
import type { Millimetres } from '../quantity.ts';
import type { SetOut } from './set-out.ts';

/** Where the piece bears on one hook or screw: from its left edge and below its top edge, and how that was found. */
export type Bearing = {
  acrossMm: Millimetres;
  dropMm: Millimetres;
  acrossFormula: string;
  dropFormula: string;
  acrossInputs: Record<string, number>;
  dropInputs: Record<string, number>;
};

export type Bearings = {
  ok: true;
  bearings: Bearing[];
  /** Outermost hangers on the piece, for a check with the tape. */
  ringToRingMm: Millimetres | null;
  cord?: NonNullable<SetOut['cord']>;
  advice: string[];
  assumptions: Assumption[];
};
