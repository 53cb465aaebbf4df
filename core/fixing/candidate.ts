import type { Assumption } from '../plan-shape.ts';
import type { Why } from '../why.ts';
import type { PointLoad, WorstCheck } from './acting/worst-check.ts';
import type { Fastener } from './fastener.ts';
import type { Fixing } from './fixing-shape.ts';

/** A fastening that was reckoned through for this piece. */
export type Candidate = {
  readonly ok: true;
  readonly fastener: Fastener;
  /** "8 x 50 plug with a 14 gauge screw". */
  readonly name: string;
  /** What a careful person uses without a second look, kg per fixing; none where it is computed. */
  readonly usualKg?: number;
  /** True where the hangers go onto a batten that is added for them. */
  readonly onAddedBatten?: true;
  readonly point: PointLoad;
  readonly worst: WorstCheck;
  /** Where it falls short: what would not, in a few words. */
  readonly needs?: () => string | null;
  readonly fixing: () => Fixing;
  readonly why: () => Why[];
  readonly advice: readonly string[];
  /** What only this fastening had to take for granted. */
  readonly taken?: readonly Assumption[];
};

/** A fastening that can't be used here at all, and why. */
export type Unusable = {
  readonly ok: false;
  readonly fastener: Fastener;
  readonly name: string;
  readonly because: string;
  /** True where an earlier line has said it already. */
  readonly quiet?: true;
};

/** The governing mode of a candidate, in the words of a plan. */
export function governingOf({ mode, resistanceN, basis, noSource }: WorstCheck): Fixing['governing'] {
  const ids = [...new Set(basis.map((each) => each.id as string))];
  return { mode, resistanceN, basis: ids, ...(noSource && { noSource: true }) };
}
