import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Millimetres } from '../../quantity.ts';
import type { Load } from '../acting/actions.ts';
import type { TakenFinish } from '../finish.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';

/** What a row needs to know of the place it goes in. */
export type Place = {
  readonly job: Job;
  readonly setOut: SetOut;
  readonly load: Load;
  readonly finish: TakenFinish;
  readonly standOffMm: Millimetres;
  readonly shelf: 'AU' | 'UK' | 'US';
  readonly proven: HoldingCap | null;
};
