import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Millimetres, Newtons } from '../../quantity.ts';
import type { Load } from '../acting/actions.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import type { Gauge } from '../steel/screw-sizes.ts';

/** What a fastening in a board wall needs to know of the place it goes in. */
export type BoardPlace = {
  readonly job: Job;
  readonly setOut: SetOut;
  readonly load: Load;
  /** All sheets together. */
  readonly boardMm: Millimetres;
  readonly layers: number;
  /** Board and finish: what a screw crosses before it meets timber. */
  readonly beyondMm: Millimetres;
  readonly standOffMm: Millimetres;
  /** What stays outside the finish: the stand-off, or a batten's thickness. */
  readonly outsideMm: Millimetres;
  /** From the board's face out to the load. */
  readonly armMm: Millimetres;
  readonly shelf: 'AU' | 'UK' | 'US';
  readonly proven: HoldingCap | null;
  /** Whether the piece hangs on a split batten. */
  readonly batten: boolean;
  readonly tiled: boolean;
  /** What the studs are made of. */
  readonly frame: 'timber' | 'steel';
  /** The trade's caps for a screw through this sheet into timber; null where only the computed value holds. */
  readonly studCapOf: (gauge: Gauge) => Newtons | null;
  /** The heaviest piece for a board across these studs, where it is less than over plasterboard, kg. */
  readonly acrossKg?: number;
  /** A bit that goes through tile, plaster or a hard sheet and no further, where a wood bit will not. */
  readonly throughSheet?: {
    readonly kind: 'masonry' | 'tile';
    readonly diameterMm: Millimetres;
    readonly depthMm: Millimetres;
  };
};
