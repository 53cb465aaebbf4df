import { mm } from '../../quantity.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { cappedCandidate, type Reach } from '../proof/capped-candidate.ts';
import { practiceCap } from '../proof/holding-cap.ts';
import { nominalOf } from '../steel/screw-sizes.ts';
import { anchorFixing, anchorWhys } from './board-anchor-fixing.ts';
import { STRAP_TOGGLE } from './board-anchors.ts';
import type { BoardPlace } from './board-place.ts';
import { missesStud } from './misses-stud.ts';
import { FLANGE_MM, FLANGE_TOGGLE } from './steel-stud-rules.ts';
import { flangeDepthWhy } from './thin-steel-screw.ts';

const FLANGE_NOTE =
  'Hole through board and flange, a little beside the flange’s middle and away from the web; a metal-cutting bit, slow. Bar through sideways, collar tight, straps snapped off; a washer under the hanger. Never cut a stud.';

/** A strap toggle through board and stud flange at every mark: its bar bears on steel and not on board. */
export function flangeToggle(place: BoardPlace, reach: Reach): Candidate | Unusable {
  const { usualKg, cap } = FLANGE_TOGGLE;
  const anchor = {
    ...STRAP_TOGGLE,
    name: 'strap toggle, M5, through board and stud flange',
    note: FLANGE_NOTE,
  };
  const { fastener, name, shank } = anchor;
  const no = (because: string): Unusable => ({
    ok: false,
    fastener,
    name,
    because,
    ...(reach === 'to-the-cap' && { quiet: true as const }),
  });
  const misses = missesStud(place, nominalOf(10).nominalMm);
  if (misses !== null) return no(misses);
  return cappedCandidate({
    fastener,
    name,
    shank,
    usualKg,
    cap: place.proven ?? practiceCap(cap, 'anchor-cap'),
    armMm: place.armMm,
    points: place.load.actions.perMark,
    reach,
    fixing: (worst) => {
      const made = anchorFixing(anchor, place, worst);
      const depthMm = mm(Math.ceil(place.beyondMm + FLANGE_MM.value));
      return { ...made, bit: { ...made.bit, kind: place.tiled ? 'tile' : 'metal', depthMm } };
    },
    why: () => [flangeDepthWhy(place), ...anchorWhys(anchor, place).filter(({ of }) => of !== 'hole depth')],
    advice: ['Find both edges of each stud before drilling: the toggle goes through its flange.'],
    taken: [],
  });
}
