import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

/** Beyond the plug for dust, and beyond the point of the screw. */
export const HOLE_BEYOND = sourced(
  { plugMm: mm(10), screwMm: mm(5) },
  'common-practice',
  'finish + plug + 10, and never less than the screw inside the wall + 5',
  'from-memory',
);

/**
 * Depth of a hole from the finished face: h1 = finish + plug + 10, and never less than
 * screw length - outside part + 5, or the screw bottoms and spins the plug. Millimetres.
 */
export function holeDepth(hole: {
  finishMm: Millimetres;
  plugMm: Millimetres;
  screwMm: Millimetres;
  outsideMm: Millimetres;
}): Millimetres {
  const { plugMm, screwMm } = HOLE_BEYOND.value;
  return mm(
    Math.ceil(Math.max(hole.finishMm + hole.plugMm + plugMm, hole.screwMm - hole.outsideMm + screwMm)),
  );
}

/** Least length of a plugged screw: outside part + finish + plug (textbook), and one diameter more where wanted, mm. */
export function leastScrew(outsideMm: Millimetres, finishMm: Millimetres, plugMm: Millimetres): Millimetres {
  return mm(outsideMm + finishMm + plugMm);
}

/** Cutting diameter a carbide tip may have over its nominal size, mm. */
export const CARBIDE_WINDOW = sourced(
  { 6: [6.05, 6.4], 8: [8.05, 8.45], 10: [10.1, 10.45] } as const,
  'ISO5468',
  'as ETAG 001 Annex A gives test bits; table not read',
  'from-memory',
);
