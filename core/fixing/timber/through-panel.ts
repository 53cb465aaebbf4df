import { type Millimetres, newtons } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import type { TimberRoute } from './route-shape.ts';
import type { StudStrength } from './stud-strength.ts';
import { lateralBareScrew } from './timber-gap.ts';

/** Boards that a screw goes right through: thinner ones are panelling, thicker ones are reckoned as this. */
const PANEL = sourced(
  { leastMm: 12, mostMm: 25 },
  'common-practice',
  'timber, line 3: ply or boards 12 to 18; board across studs 18 to 25',
  'common-practice',
);
const RIGHT_THROUGH = {
  source: 'statics',
  at: 'a screw right through a board, turning in it or hinging; either route asks for 6 diameters of penetration where a screw ends in the wood',
  standing: 'derived',
} as const;
const PANEL_BASIS = [basisOf(RIGHT_THROUGH), basisOf(PANEL)];

/**
 * A wood screw right through a board, loaded `armMm` off its face: limit analysis of the bare screw in the whole
 * thickness, withdrawal over it, for good by one route whole, N. Thinner than 12 mm nothing is reckoned.
 */
export function throughPanel(
  route: TimberRoute,
  gauge: Gauge,
  thicknessMm: Millimetres,
  armMm: Millimetres,
): StudStrength {
  const screw = thicknessMm < PANEL.value.leastMm ? null : route.rightThrough(gauge, thicknessMm);
  const basis = [...PANEL_BASIS, ...route.basis];
  if (screw === null) return { lateralN: newtons(0), withdrawalN: newtons(0), basis };
  const lateral = lateralBareScrew({ ...screw, reduction: 1, armMm });
  return { lateralN: newtons(lateral * screw.forGood), withdrawalN: screw.withdrawalN, basis };
}
