import { expect, test } from 'vitest';
import { type Gauge, nominalOf, root, WOOD_SCREW_ROOT } from '../../../core/fixing/steel/screw-sizes.ts';
import { LOAD_DURATION_CD } from '../../../core/fixing/timber/duration.ts';
import { timberRouteOf } from '../../../core/fixing/timber/route.ts';
import { bareStudStrength } from '../../../core/fixing/timber/stud-strength.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearingAsTabled,
  penetrationShare,
  reductionTerm,
  STEEL_PLATE_BEARING,
} from '../../../core/fixing/timber/timber-bearing.ts';
import { lateralBareScrew, lateralWithGap } from '../../../core/fixing/timber/timber-gap.ts';
import { MPA_PER_PSI, NEWTONS_PER_LBF } from '../../../core/fixing/timber/us-units.ts';
import { mm, mpa, STANDARD_GRAVITY } from '../../../core/quantity.ts';

/** Sanity table of the trade reference: a hanger plate (thickness not said there; 1.5 mm) through board into a stud, 2 in in the wood, G 0.36, permanent. */
const rows: { id: string; gap: number; gauge: Gauge; kg: number }[] = [
  { id: 'SJ-16', gap: 12.7, gauge: 10, kg: 16 },
  { id: 'SJ-16', gap: 12.7, gauge: 12, kg: 19.6 },
  { id: 'SJ-16', gap: 12.7, gauge: 14, kg: 20 },
  { id: 'SJ-18', gap: 13, gauge: 10, kg: 15.7 },
  { id: 'SJ-18', gap: 13, gauge: 12, kg: 19.3 },
  { id: 'SJ-18', gap: 13, gauge: 14, kg: 19.7 },
  { id: 'SJ-27', gap: 9, gauge: 10, kg: 19.6 },
];

test.each(rows)(
  '$id: a plate on a $gauge gauge screw through $gap mm bears $kg kg [derived, AWC TR-12]',
  ({ gap, gauge, kg }) => {
    const nominal = nominalOf(gauge);
    const d = WOOD_SCREW_ROOT.value[gauge];
    const into = mm(2 * 25.4);
    const { allowable } = lateralWithGap({
      d,
      main: { lengthMm: bearingLength(into, nominal), bearing: dowelBearingAsTabled(0.36) },
      side: { lengthMm: mm(1.5), bearing: STEEL_PLATE_BEARING.value },
      bendingYield: mpa(Number(bendingYield(nominal))),
      reduction: reductionTerm(d),
      gapMm: mm(gap),
    });
    const force = allowable * penetrationShare(into, nominal) * LOAD_DURATION_CD.value.permanent;
    expect(Math.abs(force / STANDARD_GRAVITY - kg)).toBeLessThanOrEqual(0.15);
  },
);

test('a bare 10 gauge shank loaded an inch from SPF bears 20.4 lbf before duration [derived]', () => {
  const force = lateralBareScrew({
    d: root(mm(0.152 * 25.4)),
    lengthInWoodMm: mm(1.71 * 25.4),
    bearing: mpa(3350 * MPA_PER_PSI),
    bendingYield: mpa(80000 * MPA_PER_PSI),
    reduction: 2.2,
    // The reference rounds one inch to 25 mm.
    armMm: mm(25.4),
  });
  expect(Math.abs(force / NEWTONS_PER_LBF - 20.4)).toBeLessThanOrEqual(0.05);
});

test('a screw less than six diameters in the wood bears nothing [NDS-2018 12.1.5.6, read]', () => {
  const by = timberRouteOf('US');
  expect(bareStudStrength(by, 10, mm(28), mm(19), mm(50))).toMatchObject({ lateralN: 0, withdrawalN: 0 });
});
