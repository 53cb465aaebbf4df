import { sourced } from '../../sources.ts';

const P7 = 's.1.3 p.7, limits pp.8-12';

type Constants = {
  load: number;
  reach: number;
  reachMost: number;
  heightBest: number;
  perHeight: number;
  heightMost: number;
  travelFixed: number;
  travelOver: number;
  travelLeast: number;
  travelMost: number;
  perDegree: number;
  degreesMost: number;
};

const AGAIN = { travelFixed: 0.82, perDegree: 0.0032, degreesMost: 135 } as const;

/** Constants of the equation in kilograms, centimetres and degrees. */
export const NIOSH = sourced<Constants>(
  {
    ...AGAIN,
    load: 23,
    reach: 25,
    reachMost: 63,
    heightBest: 75,
    perHeight: 0.003,
    heightMost: 175,
    travelOver: 4.5,
    travelLeast: 25,
    travelMost: 175,
  },
  'NIOSH:94-110',
  P7,
  'read-secondary',
);

/** The same in pounds and inches, which the document prints beside them; they are not exact conversions. */
export const NIOSH_POUNDS = sourced<Constants>(
  {
    ...AGAIN,
    load: 51,
    reach: 10,
    reachMost: 25,
    heightBest: 30,
    perHeight: 0.0075,
    heightMost: 70,
    travelOver: 1.8,
    travelLeast: 10,
    travelMost: 70,
  },
  'NIOSH:94-110',
  P7,
  'from-memory',
);

const COUPLING = sourced({ good: 1, fair: 1, fairLow: 0.95, poor: 0.9 }, 'NIOSH:94-110', P7, 'from-memory');

/** A lift in the lengths of the constants it is reckoned with. */
export type Lift = {
  /** Hands out from the ankles. */
  H: number;
  /** Hands above the floor. */
  V: number;
  /** Travel up. */
  D: number;
  /** Twist, degrees. */
  A?: number;
  grip?: 'good' | 'fair' | 'poor';
};

export type Multipliers = { hm: number; vm: number; dm: number; am: number; cm: number };

/** HM = 25/H, VM = 1 - 0.003|V - 75|, DM = 0.82 + 4.5/D, AM = 1 - 0.0032 A, CM by grip; 0 beyond each limit. */
export function multipliers(
  { H, V, D, A = 0, grip = 'fair' }: Lift,
  n: Constants = NIOSH.value,
): Multipliers {
  const c = COUPLING.value;
  const low = V < n.heightBest;
  return {
    hm: H > n.reachMost ? 0 : Math.min(1, n.reach / Math.max(H, n.reach)),
    vm: V > n.heightMost ? 0 : 1 - n.perHeight * Math.abs(V - n.heightBest),
    dm: D > n.travelMost ? 0 : Math.min(1, n.travelFixed + n.travelOver / Math.max(D, n.travelLeast)),
    am: A > n.degreesMost ? 0 : 1 - n.perDegree * A,
    cm: grip === 'fair' && low ? c.fairLow : c[grip],
  };
}

/** RWL = LC x HM x VM x DM x AM x FM x CM, with FM = 1 (at most one lift in five minutes for an hour), in LC's unit. */
export function recommendedWeight(m: Multipliers, load: number = NIOSH.value.load): number {
  return load * m.hm * m.vm * m.dm * m.am * m.cm;
}

/** LI = load / RWL; null where the equation gives no weight at all. Not for ladders, one hand or two people. */
export function liftingIndex(load: number, rwl: number): number | null {
  return rwl > 0 ? load / rwl : null;
}
