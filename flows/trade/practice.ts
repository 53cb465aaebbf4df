import { cordFactor } from '../../core/caution/hanging/hanging.ts';
import { PULL_TEST, pullTestAllowable } from '../../core/fixing/proof/pull-test.ts';
import { TARGET_TILT, VISIBLE_TILT } from '../../core/layout/level.ts';
import { degrees, STANDARD_GRAVITY } from '../../core/quantity.ts';
import { tidy } from '../wording/length.ts';
import { by, figureBefore, type TradeAnswer } from './trade-answer.ts';

const NEWTONS_PER_KN = 1000;

/** Readings in kN, five or more: what one may carry. */
function pullTest(text: string): string | null {
  const readings = (text.match(/\d+\.\d+|\d+/g) ?? []).map((each) => Number(each) * NEWTONS_PER_KN);
  const test = pullTestAllowable(readings);
  if (!test.ok) return `${test.because.charAt(0).toUpperCase()}${test.because.slice(1)}. ${by(PULL_TEST)}`;
  const kilos = Math.floor(test.allowableN / STANDARD_GRAVITY);
  return `${tidy(test.allowableN / NEWTONS_PER_KN, 2)} kN each, about ${kilos} kg: a fifth of the mean. The screw’s bending may still govern. ${by(PULL_TEST)}`;
}

/** How much harder a flat cord pulls. */
function flatCord(text: string): string {
  const angle = figureBefore(text, '(?:degrees?|deg|°)') ?? 15;
  if (angle <= 0 || angle > 90) return 'Give me the angle from the horizontal, between 0 and 90 degrees.';
  return `At ${angle} degrees from the horizontal it pulls ${tidy(cordFactor(degrees(angle)), 2)} times the weight, T = W / (2 sin a). Keep it at 30 degrees or more, or hang from the rings. (Arithmetic; the 30 is our choice.)`;
}

export const PRACTICE_ANSWERS: readonly TradeAnswer[] = [
  { asks: [/\breadings?\b|\bpull ?tests?\b/, /\d.*\d.*\bkn\b/], answer: pullTest },
  {
    asks: [/\bpull ?tests?\b/],
    answer: () =>
      `Five or more, the same plug in the same wall, pulled until it lets go, away from the final holes; a fifth of their mean is what one may carry. ${by(PULL_TEST)}`,
  },
  { asks: [/\bflat\b|\bangle\b|\bdegrees?\b|°/, /\b(?:wire|cord|string|chain)\b/], answer: flatCord },
  {
    asks: [/\bone hook or two\b|\bhow many hooks\b/],
    answer: () =>
      'Two over 10 kg or wider than 600 mm: it hangs straighter, and if one lets go the other may hold. (Our choice, on a page about handling paintings.)',
  },
  {
    asks: [/\b(?:out of level|level|crooked|tilt)\b/, /\b(?:show|see|notice|how much)\b/],
    answer: () =>
      `About ${VISIBLE_TILT.value} degrees is seen, some 10 mm in a metre; aim for ${TARGET_TILT.value}. ${by(VISIBLE_TILT)}`,
  },
  {
    asks: [/\b(?:what|how) (?:height|high)\b|\beye level\b/],
    answer: () =>
      'Its middle at 1450 to 1550 mm (57 to 60 in) above the floor: a convention. Over furniture the gap wins, 150 to 250 mm. (Read in pages on gallery practice; the gap is common practice.)',
  },
  {
    asks: [/\bhammer\b/],
    answer: () =>
      'Rotary until you know it is solid, then hammer, and never through plaster or tile. No hammer at all in hollow or aerated block, board or lath. (Common practice, no source.)',
  },
  {
    asks: [/\b(?:pan|countersunk)\b.*\bhead\b|\bpan head\b|\bcountersunk\b/],
    answer: () =>
      'Under a ring, pan head, well wider than the ring’s opening; countersunk lets a ring slide off. In a batten, countersunk. (Common practice, no source.)',
  },
  {
    asks: [/\bfind\b.*\bstuds?\b/],
    answer: () =>
      'A magnet finds the board screws: dots in a line are a stud. Then two small pricks to find both its edges, and the screw in the middle; no pricks where the sheet may hold asbestos. (Common practice, no source.)',
  },
];
