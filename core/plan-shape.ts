import type { Fastener } from './fixing/fastener.ts';
import type { Fixing, Governing } from './fixing/fixing-shape.ts';
import type { IfWrong } from './if-wrong.ts';
import type { Millimetres, Newtons } from './quantity.ts';
import type { Basis } from './sources.ts';
import type { Why } from './why.ts';

/** What a plan looks like. Lengths millimetres, forces newtons; rounded once, when the plan is made. */

export type Verdict = 'go' | 'care' | 'stop';
export type Severity = 'stop' | 'warn' | 'note';

export type Caution = {
  readonly id: string;
  readonly severity: Severity;
  readonly text: string;
  /** On a stop: what would clear it. */
  readonly clears?: string;
  readonly basis: readonly Basis[];
};

/** The frame on the wall: x right from the wall's left end, heights up from the datum. */
export type Frame = {
  leftMm: Millimetres;
  rightMm: Millimetres;
  bottomMm: Millimetres;
  topMm: Millimetres;
};

/** Where to drill. `upMm` from the datum on the level line through A; `upHereMm` what a tape reads below this mark. */
export type Mark = {
  id: string;
  fromLeftMm: Millimetres;
  fromRightMm: Millimetres;
  upMm?: Millimetres;
  upHereMm?: Millimetres;
  /** With a ceiling as datum. */
  downMm?: Millimetres;
  /** Which stud, joint or unit the mark falls on, where known. */
  on?: string;
};

export type CrossCheck = { text: string; expectMm: Millimetres; toleranceMm: Millimetres };

/** The wall half of a split batten, or a board across studs. */
export type BattenLine = {
  fromLeftMm: Millimetres;
  toLeftMm: Millimetres;
  upMm: Millimetres;
};

export type PerMark = { id: string; shearN: Newtons; tensionN: Newtons };
export type Actions = {
  weightN: Newtons;
  perMark: PerMark[];
  /** Cord tension and inward pull on each hanger, where there is a cord. */
  cordN?: Newtons;
  inwardN?: Newtons;
};

/** A field the person did not give, what was taken for it, and why. */
export type Assumption = {
  field: string;
  value: unknown;
  because: string;
  /** For those that matter most: what the plan would be if it were another value. */
  ifWrong?: IfWrong;
};

export type Alternative = {
  fastener: Fastener;
  utilisation: number;
  text: string;
  /** What limits it. */
  governing?: Governing;
};
export type Rejected = { fastener: string; because: string };

/** One link from the piece to the wall; the weakest governs. Without a resistance nobody has said what it bears. */
export type ChainLink = {
  link: 'wall-fixing' | 'hook' | 'hanger' | 'hanger-screw' | 'cord' | 'batten';
  /** "strap ring on the frame". */
  name: string;
  /** What acts on one of them, without any factor. */
  actionN: Newtons;
  /** What it may bear for good. */
  resistanceN?: Newtons;
  utilisation?: number;
  /** What it must be rated for, where that is not known or not enough. */
  needs?: string;
  basis: readonly Basis[];
};

export type Plan = {
  verdict: Verdict;
  /** Null with several pieces, whose frames are in `frames`. */
  frame: Frame | null;
  /** With several pieces: one for each, in order. */
  frames?: Frame[];
  marks: Mark[];
  batten?: BattenLine;
  /** With several pieces of which any hangs on one: one for each, in order. */
  battens?: (BattenLine | null)[];
  crossChecks: CrossCheck[];
  actions: Actions | null;
  /** With several pieces the strongest needed. */
  fixing: Fixing | null;
  /** With several pieces: one for each, in order; none on a stop. */
  fixings?: Fixing[];
  /** The links from the piece to the wall; `fixing.utilisation` stays that of the wall fixing alone. */
  chain?: ChainLink[];
  /** The link of known strength that is nearest its limit. */
  weakest?: { link: ChainLink['link']; name: string; utilisation: number };
  alternatives: Alternative[];
  rejected: Rejected[];
  cautions: Caution[];
  /** On a stop: what would clear it. */
  clear: string[];
  assumptions: Assumption[];
  /** Advice that is not a caution: how far to move to land on a stud, level or parallel. */
  advice: string[];
  steps: string[];
  tools: string[];
  shopping: { item: string; count: number }[];
  why: Why[];
  basis: Basis[];
};
