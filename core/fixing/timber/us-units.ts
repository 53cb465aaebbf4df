import { KG_PER_POUND, MM_PER_INCH, STANDARD_GRAVITY } from '../../quantity.ts';

/** Exact by definition: pound times standard gravity. */
export const NEWTONS_PER_LBF = KG_PER_POUND * STANDARD_GRAVITY;
/** Exact by definition: pound-force over square inch, in newtons over square millimetre. */
export const MPA_PER_PSI = NEWTONS_PER_LBF / MM_PER_INCH ** 2;
