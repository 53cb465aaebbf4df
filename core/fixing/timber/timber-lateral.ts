import { type Megapascals, type Millimetres, type Newtons, newtons } from '../../quantity.ts';
import type { RootDiameter } from '../steel/screw-sizes.ts';

/** One screw or nail in single shear. `d` is the root of a screw, the shank of a nail. */
export type Joint = {
  readonly d: RootDiameter;
  readonly main: { readonly lengthMm: Millimetres; readonly bearing: Megapascals };
  readonly side: { readonly lengthMm: Millimetres; readonly bearing: Megapascals };
  readonly bendingYield: Megapascals;
  readonly reduction: number;
  /** Clear gap between the members, where plasterboard stands. */
  readonly gapMm: Millimetres;
};

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';
export type Yield = { readonly mode: YieldMode; readonly allowable: Newtons };

/**
 * Reference lateral value without a gap: the least of the six yield modes over R_d (NDS 12.3.1,
 * Table 12.3.1A), before C_D, N. `gapMm` is not read here: with a gap use `lateralWithGap`.
 */
export function lateralNoGap(joint: Joint): Yield {
  const { main, side } = joint;
  const d = joint.d.rootMm;
  const fyb = joint.bendingYield;
  const fem = main.bearing;
  const fes = side.bearing;
  const re = fem / fes;
  const rt = main.lengthMm / side.lengthMm;
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
  const k2 =
    -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * main.lengthMm ** 2));
  const k3 =
    -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * side.lengthMm ** 2));
  const modes: [YieldMode, number][] = [
    ['Im', d * main.lengthMm * fem],
    ['Is', d * side.lengthMm * fes],
    ['II', k1 * d * side.lengthMm * fes],
    ['IIIm', (k2 * d * main.lengthMm * fem) / (1 + 2 * re)],
    ['IIIs', (k3 * d * side.lengthMm * fem) / (2 + re)],
    ['IV', d ** 2 * Math.sqrt((2 * fem * fyb) / (3 * (1 + re)))],
  ];
  return leastOf(modes, joint.reduction);
}

/** The mode that yields first, over the reduction term. */
export function leastOf(modes: readonly [YieldMode, number][], reduction: number): Yield {
  let mode: YieldMode = 'IV';
  let load = Number.POSITIVE_INFINITY;
  for (const [name, value] of modes) {
    if (value < load) {
      mode = name;
      load = value;
    }
  }
  return { mode, allowable: newtons(load / reduction) };
}
