import { mm } from '../quantity.ts';
import { sourced } from '../sources.ts';

/** Two readings of one length that differ by no more than this are one length read with a tape. */
export const TAPE_READING = sourced(mm(2), 'our-choice', 'design: within 2 mm is tape reading', 'our-choice');

/** What plain arithmetic on measured lengths rests on. */
export const GEOMETRY = sourced(0, 'statics', 'plane geometry, lengths added and taken away', 'derived');

/** Sums of decimal lengths are off by less than this in a computer; no tape reads so finely. */
export const NOISE = mm(1e-6);
