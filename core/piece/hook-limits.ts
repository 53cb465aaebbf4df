import { type Degrees, degrees, kg, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';

/** One hook is tolerated up to here. */
export const ONE_HOOK = sourced(
  { upTo: kg(10), upToWidth: mm(600) },
  'our-choice',
  'safety 10: one hook',
  'our-choice',
);
/** A sawtooth, a nail alone or an adhesive strip is for no more than this. */
export const WEAK_HANGER = sourced(
  { upTo: kg(5) },
  'common-practice',
  'safety 10, C-HG-3: sawtooth, nail alone, adhesive strip',
  'common-practice',
);
/** A cord flatter than this is cautioned; riggers bar it. */
export const FLAT_CORD = sourced<Degrees>(
  degrees(30),
  'our-choice',
  'safety 10: T = W / (2 sin a); riggers’ practice',
  'our-choice',
);
