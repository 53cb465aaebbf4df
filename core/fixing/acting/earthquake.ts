import type { Country, Job } from '../../job.ts';
import type { Assumption } from '../../plan-shape.ts';
import { type Kilograms, kg, type Newtons } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import type { Why } from '../../why.ts';
import {
  asceRatio,
  heightFactor,
  nonStructuralRatio,
  partForceRatio,
  seismicCoefficient,
} from './seismic.ts';

/** Sideways force on a piece as a share of its weight, by whose rules, and what was taken to know it. */
type Shaking = {
  readonly share: number;
  readonly route: string;
  readonly taken: string;
  readonly basis: readonly Basis[];
};

const US = sourced(
  { sDs: 1, ap: 1, rp: 2.5, ip: 1, zOverH: 1, exemptKg: kg(9.07) },
  'ASCE7-16',
  '13.3-1; S_DS 1.0 and the top of the building are taken; 20 lb or less exempt, from memory',
  'our-choice',
);
const AU = sourced(
  { kpZ: 0.1, ch0: 1.3, atM: 3, topM: 6, importance: 1, amplification: 1, ductility: 2.5 },
  'AS1170.4:2007',
  '8.3 simple method; Z 0.10, soil C, 3 m up are taken',
  'our-choice',
);
const NZ_HAZARD = sourced(
  0.4,
  'our-choice',
  'NZS 1170.5 was not read: the Australian form with four times its hazard',
  'our-choice',
);
const EU = sourced(
  { alpha: 0.25, soil: 1.2, zOverH: 1, taOverT1: 0, importance: 1, behaviour: 2 },
  'EN1998-1:2004',
  '4.3.5.2 Eq. 4.24, 4.25; 0.25 g, soil 1.2, top of the building are taken',
  'our-choice',
);

/** Where earthquakes are reckoned with: said so, or New Zealand unless it was denied. */
export function isShaken({ building }: Pick<Job, 'building'>): boolean {
  const { seismic, country } = building ?? {};
  return seismic === true || (country === 'NZ' && seismic !== false);
}

function shakingIn(country: Country | 'unknown' | undefined, massKg: Kilograms): Shaking | null {
  if (country === 'AU' || country === 'NZ') {
    const { atM, topM, ...part } = AU.value;
    const kpZ = country === 'NZ' ? NZ_HAZARD.value : part.kpZ;
    return {
      share: partForceRatio({ ...part, kpZ, heightFactor: heightFactor(atM, topM) }),
      route: 'AS 1170.4, simple method',
      taken: country === 'NZ' ? 'hazard 0.40, soil C, 3 m up' : 'hazard 0.10, soil C, 3 m up',
      basis: [basisOf(AU), ...(country === 'NZ' ? [basisOf(NZ_HAZARD)] : [])],
    };
  }
  if (country === 'UK' || country === 'IE' || country === 'EU') {
    const { alpha, soil, zOverH, taOverT1, importance, behaviour } = EU.value;
    return {
      share: nonStructuralRatio(seismicCoefficient(alpha, soil, zOverH, taOverT1), importance, behaviour),
      route: 'EN 1998-1',
      taken: '0.25 g, soil factor 1.2, the top of the building',
      basis: [basisOf(EU)],
    };
  }
  if (massKg <= US.value.exemptKg) return null;
  return {
    share: asceRatio(US.value),
    route: 'ASCE 7-16',
    taken: 'S_DS 1.0, the top of the building',
    basis: [basisOf(US)],
  };
}

export type Shaken = { readonly advice: string[]; readonly why: Why[]; readonly taken: Assumption[] };

/**
 * What shaking sideways does to a fixing used so far by its weight: the two forces together are W sqrt(1 + s^2), and
 * no credit is taken for their being short. Never a stop by itself; nothing where no earthquake is reckoned with.
 */
export function shakenBy(job: Job, massKg: Kilograms, weightN: Newtons, utilisation: number): Shaken {
  const shaking = isShaken(job) ? shakingIn(job.building?.country, massKg) : null;
  if (shaking === null || !Number.isFinite(weightN)) return { advice: [], why: [], taken: [] };
  const { share, route, taken, basis } = shaking;
  const hundredth = (value: number): number => Math.round(value * 100) / 100;
  const used = Math.round(utilisation * Math.hypot(1, share) * 100);
  return {
    advice: [
      `In an earthquake it pulls sideways with ${hundredth(share)} of its weight (${route}; taken: ${taken}): the fixing is then used to ${used} %${used > 100 ? ', over what it may bear: a heavier fixing, or a lighter piece here' : ''}.`,
    ],
    why: [
      {
        of: 'sideways in an earthquake',
        formula: `${route}: share of the weight x weight`,
        inputs: { shareOfWeight: hundredth(share), weightN: Math.round(weightN * 10) / 10 },
        result: `${Math.round(share * weightN)} N`,
        basis,
        symbols: 'shareOfWeight x weightN',
        paths: [],
      },
    ],
    taken: [{ field: 'building.seismic', value: taken, because: `the ground motion was not said: ${route}` }],
  };
}
