import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

const typical = sanity.jobs.find(({ id }) => id === 'SJ-02')?.job as unknown as Job;
const planWith = (proof: Job['proof'], below?: 'walkway' | 'nothing') =>
  planOf({ ...typical, ...(proof && { proof }), place: { ...typical.place, ...(below && { below }) } });

test.each([
  [{ packetUltimateN: 1000 }, 200, 'divided by 5'],
  [{ packetUltimateN: 1000, packetFactor: 4 }, 250, 'divided by 4'],
  [{ packetUltimateN: 1000, packetFactor: 0.5 }, 200, 'divided by 5'],
  // A factor of 1 would take a breaking load for a working one.
  [{ packetUltimateN: 1000, packetFactor: 1 }, 200, 'divided by 5'],
  // Of a breaking load over its factor and a working load the lower holds.
  [{ packetUltimateN: 1000, packetRatingN: 90 }, 90, 'working load'],
] as const)(
  'a packet of %j may bear %s N for good, %s (TMS 402 8.1.3.1 for tests; for a packet our choice)',
  (proof, newtons, said) => {
    const { why, advice } = planWith({ ...proof, saidBy: 'Robin' });
    const cap = why.find(({ of }) => of === 'cap');
    expect(cap?.inputs.ratedN).toBe(newtons);
    expect(advice.join(' ')).toContain(said);
    expect(advice.join(' ')).toContain('Robin read from the packet');
  },
);

test('our own factor is cited only where the packet gives none', () => {
  const cites = (proof: Job['proof']) =>
    planWith(proof)
      .why.find(({ of }) => of === 'cap')
      ?.basis.map(({ id }) => id);
  expect(cites({ packetUltimateN: 1000 })).toContain('TMS402');
  expect(cites({ packetUltimateN: 1000, packetFactor: 4 })).not.toContain('TMS402');
});

test('a breaking load that is no number changes nothing', () => {
  const plain = planWith(undefined);
  for (const packetUltimateN of [0, -5, Number.NaN, Number.POSITIVE_INFINITY])
    expect(planWith({ packetUltimateN }).fixing).toEqual(plain.fixing);
});

test('where people pass below a grab of 250 N is reckoned and said, and nowhere else (our choice)', () => {
  const passed = planWith(undefined, 'walkway');
  const grab = passed.why.find(({ of }) => of === 'a grab');
  // 8 kg on two rings: 39.2 N each, and 250 more.
  expect(grab?.result).toBe('289 N');
  expect(passed.advice.join(' ')).toContain('250 N');
  expect(planWith(undefined, 'nothing').why.some(({ of }) => of === 'a grab')).toBe(false);
});
