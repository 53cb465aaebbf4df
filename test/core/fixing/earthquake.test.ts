import { expect, test } from 'vitest';
import { asceRatio } from '../../../core/fixing/acting/seismic.ts';
import { coreNeeded } from '../../../core/fixing/steel/shank-strength.ts';
import type { Building, Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import { mm, newtons } from '../../../core/quantity.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

const typical = sanity.jobs.find(({ id }) => id === 'SJ-02')?.job as unknown as Job;
const planIn = (building: Building, massKg?: number) =>
  planOf({
    ...typical,
    building: { ...typical.building, ...building },
    piece: { ...typical.piece, ...(massKg !== undefined && { massKg }) } as Job['piece'],
  });
const shaking = (building: Building, massKg?: number) =>
  planIn(building, massKg).why.find(({ of }) => of === 'sideways in an earthquake');

test.each([
  // 0.4 x 1 x 1 x (1 + 2 z/h) / 2.5: the roof 0.48, the ground 0.16 raised to 0.3 S_DS.
  [1, 0.48],
  [0, 0.3],
])('at z/h %s a part is pulled sideways by %s of its weight [ASCE 7-16 13.3-1, read]', (zOverH, share) => {
  expect(asceRatio({ sDs: 1, ap: 1, rp: 2.5, ip: 1, zOverH })).toBeCloseTo(share, 9);
});

test.each([
  // Adelaide in the reference: 0.10 x 1.3 x 1.51 / 2.5; four times that in New Zealand; 0.75 / 2 in Europe.
  [{ country: 'AU', seismic: true }, 0.08, 'AS 1170.4'],
  [{ country: 'NZ' }, 0.31, 'AS 1170.4'],
  [{ country: 'EU', seismic: true }, 0.38, 'EN 1998-1'],
] as const)(
  '%j: %s of the weight sideways by %s, with what was taken (AS read, EN from memory)',
  (building, share, route) => {
    const why = shaking(building);
    expect(why?.inputs.shareOfWeight).toBeCloseTo(share, 9);
    expect(why?.formula).toContain(route);
    const plan = planIn(building);
    expect(plan.advice.join(' ')).toMatch(
      /In an earthquake it pulls sideways .* taken: .* the fixing is then used to \d+ %/,
    );
    expect(plan.assumptions.map(({ field }) => field)).toContain('building.seismic');
  },
);

test('in America 20 lb or less is exempt, and a pound more is not [ASCE 7-16, from memory]', () => {
  expect(shaking({ country: 'US', seismic: true }, 9)).toBeUndefined();
  expect(shaking({ country: 'US', seismic: true }, 9.5)?.inputs.shareOfWeight).toBeCloseTo(0.48, 9);
});

test('nothing of it is said where no earthquake is reckoned with, nor in New Zealand where it was denied', () => {
  for (const building of [{ country: 'AU' }, { country: 'NZ', seismic: false }, { country: 'US' }] as const)
    expect(shaking(building)).toBeUndefined();
});

test('a core that just does not bend: 118 N on 12 + 1.5 wants 4.2 mm, by the closed sum at that core (derived)', () => {
  const need = coreNeeded(newtons(118), mm(13.5))?.coreMm ?? 0;
  // 1.2 x pi/32 x d^3 x 400 / (0.5 d + 13.5) / (1.6667 x 1.35) = 118 at the core found.
  const bears = (1.2 * Math.PI * need ** 3 * 400) / 32 / (need / 2 + 13.5) / ((400 / 240) * 1.35);
  expect(Math.abs(bears - 118)).toBeLessThan(0.3);
});

test('a rejected plug that bends says what core would not', () => {
  const heavy = planIn({}, 24);
  const bent = heavy.rejected.find(({ because }) => because.includes('bends'));
  expect(bent?.because).toMatch(/a core of \d+(\.\d)? mm would not bend, and this has \d/);
});
