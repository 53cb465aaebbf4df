import type { BattenLine, Frame } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import { type KnownStuds, studsBetween } from '../wall/studs.ts';
import { lengthText } from './length-text.ts';

/** Screws along the wall half of a batten on masonry. */
const BATTEN_SCREWS = sourced(
  { atLeast: 4, closest: mm(250), furthest: mm(400) },
  'common-practice',
  'trade 1.1 line 5: four or more, 250 to 400 apart',
  'common-practice',
);
/** From a batten's end to its first screw, so that the end does not split. */
const BATTEN_END = sourced(mm(50), 'our-choice', 'end screw of a batten', 'our-choice');
/** More screws than this is no batten that one person sets out with letters. */
export const BATTEN_MOST = sourced(
  26,
  'our-choice',
  'one letter of the alphabet for each mark',
  'our-choice',
);
/** Room above the frame for lifting a batten on and off: its engagement and this much more. */
const LIFT_OFF = sourced(mm(5), 'common-practice', 'layout 10: engagement plus 5', 'our-choice');

/** Wall half of a split batten: centred on the frame, its seat at the line. Heights as in the frame. */
export function battenLine(frame: Frame, fromTopMm: Millimetres, lengthMm: Millimetres): BattenLine {
  const middle = (frame.leftMm + frame.rightMm) / 2;
  return {
    fromLeftMm: mm(middle - lengthMm / 2),
    toLeftMm: mm(middle + lengthMm / 2),
    upMm: mm(frame.topMm - fromTopMm),
  };
}

/** Screws evenly along a batten of masonry: four or more and at most 400 apart; fewer where four come closer than 250. */
export function evenScrews(line: Pick<BattenLine, 'fromLeftMm' | 'toLeftMm'>): Millimetres[] {
  const { atLeast, closest, furthest } = BATTEN_SCREWS.value;
  const first = line.fromLeftMm + BATTEN_END.value;
  const run = line.toLeftMm - BATTEN_END.value - first;
  if (run <= 0) return [mm((line.fromLeftMm + line.toLeftMm) / 2)];
  const wanted = Math.max(atLeast, Math.ceil(run / furthest) + 1);
  const count = run / (wanted - 1) < closest ? Math.max(2, Math.floor(run / closest) + 1) : wanted;
  return Array.from({ length: Math.min(count, BATTEN_MOST.value + 1) }, (_, at) =>
    mm(first + (run * at) / (count - 1)),
  );
}

/** Screws of a batten in the studs it crosses, clear of its ends; null when it crosses fewer than two. */
export function studScrews(
  line: Pick<BattenLine, 'fromLeftMm' | 'toLeftMm'>,
  studs: KnownStuds,
): Millimetres[] | null {
  const crossed = studsBetween(
    mm(line.fromLeftMm + BATTEN_END.value),
    mm(line.toLeftMm - BATTEN_END.value),
    studs,
    BATTEN_MOST.value + 1,
  );
  return crossed.length > 1 ? crossed : null;
}

/** Room that must be free above a frame on a split batten: engagement + 5 mm. */
export function liftOffNeeded(engagementMm: Millimetres): Millimetres {
  return mm(engagementMm + LIFT_OFF.value);
}

/** What is said with a batten: spacer, lift-off room, too few screws. */
export function battenAdvice(
  screws: readonly Millimetres[],
  line: BattenLine,
  screwed: 'in-studs' | 'missing-studs' | 'even',
  aboveFrameMm: Millimetres | null,
): string[] {
  const advice = [
    'Set the wall half level, its sloped edge to the line; a spacer of the same thickness goes near the bottom of the frame.',
  ];
  if (aboveFrameMm !== null) {
    advice.push(
      `There are ${lengthText(aboveFrameMm)} above the frame for lifting it on: the batten’s engagement plus ${lengthText(LIFT_OFF.value)} must fit in that.`,
    );
  }
  if (screwed === 'in-studs') {
    advice.push('Put two screws in each stud the batten crosses, where its depth allows.');
  } else if (screwed === 'missing-studs') {
    advice.push(
      'This batten crosses fewer than two of the studs you gave: use one long enough to reach two.',
    );
  } else if (screws.length < BATTEN_SCREWS.value.atLeast) {
    advice.push(
      `A batten of ${lengthText(mm(line.toLeftMm - line.fromLeftMm))} takes only ${screws.length} ${screws.length === 1 ? 'screw' : 'screws'} at ${lengthText(BATTEN_SCREWS.value.closest)} or more: a longer one spreads the load better.`,
    );
  }
  return advice;
}
