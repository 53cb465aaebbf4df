import { ceilingApart, lowestCeiling } from '../../layout/ceiling.ts';
import { TARGET_TILT, tiltSeen, VISIBLE_TILT } from '../../layout/level.ts';
import type { Caution } from '../../plan-shape.ts';
import { type Degrees, mm } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const SMALL_GAP = sourced(mm(300), 'our-choice', 'safety 8: level or parallel', 'our-choice');
const CEILINGS = sourced(0, 'NHBC-2020', '9.1.3: ceilings 3 mm per 1 m', 'read');

/** What a tilt in degrees, either way round, is worth saying: nothing under 0.2, a note to 0.6, then a warn. */
export function tiltCaution(tilt: Degrees): Caution | null {
  const seen = tiltSeen(tilt);
  const basis = [basisOf(VISIBLE_TILT), basisOf(TARGET_TILT)];
  if (seen === 'level') return null;
  return seen === 'crooked'
    ? { id: 'C-LV-2', severity: 'warn', text: 'That will look crooked. Mark it again.', basis }
    : { id: 'C-LV-1', severity: 'note', text: 'You may just notice this. Worth re-marking.', basis };
}

/** From the top of the frame up to the ceiling, millimetres; down from a ceiling of unknown height it was measured. */
function gapAbove({ job, setOut, onWall: { topMm, leftMm, rightMm } }: Facts): number | null {
  const { heightMm, datum } = job.wall ?? {};
  const ceiling = lowestCeiling(ceilingApart(job.wall ?? {}), leftMm ?? mm(0), rightMm ?? mm(0));
  if (heightMm !== undefined) return topMm === null || ceiling === null ? null : ceiling - topMm;
  return datum?.kind === 'ceiling' && setOut ? 0 - setOut.frame.topMm : null;
}

/** A narrow gap under a ceiling whose level nobody knows, or that is known to slope. */
function wedge(facts: Facts): boolean {
  const gap = gapAbove(facts);
  const { ceilingFallMm, datum } = facts.job.wall ?? {};
  const levelCeiling = ceilingFallMm === 0 || (datum?.kind === 'ceiling' && datum.fallMm === 0);
  return facts.whole && facts.setOut !== null && gap !== null && gap < SMALL_GAP.value && !levelCeiling;
}

/** Level, or along the ceiling. */
export const levelRules: readonly Rule[] = [
  {
    id: 'C-LV-3',
    severity: 'note',
    applies: wedge,
    text: 'Little room under the ceiling: if the ceiling is out of level, dead level will look wrong against it. Which should it follow?',
    basis: from(SMALL_GAP, CEILINGS),
  },
];
