import { type Kilograms, kg, least, type Millimetres, mm, sum, times } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

/** Where hands are, between the landmarks of a standing body. */
export type LiftZone =
  | 'above-shoulder'
  | 'shoulder-elbow'
  | 'elbow-knuckle'
  | 'knuckle-midleg'
  | 'below-midleg';
type Reach = 'close' | 'arms-length';
type Column = Record<LiftZone, Kilograms>;

const column = (a: number, b: number, c: number, d: number, e: number): Column => ({
  'above-shoulder': kg(a),
  'shoulder-elbow': kg(b),
  'elbow-knuckle': kg(c),
  'knuckle-midleg': kg(d),
  'below-midleg': kg(e),
});

/** Guide figures, not limits, kilograms. Hands between the landmarks named; easily grasped, two hands, firm stance. */
export const HSE_FILTER = {
  m: {
    close: sourced(column(10, 20, 25, 20, 10), 'HSE-L23', 'lifting filter, men, close', 'read-secondary'),
    'arms-length': sourced(
      column(5, 10, 15, 10, 5),
      'HSE-L23',
      "lifting filter, men, arm's length",
      'from-memory',
    ),
  },
  f: {
    close: sourced(column(7, 13, 16, 13, 7), 'HSE-L23', 'lifting filter, women, close', 'read-secondary'),
    'arms-length': sourced(
      column(3, 7, 10, 7, 3),
      'HSE-L23',
      "lifting filter, women, arm's length",
      'from-memory',
    ),
  },
} as const;

/** Share of the sum of single figures that a team of two or three may take. */
export const TEAM_SHARE = {
  2: sourced(2 / (2 + 1), 'HSE-L23', 'team handling: two thirds of the sum', 'read-secondary'),
  3: sourced(1 / 2, 'HSE-L23', 'team handling: half of the sum', 'read-secondary'),
} as const;

/** Where the landmarks of a standing adult are, millimetres above the floor. */
const LANDMARKS = sourced(
  { shoulder: mm(1400), elbow: mm(1050), knuckle: mm(750), midleg: mm(300) },
  'our-choice',
  'landmarks of a standing adult',
  'our-choice',
);

/** Guide figure for one person whose hands pass through these zones: the smallest. Kilograms. */
export function singleFigure(
  sex: 'm' | 'f',
  zones: readonly [LiftZone, ...LiftZone[]],
  reach: Reach,
): Kilograms {
  const [first, ...rest] = zones;
  const figures = HSE_FILTER[sex][reach].value;
  return least(figures[first], ...rest.map((zone) => figures[zone]));
}

/** Guide figure for a team of two or three from the single figures; more than three rarely work together. Kilograms. */
export function teamFigure(single: readonly Kilograms[]): Kilograms | 'notCovered' {
  const [first, ...rest] = single;
  if (first === undefined) return 'notCovered';
  if (rest.length === 0) return first;
  const share = rest.length === 1 ? TEAM_SHARE[2] : rest.length === 2 ? TEAM_SHARE[3] : null;
  return share === null ? 'notCovered' : times(sum(first, ...rest), share.value);
}

/** The zone that hands at this height above the floor are in; an unknown height counts as the highest. */
export function zoneAt(heightMm: Millimetres | null): LiftZone {
  const { shoulder, elbow, knuckle, midleg } = LANDMARKS.value;
  if (heightMm === null || heightMm > shoulder) return 'above-shoulder';
  if (heightMm > elbow) return 'shoulder-elbow';
  if (heightMm > knuckle) return 'elbow-knuckle';
  return heightMm > midleg ? 'knuckle-midleg' : 'below-midleg';
}
