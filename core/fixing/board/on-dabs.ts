import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Load } from '../acting/actions.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { sheetOf } from '../frame/sheet.ts';
import { practice } from '../proof/caps.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { standOffOf } from '../stand-off.ts';
import { shelfOf } from '../stocked-lengths.ts';
import type { BoardAnchor } from './board-anchors.ts';
import { boardCandidate } from './board-candidate.ts';
import { pinHook } from './pin-hook.ts';

const ON_DABS = 'plasterboard on dabs, line 1: pin hook, or a short screw-in anchor that fits the gap';

const SHORT_SCREW_IN: BoardAnchor = {
  fastener: 'screw-in-anchor',
  name: 'short screw-in board anchor',
  shank: 8,
  holeMm: 8,
  action: 'rotary',
  usualKg: 3,
  cap: practice(5, ON_DABS),
  capThin: practice(3, ON_DABS),
  voidMm: 20,
  toggle: false,
  notOverPeople: true,
  note: 'Short enough for the gap: one that touches the block spins and holds nothing. By hand, square, until the rim is flush, and stop.',
};

/** What hangs on the board itself where it stands on dabs: light pieces only, for no toggle opens in that gap. */
export function onDabs(
  job: Job,
  setOut: SetOut,
  load: Load,
  proven: HoldingCap | null,
): readonly (Candidate | Unusable)[] {
  if (job.piece.hanging.by === 'batten') return [];
  const { standOffMm } = standOffOf(job.piece.hanging);
  const place = {
    job,
    setOut,
    load,
    ...sheetOf(job),
    standOffMm,
    outsideMm: standOffMm,
    armMm: standOffMm,
    shelf: shelfOf(job.building?.country),
    proven,
    batten: false,
    frame: 'timber',
    studCapOf: () => null,
  } as const;
  return [
    pinHook(1, place),
    pinHook(2, place),
    boardCandidate(SHORT_SCREW_IN, place, load.actions.perMark, 'usual'),
    TOGGLES,
  ];
}

const TOGGLES: Unusable = {
  ok: false,
  fastener: 'spring-toggle',
  name: 'a toggle',
  because: 'it needs 45 mm or more behind the board to open, and board on dabs has 10 to 40',
};
