import type { Job } from '../job.ts';
import type { SetOut } from '../layout/set-out.ts';
import type { Actions, Alternative, Assumption, ChainLink, Rejected } from '../plan-shape.ts';
import type { Basis } from '../sources.ts';
import type { Why } from '../why.ts';
import type { Fixing } from './fixing-shape.ts';

/** The fastener that holds, those that do not and why. */
export type Chosen = {
  ok: true;
  actions: Actions;
  fixing: Fixing;
  alternatives: Alternative[];
  rejected: Rejected[];
  /** From the wall to the piece, the wall fixing first. */
  chain: ChainLink[];
  /** Fixing-side findings that become cautions: ids of the reference, e.g. C-WL-2, C-HG-2; `stops`: what would clear it. */
  findings: { id: string; text: string; stops?: string }[];
  advice: string[];
  assumptions: Assumption[];
  why: Why[];
  basis: Basis[];
};

/** Nothing on the list holds, or this wall is not computed yet: a stop, said plainly. */
export type NothingHolds = {
  ok: false;
  actions: Actions;
  because: string;
  clears: string;
  rejected: Rejected[];
  assumptions: Assumption[];
  basis: Basis[];
};

export type FixingResult = Chosen | NothingHolds;

/** Chooses a fastener for a job that is set out. Throws never. */
export type ChooseFixing = (job: Job, setOut: SetOut) => FixingResult;
