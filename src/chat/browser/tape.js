// @ts-check
/** @typedef {import('../../../flows/reading.ts').DisplayUnit} Unit */
/** @typedef {(mm: number) => string} Tape A length as a tape of that unit reads it, without the unit. */

export const UNIT_NAMES = { mm: 'millimetres', cm: 'centimetres', m: 'metres', in: 'inches' };

const PER_MM = { mm: 1, cm: 0.1, m: 0.001 };

/** Millimetres and centimetres to a tenth, metres to the millimetre. */
const TENTHS = { mm: 10, cm: 10, m: 1000 };

/** Exact by definition. */
const MM_PER_INCH = 25.4;
const PARTS = 16;

/**
 * @param {Unit} unit
 * @returns {Tape}
 */
export function tapeIn(unit) {
  if (unit === 'in') return inches;
  return (mm) => String(Math.round(mm * PER_MM[unit] * TENTHS[unit]) / TENTHS[unit]);
}

/** To the sixteenth, the fraction in lowest terms: "40-3/8". */
function inches(/** @type {number} */ mm) {
  const parts = Math.round((Math.abs(mm) * PARTS) / MM_PER_INCH);
  const whole = Math.floor(parts / PARTS);
  let top = parts % PARTS;
  let bottom = PARTS;
  while (top !== 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const text = whole === 0 && fraction ? fraction : [String(whole), fraction].filter(Boolean).join('-');
  return mm < 0 && parts > 0 ? `-${text}` : text;
}
