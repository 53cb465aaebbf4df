import { type Kilograms, kg, times } from '../quantity.ts';
import { sourced } from '../sources.ts';

const P7 = 's.1.3 p.7, limits pp.8-12';
/** Constants of the equation in centimetres, kilograms and degrees. */
export const NIOSH = sourced(
  {
    load: kg(23),
    reach: 25,
    reachMost: 63,
    heightBest: 75,
    perHeight: 0.003,
    heightMost: 175,
    travelFixed: 0.82,
    travelOver: 4.5,
    travelLeast: 25,
    travelMost: 175,
    perDegree: 0.0032,
    degreesMost: 135,
  },
  'NIOSH:94-110',
  P7,
  'read-secondary',
);

const COUPLING = sourced({ good: 1, fair: 1, fairLow: 0.95, poor: 0.9 }, 'NIOSH:94-110', P7, 'from-memory');

export type Lift = {
  /** Hands out from the ankles, cm. */
  H: number;
  /** Hands above the floor, cm. */
  V: number;
  /** Travel up, cm. */
  D: number;
  /** Twist, degrees. */
  A?: number;
  grip?: 'good' | 'fair' | 'poor';
};

export type Multipliers = { hm: number; vm: number; dm: number; am: number; cm: number };

/** HM = 25/H, VM = 1 - 0.003|V - 75|, DM = 0.82 + 4.5/D, AM = 1 - 0.0032 A, CM by grip; 0 beyond each limit. */
export function multipliers({ H, V, D, A = 0, grip = 'fair' }: Lift): Multipliers {
  const n = NIOSH.value;
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

/** RWL = 23 kg x HM x VM x DM x AM x FM x CM, with FM = 1: at most one lift in five minutes for an hour. */
export function recommendedWeight(m: Multipliers): Kilograms {
  return times(NIOSH.value.load, m.hm * m.vm * m.dm * m.am * m.cm);
}

/** LI = load / RWL; null where the equation gives no weight at all. Not for ladders, one hand or two people. */
export function liftingIndex(load: Kilograms, rwl: Kilograms): number | null {
  return rwl > 0 ? load / rwl : null;
}
