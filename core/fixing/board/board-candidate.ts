import { newtons } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { knownStuds } from '../../wall/studs.ts';
import type { PointLoad } from '../acting/worst-check.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import { cappedCandidate } from '../proof/capped-candidate.ts';
import { OUTWARD_SHARE } from '../proof/capped-check.ts';
import { capForce } from '../proof/caps.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { anchorFixing, anchorWhys, roomBehind, suppliedReaches } from './board-anchor-fixing.ts';
import { BOARD_ONLY, type BoardAnchor, SHEET, UNDER_TILE } from './board-anchors.ts';
import type { BoardPlace } from './board-place.ts';
import { timberMarks } from './timber-marks.ts';

const OVER_PEOPLE: readonly string[] = ['bed', 'sofa', 'cot'];

/**
 * A fixing in the board alone, at each mark; `points` are what each must bear. `reach`: up to what is usual for
 * it, or the rest up to its cap, which says nothing of what has been said already.
 */
export function boardCandidate(
  anchor: BoardAnchor,
  place: BoardPlace,
  points: readonly PointLoad[],
  reach: 'usual' | 'to-the-cap',
): Candidate | Unusable {
  const { fastener, name } = anchor;
  const last = reach === 'to-the-cap';
  const no = (because: string): Unusable => ({
    ok: false,
    fastener,
    name,
    because,
    ...(last && { quiet: true as const }),
  });
  const why = whyNot(anchor, place);
  if (why !== null) return no(why);
  const inTimber = timberMarks(place);
  if (inTimber === 'all') return no('every mark has a stud behind it');
  if (inTimber === 'edge')
    return no('a mark falls on the edge of a stud, where neither a screw nor an anchor holds');

  const studs = knownStuds(place.job.wall);
  return cappedCandidate({
    ...anchor,
    cap: place.proven ?? capIn(anchor, place),
    armMm: place.armMm,
    points,
    reach,
    fixing: (worst) => anchorFixing(anchor, place, worst),
    why: () => anchorWhys(anchor, place),
    taken: place.job.wall.voidMm === undefined ? [roomBehind(anchor)] : [],
    advice: [
      ...(studs || place.job.wall.baseMaterial === 'plasterboard-on-dabs'
        ? []
        : ['A stud is the better fixing: look for one first.']),
      ...inTimber.map((id) => inStead(id, place)),
    ],
  });
}

/** Where one mark has a stud behind it and another has not. */
const inStead = (id: string, { frame }: BoardPlace): string =>
  frame === 'steel'
    ? `Mark ${id} has a steel stud behind it: a strap toggle through board and flange there, or a thin-steel screw.`
    : `Mark ${id} has a stud behind it: use a 10 gauge wood screw with 38 mm or more in the wood there, with a pilot.`;

function whyNot(anchor: BoardAnchor, place: BoardPlace): string | null {
  const { batten, beyondMm, tiled, job, load, boardMm, layers, setOut, proven } = place;
  const { wholeKg, withTogglesKg, toggles } = BOARD_ONLY.value;
  const limit = anchor.toggle && setOut.marks.length >= toggles ? withTogglesKg : wholeKg;
  if (load.massKg > limit) return `${limit} kg is the most a whole piece should hang on board alone`;
  const { leastMm, mostMm } = anchor.sheet ?? {
    leastMm: SHEET.value.thinnestMm,
    mostMm: SHEET.value.oneSheetUpToMm,
  };
  if (boardMm < leastMm) return `a sheet of ${boardMm} mm is too thin for it`;
  if (batten && !anchor.toggle) return 'what it is supplied with is too short to hold a batten';
  if (layers > 1 && anchor.capTwo === undefined) return 'it is for one sheet only';
  if (tiled && !anchor.toggle) return 'through a tile only a toggle, or a stud';
  if (layers === 1 && !anchor.toggle && beyondMm > mostMm) return 'the sheet is too thick for it';
  if (!suppliedReaches(anchor, place)) return 'the screw it is supplied with does not reach through';
  const clear = job.wall.voidMm;
  if (clear !== undefined && clear < anchor.voidMm)
    return `it needs ${anchor.voidMm} mm clear behind the sheet, and there are ${clear}`;
  if (proven === null && anchor.notOverPeople && OVER_PEOPLE.includes(job.place.below ?? 'nothing'))
    return 'not above a bed or a seat';
  return null;
}

function capIn(anchor: BoardAnchor, { boardMm, layers, tiled }: BoardPlace): HoldingCap {
  const cap =
    layers > 1 && anchor.capTwo
      ? anchor.capTwo
      : anchor.sheet === undefined && boardMm < SHEET.value.thinUpToMm
        ? anchor.capThin
        : anchor.cap;
  const share = tiled ? UNDER_TILE.value : 1;
  return {
    mode: 'anchor-cap',
    forceN: newtons(capForce(cap) * share),
    basis: [basisOf(cap), basisOf(OUTWARD_SHARE), ...(tiled ? [basisOf(UNDER_TILE)] : [])],
    noSource: true,
  };
}
