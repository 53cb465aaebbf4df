import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { THIN_WALL } from '../../wall/zones.ts';

/** From a free end of masonry to a plug. */
const EDGE_DISTANCE = sourced(mm(100), 'ETAG020', 'Annex C, where the packet is silent', 'from-memory');
/** Between two plugs. */
const PLUG_SPACING = sourced(mm(250), 'ETAG020', 'Annex C, where the packet is silent', 'from-memory');

/** How much of a thin wall a hole may go through without a word. */
const DEEPEST = sourced(
  2 / 3,
  'common-practice',
  'concrete block, partitions of 75 to 100',
  'common-practice',
);

/** What is said where a plug comes near a free end of the wall, two plugs near each other, or a hole nearly through. */
export function edgeAdvice({ wall }: Job, { marks }: SetOut, holeMm: Millimetres): string[] {
  const said: string[] = [];
  const edge = EDGE_DISTANCE.value;
  const spacing = PLUG_SPACING.value;
  const close: string[] = [];
  for (const [at, mark] of marks.entries()) {
    const nearLeft = wall.ends?.left === 'open' && mark.fromLeftMm < edge;
    const nearRight = wall.ends?.right === 'open' && mark.fromRightMm < edge;
    if (nearLeft || nearRight) {
      said.push(
        `Mark ${mark.id} is within ${edge} mm of a free end of the wall: a plug there can break the edge out.`,
      );
    }
    const next = marks[at + 1];
    if (next && Math.abs(next.fromLeftMm - mark.fromLeftMm) < spacing && next.upMm === mark.upMm)
      close.push(`${mark.id} and ${next.id}`);
  }
  if (close.length > 0) {
    said.push(
      `Marks ${close.join(', ')} are under ${spacing} mm apart: keep them in different bricks, and ask the packet for its spacing.`,
    );
  }
  return [...said, ...depthAdvice(wall.thicknessMm, holeMm)];
}

/** Measured at an opening a wall's thickness has its coats in it, as the depth of the hole has. */
function depthAdvice(thicknessMm: Millimetres | undefined, holeMm: Millimetres): string[] {
  if (holeMm <= (thicknessMm ?? THIN_WALL.value) * DEEPEST.value) return [];
  return [
    thicknessMm === undefined
      ? `How thick the wall is was not said: measure it at an opening first. A hole of ${holeMm} mm is for a wall of ${Math.ceil(holeMm / DEEPEST.value)} mm or more.`
      : 'The hole goes more than two thirds through the wall: know what is on the other face before you drill.',
  ];
}
