import type { Wall } from './wall.ts';

/** Whether a masonry unit has, or may have, holes or cells behind its face. Concrete has none. */
export function mayBeCored({ baseMaterial, cores }: Wall): boolean {
  return (baseMaterial === 'clay-brick' || baseMaterial === 'concrete-block') && cores !== 'solid';
}

/** Whether board with air behind it stands before the masonry: on dabs, or on battens. */
export function isOverGap({ baseMaterial, finish }: Pick<Wall, 'baseMaterial' | 'finish'>): boolean {
  if (baseMaterial === 'plasterboard-on-dabs') return true;
  return finish?.kind === 'board' && MASONRY.includes(baseMaterial);
}

const MASONRY: readonly Wall['baseMaterial'][] = [
  'clay-brick',
  'concrete-block',
  'concrete',
  'aerated-concrete',
  'natural-stone',
];
