import { type Millimetres, mm } from '../quantity.ts';
import type { DoesNotFit } from './set-out.ts';

/** Ids of the reasons why a piece can't be set out; ours, beside the cautions of the reference. */
export const WHY_NOT = {
  notALength: 'C-FT-0',
  widerThanWall: 'C-FT-1',
  pastTheEnd: 'C-FT-2',
  tooWideBetween: 'C-FT-3',
  throughCeiling: 'C-FT-4',
  belowDatum: 'C-FT-5',
  overOpening: 'C-FT-6',
  hangerOutside: 'C-FT-7',
  impossibleCord: 'C-FT-8',
  heightNotSaid: 'C-FT-9',
  tooManyScrews: 'C-FT-10',
  noRoomForGaps: 'C-FT-11',
} as const;

/** A reason why not, with the number it is over by (0 where a figure is missing rather than too big). */
export function doesNotFit(
  why: keyof typeof WHY_NOT,
  text: string,
  clears: string,
  overByMm: Millimetres = mm(0),
): DoesNotFit {
  return { ok: false, id: WHY_NOT[why], text, overByMm, clears };
}
