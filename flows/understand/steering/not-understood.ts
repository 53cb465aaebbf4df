import type { Reading } from '../../reading.ts';

/** A reading that holds nothing: what every other reading starts from. */
export const NOT_UNDERSTOOD: Reading = {
  intent: 'not-understood',
  facts: [],
  refused: [],
  asks: [],
  correction: false,
};
