import { type Newtons, newtons } from '../../quantity.ts';
import type { Basis } from '../../sources.ts';
import type { FailureMode } from '../fixing-shape.ts';

/** Two directions at once on one fastener, newtons. */
export type PointLoad = { readonly shearN: Newtons; readonly tensionN: Newtons };

/** The mode that is nearest its limit. */
export type WorstCheck = {
  readonly mode: FailureMode;
  /** What may act for good in shear, beside the tension that acts. */
  readonly resistanceN: Newtons;
  readonly utilisation: number;
  readonly basis: readonly Basis[];
  readonly noSource: boolean;
  /** What acts on the fastener it is worst on, and what it may bear each way: what the utilisation was made of. */
  readonly acting?: PointLoad;
  readonly allowed?: PointLoad;
};

/** Where both directions act, their shares add up: V/V_R + N/N_R (contract 5). */
export function linear(load: PointLoad, shearN: Newtons, tensionN: Newtons): number {
  return load.shearN / shearN + load.tensionN / tensionN;
}

/** The worse of two checks; the first where they are even. */
export function worse(one: WorstCheck | null, other: WorstCheck): WorstCheck {
  return one === null || other.utilisation > one.utilisation ? other : one;
}

/** Largest of loads, direction by direction: what every fastener of one kind must bear. */
export function envelope(loads: readonly PointLoad[]): PointLoad {
  let shear = 0;
  let tension = 0;
  for (const load of loads) {
    shear = Math.max(shear, load.shearN);
    tension = Math.max(tension, load.tensionN);
  }
  return { shearN: newtons(shear), tensionN: newtons(tension) };
}
