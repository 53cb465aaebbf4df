import { type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { NEWTONS_PER_LBF } from '../timber/us-units.ts';

/** Working coefficients of lifting gear. */
const LIFTING = sourced({ wire: 5, chain: 4, textile: 7 }, '2006/42/EC', 'Annex I 4.1.2.5', 'from-memory');
/** What a grab bar must bear in any direction: an upper bound for a knock, not required of pictures. */
export const GRAB_BAR = sourced(newtons(250 * NEWTONS_PER_LBF), 'ADA-2010', '609.8', 'from-memory');

/** Working load of a rope or chain for lifting: F_min over its working coefficient (2006/42/EC Annex I), N. */
export function liftingLoad(breaking: Newtons, kind: keyof typeof LIFTING.value): Newtons {
  return newtons(breaking / LIFTING.value[kind]);
}
