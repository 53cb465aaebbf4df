import Fraction from 'fraction.js';

/** A written number; `other` is its second reading where a comma or dot could be decimal or thousands. */
export type Figure = { value: Fraction; other?: Fraction; pair?: readonly [Fraction, Fraction] };

/** Longer runs of digits are no measurement; our choice. */
const MOST_DIGITS = 12;
/** A thousands group. */
const GROUP = 3;

/**
 * Reads digits with points and commas. "3,400" is thousands first and 3.4 second; "3.450" is a decimal
 * first and 3450 second; "9,5" is only a decimal. Null for dates, versions and endless digits.
 */
export function figure(text: string): Figure | null {
  if (text.length > MOST_DIGITS) return null;
  const separators = text.replace(/\d/g, '');
  if (separators === '') return { value: new Fraction(text) };
  if (separators.length === 1) return oneSeparator(text, separators);
  const last = separators.at(-1) ?? '';
  const [whole = '', ...rest] = text.split(/[.,]/);
  const decimals = rest.at(-1) ?? '';
  const mixed = separators.indexOf(last) === separators.length - 1;
  const groups = mixed ? rest.slice(0, -1) : rest;
  const oneKind = new Set(mixed ? separators.slice(0, -1) : separators).size === 1;
  if (!oneKind || whole.length > GROUP || groups.some((group) => group.length !== GROUP)) return null;
  const digits = whole + groups.join('');
  return { value: new Fraction(mixed ? `${digits}.${decimals}` : digits) };
}

function oneSeparator(text: string, separator: string): Figure | null {
  const [whole = '', rest = ''] = text.split(separator);
  const decimal = new Fraction(`${whole}.${rest}`);
  const thousands = rest.length === GROUP && whole.length <= GROUP && !whole.startsWith('0');
  const pair: readonly [Fraction, Fraction] = [new Fraction(whole), new Fraction(rest)];
  if (separator === '.') {
    return thousands ? { value: decimal, other: new Fraction(whole + rest) } : { value: decimal };
  }
  if (thousands) return { value: new Fraction(whole + rest), other: decimal, pair };
  return rest.length > GROUP ? { value: decimal, pair, other: decimal } : { value: decimal, pair };
}
