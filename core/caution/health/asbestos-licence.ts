import { sourced } from '../../sources.ts';

const LICENCE_AREA = sourced(
  10,
  'NT-asbestos',
  'licensing: more than 10 m2 of bonded sheet',
  'read',
  'square metres',
);

/**
 * Whether only a licensed removalist may take this much away in Australia or New Zealand: any friable
 * material, or more than 10 m2 of bonded. Area in square metres. Drilling lies below it, which does not
 * make drilling right.
 */
export function removalistNeeded(kind: 'friable' | 'non-friable', areaM2: number): boolean {
  return kind === 'friable' || areaM2 > LICENCE_AREA.value;
}
