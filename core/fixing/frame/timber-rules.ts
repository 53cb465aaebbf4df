import { kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Wall } from '../../wall/wall.ts';

/** Lines of the trade's walk 1.13, by how thick the wood is. */
export const TIMBER = sourced(
  {
    solidFromMm: 35,
    panelFromMm: 12,
    solid: { 6: kg(0), 8: kg(12), 10: kg(20), 12: kg(25), 14: kg(25) },
    rightThroughKg: kg(6),
    usualSolidKg: 12,
    usualThroughKg: 4,
  } as const,
  'common-practice',
  'timber: solid 35 or more, lining boards 12 to 22, thin panelling 3 to 9',
  'common-practice',
);

/** How thick the wood is: as said of the boards, or of a wall said to be solid all through; null where nobody said. */
export function woodMm({ boardMm, thicknessMm, cores }: Wall): number | null {
  if (boardMm !== undefined && boardMm > 0) return boardMm;
  return cores === 'solid' && thicknessMm !== undefined ? thicknessMm : null;
}
