import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Facts } from './facts.ts';
import { from, type Rule } from './rule.ts';

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

/** Over a fire. The distance to the opening is no field of a job, so the published distances are spoken, not judged. */
export const fireRules: readonly Rule[] = [
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
