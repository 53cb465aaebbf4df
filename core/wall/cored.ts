import type { Wall } from './wall.ts';

/** Whether a masonry unit has, or may have, holes or cells behind its face. Concrete has none. */
export function mayBeCored({ baseMaterial, cores }: Wall): boolean {
  return (baseMaterial === 'clay-brick' || baseMaterial === 'concrete-block') && cores !== 'solid';
}
