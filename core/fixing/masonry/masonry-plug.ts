import { type Megapascals, type Millimetres, mpa, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { GAMMA_G } from '../steel/steel.ts';

const GAMMA_M = sourced({ masonry: 2.5, concrete: 1.8, aerated: 2 }, 'ETAG020', 'Annex C', 'from-memory');
/** Where joints can't be seen, or upright joints are open. */
const HIDDEN_JOINT = sourced(0.5, 'ETAG020', 'Annex C, alpha_j', 'from-memory');
const BRICK = sourced({ bond: 0.5, friction: 0.4 }, 'ETAG029-C', '5.2.1.5', 'from-memory');
/** Initial shear strength of clay masonry by class of mortar. */
export const INITIAL_SHEAR = sourced(
  { 'M10-M20': mpa(0.3), 'M2.5-M9': mpa(0.2), 'M1-M2': mpa(0.1) },
  'EN1996-1-1:2005',
  'Table 3.4',
  'from-memory',
);

/** Design resistance of a plastic anchor: F_Rd = F_Rk / gamma_M (ETAG 020 Annex C), N. F_Rk comes from its own approval only. */
export function plugDesign(characteristic: Newtons, base: keyof typeof GAMMA_M.value): Newtons {
  return newtons(characteristic / GAMMA_M.value[base]);
}

/** What may act on it for good: F_Rd / 1.35, N. */
export function plugForGood(design: Newtons): Newtons {
  return newtons(design / GAMMA_G.value);
}

/** The same where a joint may be hidden behind plaster: F_Rd x alpha_j, alpha_j 0.5 (ETAG 020 Annex C), N. */
export function plugNearHiddenJoint(design: Newtons): Newtons {
  return newtons(HIDDEN_JOINT.value * design);
}

/**
 * Characteristic pull-out of one whole brick: N = 2 l b (0.5 f_vk0 + 0.4 sigma_d), and b h f_vk0 more where the
 * upright joints are filled (ETAG 029 Annex C 5.2.1.5), N.
 */
export function brickPullOut(
  brick: { lengthMm: Millimetres; breadthMm: Millimetres; heightMm: Millimetres },
  shear: Megapascals,
  pressed: Megapascals,
  uprights: 'filled' | 'open',
): Newtons {
  const { bond, friction } = BRICK.value;
  const beds = 2 * brick.lengthMm * brick.breadthMm * (bond * shear + friction * pressed);
  return newtons(beds + (uprights === 'filled' ? brick.breadthMm * brick.heightMm * shear : 0));
}
