import type { Assumption } from '../plan-shape.ts';
import type { Basis } from '../sources.ts';
import type { Candidate, Unusable } from './candidate.ts';

/** A preference walk reckoned through, with what had to be taken for granted on the way. */
export type Walked = {
  readonly walk: readonly (Candidate | Unusable)[];
  readonly assumptions: readonly Assumption[];
  readonly basis: readonly Basis[];
};
