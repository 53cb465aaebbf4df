import type { Basis } from './sources.ts';

/** One number that can be asked about: its formula, what went in, what came out, and why it is believed. */
export type Why = {
  /** What it is called: "hole depth", "screw length", "mark A up". */
  of: string;
  formula: string;
  inputs: Record<string, number | string>;
  result: string;
  basis: readonly Basis[];
  /** The same as arithmetic over the names of `inputs`, where it is that. */
  symbols?: string;
  /** The numbers of the plan that it explains: `fixing.bit.depthMm`, `marks.A.upMm`. */
  paths?: readonly string[];
};
