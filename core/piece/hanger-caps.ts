import { type Kilograms, kg } from '../quantity.ts';
import { type Sourced, sourced } from '../sources.ts';
import type { Hanger } from './piece.ts';

/** A hanger whose kind was said. */
export type KnownHanger = Exclude<Hanger, 'ring'>;

type HangerCap = { name: string; each: Sourced<Kilograms> };

const practice = (value: number, at: string): Sourced<Kilograms> =>
  sourced(kg(value), 'common-practice', `trade 5.1: ${at}`, 'common-practice');

/** What one hanger on the piece is good for. Common practice: no document rates them, and of a range the lower end. */
export const HANGER_CAPS: Readonly<Record<KnownHanger, HangerCap>> = {
  'd-ring': { name: 'D-ring on one screw', each: practice(8, 'D-ring, one screw, 8 kg each') },
  'strap-ring': {
    name: 'strap ring',
    each: practice(15, 'strap ring, two to four screws, 15 to 20 kg each'),
  },
  'screw-eye': { name: 'screw eye', each: practice(2.5, 'screw eye and cord, 5 kg a pair') },
  'mirror-plate': { name: 'mirror plate', each: practice(5, 'mirror plate, 5 kg each') },
  'keyhole-plate': { name: 'keyhole plate', each: practice(10, 'keyhole plate let in, 10 kg each') },
  'keyhole-routed': {
    name: 'keyhole cut in the wood',
    each: practice(4, 'keyhole routed in wood, 4 kg each'),
  },
  sawtooth: { name: 'sawtooth hanger', each: practice(4, 'sawtooth, 4 kg') },
};

/** A strap ring with all four of its screws. */
export const STRAP_ON_FOUR = practice(20, 'strap ring, the upper end of 15 to 20 kg, four screws');
