import { type Millimetres, MM_PER_INCH } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

const PROTRUDING = '307.2';
const MIRRORS = '603.3 and advisory';

/** Figures of the document, in its inches: its millimetres are not exact conversions, so it is tested in inches. */
export const CANE = sourced({ above: 27, upTo: 80, most: 4 }, 'ADA-2010', PROTRUDING, 'read-secondary', 'in');
export const MIRROR_BOTTOM = sourced(
  { basin: 40, elsewhere: 35 },
  'ADA-2010',
  MIRRORS,
  'read-secondary',
  'in',
);
/** The same two heights as the document prints them in millimetres. */
export const MIRROR_BOTTOM_MM = sourced(
  { basin: 1015, elsewhere: 890 },
  'ADA-2010',
  MIRRORS,
  'read-secondary',
  'mm',
);
const MIRROR_TOP = sourced(74, 'ADA-2010', MIRRORS, 'read-secondary', 'in');

/** Whether a cane finds what sticks out over a walkway: its lowest leading edge and its depth, inches. */
export function caneFinds(leadingEdgeIn: number, depthIn: number): boolean {
  const { above, upTo, most } = CANE.value;
  return leadingEdgeIn <= above || leadingEdgeIn > upTo || depthIn <= most;
}

/** The highest a reflecting surface may begin in a public washroom, inches. */
export function highestMirrorBottom(over: 'basin' | 'elsewhere'): number {
  return MIRROR_BOTTOM.value[over];
}

/**
 * Whether a reflecting surface that begins this high meets the document in one of the two units it prints, which
 * are not exact conversions. Millimetres above the floor.
 */
export function beginsLowEnough(over: 'basin' | 'elsewhere', startsMm: Millimetres): boolean {
  const inchesUp = startsMm / MM_PER_INCH;
  return inchesUp <= MIRROR_BOTTOM.value[over] || startsMm <= MIRROR_BOTTOM_MM.value[over];
}

/** A washroom mirror hung as high as it may be: where its top comes, and whether the advised top is reached. Inches. */
export function mirrorAtMost(
  over: 'basin' | 'elsewhere',
  reflectingHeightIn: number,
): { topIn: number; advisoryMet: boolean } {
  const topIn = highestMirrorBottom(over) + reflectingHeightIn;
  return { topIn, advisoryMet: topIn >= MIRROR_TOP.value };
}
