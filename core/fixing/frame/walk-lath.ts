import { kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { splitBattenPoint } from '../batten/batten-actions.ts';
import { acrossStuds } from '../board/across-studs.ts';
import { SPRING_TOGGLE } from '../board/board-anchors.ts';
import { boardCandidate } from '../board/board-candidate.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { studCandidate } from '../board/stud-candidate.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { practice } from '../proof/caps.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { lathScrew } from './lath-screw.ts';
import { railHook } from './rail-hook.ts';

const AT = 'lath and plaster: lines 2 to 5';
/** Caps for a screw through plaster and lath into a stud. */
export const LATH_STUD_CAPS = sourced(
  { 6: kg(0), 8: kg(0), 10: kg(8), 12: kg(10), 14: kg(10) } as const,
  'common-practice',
  AT,
  'common-practice',
);
/** A board across studs here: the whole piece. */
export const LATH_BOARD_KG = 40;

const ACROSS_LATHS = {
  ...SPRING_TOGGLE,
  name: 'spring toggle across two laths, M5',
  usualKg: 3,
  cap: practice(5, AT),
  capThin: practice(5, AT),
  sheet: { leastMm: 0, mostMm: 60 },
  note: 'Only where the keys are sound: any rattle, and it is no place for it. Hanger and plate washer on the bolt first; drill slowly, rotary; the washer must cover the hole.',
};

/** Over this the laths are not asked to carry: studs, or a board across them. */
const ON_LATHS = sourced(
  kg(5),
  'our-choice',
  'a piece is heavy for laths over 5 kg, as the caution on lath and plaster says',
  'our-choice',
);

const INTO_STUDS: readonly Gauge[] = [10, 12, 14];

/** Lath and plaster: timber first, then the lath while it is light; a sound picture rail wherever there is one. */
export function lathWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
  const across = ([12, 14] as const).map((gauge) => acrossStuds(gauge, place));
  const points = place.batten
    ? splitBattenPoint(place.job, place.setOut, place.load)
    : place.load.actions.perMark;
  if (place.tiled) return [TILED];
  if (place.batten) return [...across, ...railHook(place)];
  const timber = [...railHook(place), ...INTO_STUDS.map((gauge) => studCandidate(gauge, 40, place))];
  if (place.proven === null && !(place.load.massKg <= ON_LATHS.value))
    return [...timber, ...across, TOO_HEAVY];
  return [
    ...timber,
    lathScrew(place, 'usual'),
    boardCandidate(ACROSS_LATHS, place, points, 'usual'),
    ...across,
    lathScrew(place, 'to-the-cap'),
    boardCandidate(ACROSS_LATHS, place, points, 'to-the-cap'),
  ];
}

const TOO_HEAVY: Unusable = {
  ok: false,
  fastener: 'lath-screw',
  name: 'a screw in a lath, or a toggle across two',
  because: `the piece is over ${ON_LATHS.value} kg, and only studs count`,
};

const TILED: Unusable = {
  ok: false,
  fastener: 'lath-screw',
  name: 'anything in lath and plaster under a tile',
  because: 'drilling the tile shakes the plaster off its keys; another wall',
};
