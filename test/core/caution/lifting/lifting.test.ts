import { describe, expect, it } from 'vitest';
import { type LiftZone, singleFigure, teamFigure } from '../../../../core/caution/lifting/hse-filter.ts';
import { ladderStops, needsLadder, twoPersonFigure } from '../../../../core/caution/lifting/lifting.ts';
import {
  liftingIndex,
  multipliers,
  NIOSH_POUNDS,
  recommendedWeight,
} from '../../../../core/caution/lifting/niosh.ts';
import { stopsSoFar } from '../../../../core/caution/rules.ts';
import { kg, mm } from '../../../../core/quantity.ts';
import { cases } from '../cases.ts';
import { jobWith, saidOf, severityOf } from '../ordinary-job.ts';

const REACHES = { close: 'close', arms_length: 'arms-length' } as const;
const near = (value: number | null, expected: number, tolerance: number): void =>
  expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(tolerance);

describe('lifting', () => {
  it.each(
    cases(
      'MH-01a',
      'MH-02a',
      'MH-03c',
      'MH-03a',
      'MH-04a',
      'MH-05a',
      'MH-06a',
      'MH-07a',
      'MH-08c',
      'MH-08a',
      'MH-09a',
      'MH-10c',
    ),
  )('$title: $inputs.sex, $inputs.zone', ({ inputs, expected }) => {
    const reach = REACHES[inputs.reach as keyof typeof REACHES];
    expect(singleFigure(inputs.sex, [inputs.zone], reach)).toBe(expected.filter_kg);
  });

  it.each(cases('MH-15'))('$title', ({ inputs, expected }) => {
    const zones = inputs.zones as [LiftZone, ...LiftZone[]];
    expect(singleFigure(inputs.sex, zones, inputs.reach)).toBe(expected.filter_kg);
  });

  it.each(cases('MH-11'))('$title', ({ inputs, expected, tolerance }) => {
    near(teamFigure(inputs.individual_kg.map(kg)) as number, expected.team_kg, tolerance);
  });

  it('three times 25 kg gives 37.5 kg for three, and four are not covered (HSE L23, read-secondary)', () => {
    expect(teamFigure([kg(25), kg(25), kg(25)])).toBe(37.5);
    expect(teamFigure([kg(25), kg(25), kg(25), kg(25)])).toBe('notCovered');
  });

  it.each(cases('NL-02', 'NL-03', 'NL-05', 'NL-07'))(
    '$title: $inputs.label',
    ({ inputs, expected, tolerance }) => {
      const { H, V, D, A = 0, coup = 'fair', load_kg } = inputs;
      const m = multipliers({ H, V, D, A, grip: coup });
      near(m.hm, expected.hm, tolerance);
      near(m.vm, expected.vm, tolerance);
      near(m.dm, expected.dm, tolerance);
      near(m.am, expected.am, tolerance);
      near(m.cm, expected.cm, tolerance);
      const rwl = recommendedWeight(m);
      near(rwl, expected.rwl_kg, tolerance);
      if (expected.li === null) expect(liftingIndex(kg(load_kg), rwl)).toBeNull();
      else near(liftingIndex(kg(load_kg), rwl), expected.li, tolerance);
    },
  );

  it.each(cases('NL-08'))('$title', ({ inputs, expected, tolerance }) => {
    const { H, D, A, V_origin, V_dest, load_lb } = inputs;
    const at = (V: number): number =>
      recommendedWeight(
        multipliers({ H, V, D, A, grip: 'fair' }, NIOSH_POUNDS.value),
        NIOSH_POUNDS.value.load,
      );
    near(at(V_origin), expected.rwl_origin_lb, tolerance);
    near(at(V_dest), expected.rwl_dest_lb, tolerance);
    near(liftingIndex(load_lb, at(V_origin)), expected.li_origin, tolerance);
    near(liftingIndex(load_lb, at(V_dest)), expected.li_dest, tolerance);
  });

  it.each(cases('NL-09'))('$title', ({ inputs, expected, tolerance }) => {
    const at = (vm: number, cm: number): number =>
      recommendedWeight({ hm: inputs.HM, vm, dm: inputs.DM, am: 1, cm }, NIOSH_POUNDS.value.load);
    const origin = at(inputs.VM_o, inputs.CM_o);
    const end = at(inputs.VM_d, inputs.CM_d);
    near(origin, expected.rwl_origin_lb, tolerance);
    near(end, expected.rwl_dest_lb, tolerance);
    near(liftingIndex(inputs.load_lb, origin), expected.li_origin, tolerance);
    near(liftingIndex(inputs.load_lb, end), expected.li_dest, tolerance);
  });

  it.each(cases('LD-02'))('$title', ({ inputs, expected }) => {
    expect(ladderStops(kg(inputs.item_kg), inputs.people, true)).toBe(expected.severity === 'stop');
    const alone = jobWith({ piece: { massKg: kg(inputs.item_kg) }, crew: { people: inputs.people } });
    const high = saidOf(alone, [
      [1025, 2001],
      [1675, 2001],
    ]);
    expect(severityOf(high, 'C-MH-3')).toBe(expected.severity);
    expect(severityOf(saidOf(alone), 'C-MH-3')).toBeUndefined();
  });

  it.each([
    [10, 1, true, false],
    [10.1, 1, true, true],
    [30, 2, true, false],
    [30, 1, false, false],
  ])(
    '%f kg, %i on the job, ladder %s: stopped is %s (HSE INDG402, from-memory; ours)',
    (mass, people, ladder, stopped) => {
      expect(ladderStops(kg(mass), people, ladder)).toBe(stopped);
    },
  );

  it('a hanger above 2000 mm needs a ladder (our choice)', () => {
    expect([needsLadder(mm(2000)), needsLadder(mm(2001))]).toEqual([false, true]);
  });

  it('two people are never stopped up to two thirds of 20 + 20 kg', () => {
    expect(twoPersonFigure()).toBeCloseTo((2 / 3) * 40, 6);
  });

  // 26.7 kg is the two-person figure; what nobody was asked does not stop.
  it.each<[number, number | 'unknown', boolean | 'unknown', string | undefined]>([
    [8, 2, false, undefined],
    [24, 2, false, undefined],
    [26.6, 2, false, undefined],
    [26.7, 2, false, 'stop'],
    [26.7, 1, false, 'stop'],
    [26.7, 3, false, 'warn'],
    [26.7, 2, true, 'warn'],
    [26.7, 2, 'unknown', 'warn'],
    [26.7, 'unknown', 'unknown', 'warn'],
  ])('%f kg, people %s, lifter %s: C-MH-2 is %s', (mass, people, lifter, severity) => {
    const job = jobWith({ piece: { massKg: kg(mass) }, crew: { people, lifter } });
    expect(severityOf(saidOf(job), 'C-MH-2')).toBe(severity);
    expect(stopsSoFar(job).some(({ id }) => id === 'C-MH-2')).toBe(severity === 'stop');
  });

  it('a 24 kg mirror says two people, and never beside the words that two are too few', () => {
    const said = saidOf(jobWith());
    expect(said.find(({ id }) => id === 'C-MH-1')?.text).toMatch(/two people/i);
    expect(said.map(({ id }) => id)).not.toContain('C-MH-2');
  });
});
