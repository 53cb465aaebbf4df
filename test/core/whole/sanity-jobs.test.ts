import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

type Accept = { verdicts: string[]; fasteners: string[]; never?: string[]; cautions?: string[] };
type Check = { frameMm: number[]; marksMm?: number[][]; battenUpMm?: number };
type Row = { id: string; title: string; job: Job; accept: Accept; check: Check };

const rows = sanity.jobs as unknown as Row[];

/** Plain words of the reference for a caution, and what a plan must say somewhere to have said it. */
const SAID: Record<string, RegExp> = {
  'depth over 50 mm': /over 50 mm/i,
  'two people': /two people/i,
  dust: /dust/i,
  'measure up at one mark only': /measure up at .* only/i,
  'rotary only': /rotary, no hammer/i,
  'no published value': /no public|no source|common practice/i,
  'flat cord': /flat/i,
  'one hook and wide': /two hooks/i,
  'team lift': /lift/i,
  'old wiring': /wiring/i,
  'tensioned concrete': /tension/i,
  'scan before drilling': /scan/i,
  'offer batten': /batten|board across/i,
  tile: /tile/i,
  'wet area': /wet/i,
  'lead paint': /lead/i,
  heritage: /heritage|protected/i,
  'gap behind the board': /gap behind the board/i,
  'keyhole head size': /head must pass the round of the keyhole/i,
  'no hammer': /no hammer/i,
  'silica dust': /silica|dust/i,
};

test.each(rows)('$id: $title (common practice, no source)', ({ job, accept, check }) => {
  const plan = planOf(job);
  expect(accept.verdicts).toContain(plan.verdict);
  if (plan.verdict === 'stop') {
    expect(plan.marks).toEqual([]);
    expect(plan.fixing).toBeNull();
    expect(plan.clear.length).toBeGreaterThan(0);
    return;
  }
  const { frame, fixing } = plan;
  expect(frame && [frame.leftMm, frame.rightMm, frame.bottomMm, frame.topMm]).toEqual(check.frameMm);
  if (check.marksMm)
    expect(plan.marks.map(({ fromLeftMm, upMm }) => [fromLeftMm, upMm])).toEqual(check.marksMm);
  if (check.battenUpMm) expect(plan.batten?.upMm).toBe(check.battenUpMm);
  expect(accept.fasteners.some((root) => fixing?.fastener.includes(root))).toBe(true);
  expect(accept.never?.some((root) => fixing?.fastener.includes(root)) ?? false).toBe(false);
  const said = JSON.stringify(plan);
  for (const words of accept.cautions ?? []) {
    const pattern = SAID[words];
    if (!pattern) throw new Error(`no pattern for the words ${words}`);
    expect(said, words).toMatch(pattern);
  }
});
