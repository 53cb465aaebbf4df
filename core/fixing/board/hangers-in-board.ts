import { type Millimetres, newtons } from '../../quantity.ts';
import type { Why } from '../../why.ts';
import { envelope, type PointLoad, type WorstCheck, worse } from '../acting/worst-check.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { throughPanel } from '../timber/through-panel.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';

const GAUGE = 10;

export type HangersInBoard = {
  readonly worst: WorstCheck;
  readonly note: string;
  readonly screws: number;
  readonly why: () => Why[];
};

/**
 * The second check of a board across studs: each hanger's screw in the board, right through its thickness; where one
 * is not enough a hook plate on two, which the slot of a keyhole has no room for.
 */
export function hangersInBoard(place: BoardPlace, boardMm: Millimetres): HangersInBoard | null {
  const { perMark } = place.load.actions;
  const strength = throughPanel(timberRouteOf(place.job.building?.country), GAUGE, boardMm, place.standOffMm);
  const weighed = (screws: 1 | 2): WorstCheck | null =>
    perMark.reduce<WorstCheck | null>(
      (worst, each) => worse(worst, studCheck(sharedBy(each, screws), strength, null)),
      null,
    );
  const one = weighed(1);
  const mayDouble = place.job.piece.hanging.by !== 'keyholes';
  const screws = one !== null && one.utilisation > 1 && mayDouble ? 2 : 1;
  const worst = screws === 2 ? weighed(2) : one;
  if (worst === null) return null;
  const how =
    screws === 2
      ? `hook plates, each on two ${GAUGE} gauge screws one above the other,`
      : `${GAUGE} gauge screws`;
  return {
    worst,
    screws: screws * perMark.length,
    note: `The hangers go on ${how} through the whole thickness of the board, at the marks. A spacer of its thickness goes near the bottom of the frame.`,
    why: () => [
      {
        of: 'screws of the hangers',
        formula: 'marks x screws in each',
        inputs: { marks: perMark.length, 'screws in each': screws },
        result: `${screws * perMark.length}`,
        basis: strength.basis,
        symbols: 'marks x screws in each',
        paths: ['fixing.hangerScrews'],
      },
      ...utilisationWhy(worst, sharedBy(envelope(perMark), screws)).map((each) => ({
        ...each,
        of: `${each.of}, hanger to board`,
        basis: strength.basis,
      })),
    ],
  };
}

const sharedBy = ({ shearN, tensionN }: PointLoad, screws: 1 | 2): PointLoad => ({
  shearN: newtons(shearN / screws),
  tensionN: newtons(tensionN / screws),
});

/** Of a board's two checks the worse governs; the other is said. */
export function withHangers(
  toStuds: WorstCheck,
  hangers: HangersInBoard | null,
): { worst: WorstCheck; advice: string[] } {
  if (hangers === null) return { worst: toStuds, advice: [] };
  const percent = (check: WorstCheck): string => `${Math.round(check.utilisation * 100)} %`;
  return {
    worst: worse(toStuds, hangers.worst),
    advice: [
      `Board to studs is used to ${percent(toStuds)} of what it may bear, hanger to board to ${percent(hangers.worst)}.`,
    ],
  };
}
