import type { Country } from '../job.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Basis, sourced } from '../sources.ts';
import type { Wall } from './wall.ts';

const MARGIN = sourced(mm(50), 'our-choice', 'safety 1.2: margin', 'our-choice');
const MARGIN_NO_RULE = sourced(
  mm(75),
  'our-choice',
  'safety 1.2: margin, US or unknown country',
  'our-choice',
);

/**
 * A part of the wall where a service may run: an interval across (from the wall's left end) or up (from
 * the finished floor), or the band under the ceiling, which is measured down from the ceiling.
 */
export type Zone = {
  readonly id: string;
  readonly runs: 'across' | 'up' | 'under-ceiling';
  readonly fromMm: Millimetres;
  readonly toMm: Millimetres;
  /** How near is tight, beside a pipe's strip as beside a cable's. */
  readonly marginMm: Millimetres;
  readonly service: 'electric' | 'plumbing';
  /** False where no rule counts the far face, though a cavity joins both: at most a warning. */
  readonly firm: boolean;
  /** Completes "that hole is ...". */
  readonly where: string;
  readonly basis: Basis;
};

export type ZoneWall = Pick<Wall, 'widthMm'> &
  Partial<Pick<Wall, 'heightMm' | 'thicknessMm' | 'ends' | 'accessories' | 'baseMaterial'>>;

/** A country whose rules say nothing of where in a wall cables run. */
export const hasNoRule = (country: Country | 'unknown' | undefined): boolean =>
  country === 'US' || country === 'CA';

/** The margin that counts as tight, in millimetres: 50, or 75 where no published rule says where cables run. */
export function marginOf(country: Country | 'unknown' | undefined): Millimetres {
  return hasNoRule(country) || country === undefined || country === 'unknown'
    ? MARGIN_NO_RULE.value
    : MARGIN.value;
}
