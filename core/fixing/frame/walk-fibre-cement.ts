import { kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { splitBattenPoint } from '../batten/batten-actions.ts';
import { acrossStuds } from '../board/across-studs.ts';
import { type BoardAnchor, EXPANDING_SLEEVE, SPRING_TOGGLE, STRAP_TOGGLE } from '../board/board-anchors.ts';
import { boardCandidate } from '../board/board-candidate.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { studCandidate } from '../board/stud-candidate.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { practice } from '../proof/caps.ts';
import type { Gauge } from '../steel/screw-sizes.ts';

const AT = 'fibre cement on studs: lines 1 to 4';
/** Caps for a screw through a drilled hole in the sheet into a stud. */
export const FIBRE_CEMENT_STUD_CAPS = sourced(
  { 6: kg(0), 8: kg(0), 10: kg(15), 12: kg(15), 14: kg(15) } as const,
  'common-practice',
  AT,
  'common-practice',
);

const EDGE = 'At least 50 mm from an edge of the sheet, carbide bit on rotary, dust drawn off at the hole.';
const inSheet = (anchor: BoardAnchor, usualKg: number, capKg: number, note: string): BoardAnchor => ({
  ...anchor,
  usualKg,
  cap: practice(capKg, AT),
  capThin: practice(capKg, AT),
  sheet: { leastMm: 4, mostMm: 9 },
  note: `${note} ${EDGE}`,
});

/** What opens behind a thin hard sheet; a screw-in anchor cracks it. */
const ANCHORS: readonly BoardAnchor[] = [
  inSheet(
    { ...EXPANDING_SLEEVE, name: 'expanding sleeve, M5, short grip' },
    4,
    6,
    'The short one, grip 5 to 9 mm, measured at the hole; set it until it firms, hanger on last.',
  ),
  inSheet(
    { ...STRAP_TOGGLE, name: 'strap toggle, M5, wide washer' },
    5,
    8,
    'Collar tight, straps snapped off; a wide washer under the hanger.',
  ),
  inSheet(
    { ...SPRING_TOGGLE, name: 'spring toggle, M5, wide washer' },
    5,
    8,
    'Hanger and a wide washer on the bolt first; it must cover the hole.',
  ),
];

const INTO_STUDS: readonly (readonly [Gauge, number])[] = [
  [10, 38],
  [10, 50],
  [12, 50],
  [14, 50],
];

/** Fibre cement on studs, once asbestos is ruled out: studs, a batten across them, then what opens behind the sheet. */
export function fibreCementWalk(place: BoardPlace): readonly (Candidate | Unusable)[] {
  const across = ([10, 12] as const).map((gauge) => acrossStuds(gauge, place));
  const points = place.batten
    ? splitBattenPoint(place.job, place.setOut, place.load)
    : place.load.actions.perMark;
  const behind = ANCHORS.map((anchor) => boardCandidate(anchor, place, points, 'usual'));
  const toTheCap = ANCHORS.map((anchor) => boardCandidate(anchor, place, points, 'to-the-cap'));
  if (place.batten) return [...across, ...behind, ...toTheCap];
  return [
    ...INTO_STUDS.map(([gauge, into]) => studCandidate(gauge, into, place)),
    ...behind,
    ...across,
    ...toTheCap,
  ];
}
