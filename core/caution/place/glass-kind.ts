import type { Facts } from '../facts.ts';

/**
 * Whether the piece has glass in it: said, or the nature of the thing. A mirror is glass until somebody
 * says acrylic; a picture may be glazed.
 */
export function glassOf({ job }: Facts): 'glass' | 'maybe' | 'none' {
  const { glass, kind, build } = job.piece ?? {};
  if (glass === 'plain' || glass === 'safety') return 'glass';
  if (build?.glazing) return build.glazing.material === 'glass' ? 'glass' : 'none';
  if (glass === 'acrylic' || (glass === 'none' && kind !== 'mirror')) return 'none';
  if (kind === 'mirror') return 'glass';
  return kind === 'picture' ? 'maybe' : 'none';
}

/** True when the glass is known to be ordinary or nobody knows: neither safety glass nor acrylic. */
export function glassMayCut(facts: Facts): boolean {
  return glassOf(facts) !== 'none' && facts.job.piece?.glass !== 'safety';
}
