import type { Assumption, BattenLine, CrossCheck, Frame, Mark } from '../plan-shape.ts';
import type { Degrees, Millimetres } from '../quantity.ts';
import type { Basis } from '../sources.ts';
import type { Why } from '../why.ts';

/** What the hangers do to the marks: where each bears, before rounding, in the wall's own frame. */
export type SetOut = {
  ok: true;
  frame: Frame;
  marks: Mark[];
  crossChecks: CrossCheck[];
  batten?: BattenLine;
  /** Cord only: rise above the rings, leg angle from horizontal. */
  cord?: { riseMm: Millimetres; legAngle: Degrees; spreadMm: Millimetres };
  /** Height of the datum above the finished floor; null when not known. */
  datumAboveFloorMm: Millimetres | null;
  /** What is said with the marks: shift to a stud, joint clash, level or parallel. */
  advice: string[];
  assumptions: Assumption[];
  why: Why[];
  basis: Basis[];
};

/** A reason why not, with the number it is over by. */
export type DoesNotFit = { ok: false; id: string; text: string; overByMm: Millimetres; clears: string };

export type LayoutResult = SetOut | DoesNotFit;

/** A piece among several: its number from 1, and the mark of another whose level line all heights are taken from. */
export type Among = { nth: number; level?: Pick<Mark, 'id' | 'fromLeftMm'> };
