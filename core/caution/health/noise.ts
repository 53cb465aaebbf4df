import { sourced } from '../../sources.ts';

/** A criterion: so many dBA for 8 hours, and the step in dB that halves the time. */
type Criterion = { readonly level: number; readonly exchange: number; readonly hours: number };

export const NOISE = {
  osha: sourced<Criterion>(
    { level: 90, exchange: 5, hours: 8 },
    '29CFR1926.52',
    'Table D-2',
    'read-secondary',
  ),
  niosh: sourced<Criterion>(
    { level: 85, exchange: 3, hours: 8 },
    'NIOSH:98-126',
    'recommended limit',
    'from-memory',
  ),
} as const;

/** Table D-2 ends here; above it nothing is allowed and below the criterion no time is set. */
const TOP_LEVEL = sourced(115, '29CFR1926.52', 'Table D-2, last row', 'read-secondary', 'dBA');

/** How long a level may last in a day. */
export type Allowed = { ok: true; hours: number } | { ok: false; because: 'notCovered' };

/** Hours allowed at a level in dBA: T = 8 / 2^((L - Lc) / q). Not covered below the criterion or above 115 dBA. */
export function noiseHours(levelDba: number, criterion: Criterion): Allowed {
  if (!(levelDba >= criterion.level && levelDba <= TOP_LEVEL.value))
    return { ok: false, because: 'notCovered' };
  return { ok: true, hours: criterion.hours / 2 ** ((levelDba - criterion.level) / criterion.exchange) };
}

/** Share of a day's dose in percent: D = 100 C / T, C in hours. */
export function dosePercent(hours: number, allowedHours: number): number {
  return (100 * hours) / allowedHours;
}
