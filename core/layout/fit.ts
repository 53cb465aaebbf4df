import type { Frame } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import type { Wall } from '../wall/wall.ts';
import { ceilingRise } from './ceiling.ts';
import { type Datum, datumName, datumRise } from './datum.ts';
import type { BottomEdge } from './heights.ts';
import { lengthText } from './length-text.ts';
import { overOpening } from './openings.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE, TAPE_READING } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** What must be known to say whether a frame fits: where it is, on what wall, and what its heights are taken from. */
export type Fit = { frame: Frame; wall: Wall; datum: Datum; bottom: BottomEdge; firstMarkMm: Millimetres };

/** The first reason why a frame does not fit its wall, with the number it is over by; null when it fits. */
export function misfit(fit: Fit): DoesNotFit | null {
  return offTheWall(fit, 'piece') ?? overOpening(fit.frame, fit.wall, fit.bottom.levelAboveFloorMm);
}

/** The same of a piece or a whole group, but for the windows and doors it may stand round. */
export function offTheWall(fit: Fit, what: 'piece' | 'group'): DoesNotFit | null {
  const { frame, wall } = fit;
  const wider = mm(frame.rightMm - frame.leftMm - wall.widthMm);
  if (wider > NOISE) {
    return doesNotFit(
      'widerThanWall',
      `The ${what} is ${lengthText(wider)} wider than the wall.`,
      `Choose a wider wall, or a narrower ${what}.`,
      wider,
    );
  }
  return pastTheEnd(frame, wall, what) ?? throughCeiling(fit, what) ?? belowDatum(fit, what);
}

function pastTheEnd(frame: Frame, wall: Wall, what: string): DoesNotFit | null {
  const left = mm(0 - frame.leftMm);
  const right = mm(frame.rightMm - wall.widthMm);
  const over = mm(Math.max(left, right));
  if (!(over > NOISE)) return null;
  const [end, way] = left > right ? ['left', 'right'] : ['right', 'left'];
  return doesNotFit(
    'pastTheEnd',
    `The ${what} would run ${lengthText(over)} past the ${end} end of the wall.`,
    `Move it at least ${lengthText(over)} to the ${way}.`,
    over,
  );
}

/** Height of the ceiling in the frame's own heights where it is known; at a datum of unknown height, the most it can be. */
export function ceilingAt(
  { wall, bottom, datum, firstMarkMm }: Omit<Fit, 'frame'>,
  xMm: Millimetres,
): number | null {
  const level =
    bottom.downFromMm ??
    (wall.heightMm === undefined ? null : wall.heightMm - (bottom.levelAboveFloorMm ?? 0));
  if (level === null) return null;
  return datum.kind === 'ceiling'
    ? level + datumRise(datum, wall.widthMm, firstMarkMm, xMm)
    : level + ceilingRise(wall, mm(0), xMm);
}

/** A slope may close a gap by what a tape can't read; a level clash may not. */
function clash(levelOver: number, slopedOvers: readonly number[]): Millimetres | null {
  const worst = mm(Math.max(levelOver, ...slopedOvers));
  return levelOver > NOISE || worst > TAPE_READING.value ? worst : null;
}

function throughCeiling(fit: Fit, what: string): DoesNotFit | null {
  const { frame } = fit;
  const over = clash(
    frame.topMm - (ceilingAt(fit, fit.firstMarkMm) ?? Infinity),
    [frame.leftMm, frame.rightMm].map((x) => frame.topMm - (ceilingAt(fit, x) ?? Infinity)),
  );
  if (over === null) return null;
  return doesNotFit(
    'throughCeiling',
    `The top of the ${what} would be ${lengthText(over)} above the ceiling.`,
    `Lower it by at least ${lengthText(over)}.`,
    over,
  );
}

/** A single nosing has wall beside and below it, so there only the floor is in the way, where its height is known; a flight is in the way along its whole line. */
function belowDatum({ frame, wall, datum, bottom, firstMarkMm }: Fit, piece: string): DoesNotFit | null {
  const fromFloor = datum.kind === 'ceiling' || (datum.kind === 'nosing' && !datum.stairs);
  if (fromFloor && bottom.levelAboveFloorMm === null) return null;
  const levelOver = (fromFloor ? 0 - (bottom.levelAboveFloorMm ?? 0) : 0) - frame.bottomMm;
  const corners = fromFloor ? [] : [frame.leftMm, frame.rightMm];
  const over = clash(
    levelOver,
    corners.map((x) => levelOver + datumRise(datum, wall.widthMm, firstMarkMm, x)),
  );
  if (over === null) return null;
  const what = fromFloor ? 'the floor' : datumName(datum.kind);
  return doesNotFit(
    'belowDatum',
    `The bottom of the ${piece} would be ${lengthText(over)} below ${what}.`,
    `Raise it by at least ${lengthText(over)}.`,
    over,
  );
}
