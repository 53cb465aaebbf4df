import { type Megapascals, type Millimetres, type Newtons, newtons } from '../../quantity.ts';
import type { RootDiameter } from '../steel/screw-sizes.ts';
import { type Joint, leastOf, type Yield, type YieldMode } from './timber-lateral.ts';

/** The positive root of A P^2 + B P + C = 0. */
const positiveRoot = (a: number, b: number, c: number): number =>
  (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);

/**
 * Reference lateral value across a gap such as plasterboard: the least of the six modes of the general
 * dowel equations over R_d (AWC TR-12 Table 1-1), before C_D, N. With no gap it equals NDS 12.3.1.
 */
export function lateralWithGap(joint: Joint): Yield {
  const { main, side, gapMm: g } = joint;
  const d = joint.d.rootMm;
  const qm = main.bearing * d;
  const qs = side.bearing * d;
  const lm = main.lengthMm;
  const ls = side.lengthMm;
  // One screw through both members: the hinge is as strong in either.
  const moment = (joint.bendingYield * d ** 3) / 6;
  const modes: [YieldMode, number][] = [
    ['Im', qm * lm],
    ['Is', qs * ls],
    [
      'II',
      positiveRoot(1 / (4 * qs) + 1 / (4 * qm), ls / 2 + g + lm / 2, -(qs * ls ** 2 + qm * lm ** 2) / 4),
    ],
    ['IIIm', positiveRoot(1 / (2 * qs) + 1 / (4 * qm), g + lm / 2, -moment - (qm * lm ** 2) / 4)],
    ['IIIs', positiveRoot(1 / (4 * qs) + 1 / (2 * qm), ls / 2 + g, -(qs * ls ** 2) / 4 - moment)],
    ['IV', positiveRoot(1 / (2 * qs) + 1 / (2 * qm), g, -2 * moment)],
  ];
  return leastOf(modes, joint.reduction);
}

/** A screw that projects bare from the timber, loaded at `armMm` out from the wood. */
export type BareScrew = {
  readonly d: RootDiameter;
  readonly lengthInWoodMm: Millimetres;
  readonly bearing: Megapascals;
  readonly bendingYield: Megapascals;
  readonly reduction: number;
  readonly armMm: Millimetres;
};

/**
 * Reference lateral value of it: the smaller of a hinge in the wood, P = q (-e + sqrt(e^2 + 2 M / q)), and
 * the whole screw turning in the wood, over R_d (derived; limit analysis), before C_D, N.
 */
export function lateralBareScrew(screw: BareScrew): Newtons {
  const d = screw.d.rootMm;
  const q = screw.bearing * d;
  const e = screw.armMm;
  const lm = screw.lengthInWoodMm;
  const moment = (screw.bendingYield * d ** 3) / 6;
  const hinge = q * (-e + Math.sqrt(e ** 2 + (2 * moment) / q));
  const turning = positiveRoot(1 / (4 * q), e + lm / 2, -(q * lm ** 2) / 4);
  return newtons(Math.min(hinge, turning) / screw.reduction);
}
