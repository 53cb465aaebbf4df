import type { Why } from '../../plan-shape.ts';
import type { Millimetres } from '../../quantity.ts';
import { envelope, type WorstCheck, worse } from '../acting/worst-check.ts';
import { timberRouteOf } from '../timber/route.ts';
import { studCheck } from '../timber/stud-check.ts';
import { throughPanel } from '../timber/through-panel.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';
import type { BoardPlace } from './board-place.ts';

const GAUGE = 10;

export type HangersInBoard = {
  readonly worst: WorstCheck;
  readonly note: string;
  readonly why: () => Why[];
};

/** The second check of a board across studs: each hanger's screw in the board, right through its thickness. */
export function hangersInBoard(place: BoardPlace, boardMm: Millimetres): HangersInBoard | null {
  const { perMark } = place.load.actions;
  const strength = throughPanel(timberRouteOf(place.job.building?.country), GAUGE, boardMm, place.standOffMm);
  let worst: WorstCheck | null = null;
  for (const each of perMark) worst = worse(worst, studCheck(each, strength, null));
  if (worst === null) return null;
  const held = worst;
  return {
    worst: held,
    note: `The hangers go on ${GAUGE} gauge screws through the whole thickness of the board, at the marks. A spacer of its thickness goes near the bottom of the frame.`,
    why: () =>
      utilisationWhy(held, envelope(perMark)).map((each) => ({
        ...each,
        of: `${each.of}, hanger to board`,
        basis: strength.basis,
      })),
  };
}

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
