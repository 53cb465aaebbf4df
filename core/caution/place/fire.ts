import { lengthText } from '../../layout/length-text.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { burns, gapAboveOpening } from './fire-gap.ts';

const AT = 'exc. 4, mantel rule; by analogy, a frame is not trim';
const NONE_WITHIN = sourced(mm(6 * MM_PER_INCH), 'IRC:R1001.11', AT, 'read-secondary');
const FREE_FROM = sourced(mm(12 * MM_PER_INCH), 'IRC:R1001.11', AT, 'read-secondary');
const PER_GAP = sourced(1 / 8, 'IRC:R1001.11', `${AT}: 1/8 in for each inch`, 'from-memory');
const FEEL = sourced(0, 'our-choice', 'safety 6.3: feel the wall', 'our-choice');

/** How far a frame may stick out this far above a fireplace's opening; null where the rule sets no limit. Millimetres. */
export function mostProjection(gapMm: Millimetres): Millimetres | null {
  if (gapMm >= FREE_FROM.value) return null;
  return gapMm < NONE_WITHIN.value ? mm(0) : mm(gapMm * PER_GAP.value);
}

/** Whether a wooden frame above an opening stops or warns: `stop` where it sticks out further than the gap allows. */
export function aboveFire(gapMm: Millimetres, projectionMm: Millimetres): 'stop' | 'warn' {
  const most = mostProjection(gapMm);
  return most !== null && projectionMm > most ? 'stop' : 'warn';
}

/** Only over a mantel does the job tell a gap, and the opening is lower still: what passes here passes there. */
function tooNearMantel({ job }: Facts): boolean {
  const up = job.place?.up;
  if (job.wall?.datum?.kind !== 'mantel' || up?.by !== 'bottom-above') return false;
  return aboveFire(up.mm, job.piece?.depthMm ?? mm(0)) === 'stop';
}

const whole =
  (below: string) =>
  (facts: Facts): boolean =>
    facts.whole && facts.job.place?.below === below;

const measured = (facts: Facts): string =>
  tooNearMantel(facts)
    ? ` Measure from the opening too: a wooden frame may stick out an eighth of its distance above the opening, needs ${Math.round(FREE_FROM.value)} mm beyond that, and nothing goes within ${Math.round(NONE_WITHIN.value)} mm.`
    : ` Nothing wooden goes within ${Math.round(NONE_WITHIN.value)} mm of the opening.`;

/** Measured, and nearer than the rule allows; nothing of any depth goes within the least distance. */
function tooNearOpening(facts: Facts): boolean {
  const gap = gapAboveOpening(facts);
  if (facts.job.place?.below !== 'fireplace' || gap === null || !burns(facts)) return false;
  return gap < NONE_WITHIN.value || aboveFire(gap, facts.job.piece?.depthMm ?? mm(0)) === 'stop';
}

const fromOpening = (gap: Millimetres): string =>
  `${lengthText(mm(Math.abs(gap)))} ${gap < 0 ? 'below' : 'above'}`;

/** How much higher it would have to hang, and how thin it would have to be where it is. */
function clearOfOpening(facts: Facts): string {
  const gap = gapAboveOpening(facts) ?? mm(0);
  const depth = facts.job.piece?.depthMm ?? mm(0);
  const needed = Math.min(FREE_FROM.value, Math.max(NONE_WITHIN.value, depth / PER_GAP.value));
  const thinner = mostProjection(gap) ?? mm(0);
  const or = thinner > 0 ? `, or a piece no more than ${lengthText(thinner)} deep` : '';
  return `Raise it by ${lengthText(mm(needed - gap))}${or}, or choose another wall.`;
}

/** Over a fire. Where the distance to the opening was not given the published distances are spoken, not judged. */
export const fireRules: readonly Rule[] = [
  {
    id: 'C-FP-1',
    severity: 'stop',
    applies: tooNearOpening,
    text: (facts) =>
      `Too close to the fire for anything that burns: its bottom edge is ${fromOpening(gapAboveOpening(facts) ?? mm(0))} the top of the opening. Nothing goes within ${Math.round(NONE_WITHIN.value)} mm of it; beyond that it may stick out an eighth of the distance, and any depth from ${Math.round(FREE_FROM.value)} mm.`,
    clears: clearOfOpening,
    basis: from(NONE_WITHIN, FREE_FROM, PER_GAP),
  },
  {
    id: 'C-FP-2',
    severity: 'warn',
    applies: whole('fireplace'),
    text: (facts) =>
      `Over a fire: run it for an hour and feel the wall. If you can't hold your hand there, don't hang it there. Read the appliance's manual.${measured(facts)} Don't drill a chimney breast without knowing where the flue runs.`,
    basis: from(NONE_WITHIN, FREE_FROM, PER_GAP, FEEL),
  },
  {
    id: 'C-FP-2',
    severity: 'note',
    applies: whole('fireplace-unused'),
    text: 'The fireplace is not used: if it is ever lit again, take the piece down first. Know where the flue runs before drilling a chimney breast.',
    basis: from(FEEL),
  },
];
