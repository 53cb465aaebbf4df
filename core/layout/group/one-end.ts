import type { Country } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sixteenthsText, toSixteenths } from '../inch.ts';
import { lengthText } from '../length-text.ts';

const FROM_ONE_END = 'Measure every mark from the left end of the wall, never from gap to gap';

/**
 * Why all is measured from one end, with what stepping along in rounded lengths would come to by the last piece:
 * sixteenths of an inch where the country's tapes read so, else whole millimetres. Each edge is rounded once, from
 * where it exactly is.
 */
export function oneEndAdvice(
  leftsMm: readonly Millimetres[],
  widthsMm: readonly Millimetres[],
  country: Country | 'unknown' | undefined,
): string {
  if (country !== 'US' && country !== 'CA') {
    const off = drift(leftsMm, widthsMm, (length) => Math.round(length)) - (leftsMm.at(-1) ?? 0);
    return Math.abs(off) < 1
      ? `${FROM_ONE_END}: what a tape rounds off would add up.`
      : `${FROM_ONE_END}: stepped along in whole millimetres, the last piece would come ${lengthText(mm(Math.abs(off)))} too far ${off > 0 ? 'right' : 'left'}.`;
  }
  const sixteenths = (length: number): number => toSixteenths(mm(length)).sixteenths;
  const edges = leftsMm.map(sixteenths);
  const off = drift(leftsMm, widthsMm, sixteenths) - (edges.at(-1) ?? 0);
  const told = edges.map((edge) => sixteenthsText(edge)).join(', ');
  const stepped =
    off === 0
      ? 'what is rounded off at each step would add up'
      : `stepped along in sixteenths, the last piece would come ${sixteenthsText(Math.abs(off))} in too far ${off > 0 ? 'right' : 'left'}`;
  return `${FROM_ONE_END}: ${stepped}. Left edges in inches, each rounded once: ${told}.`;
}

/** Where the last left edge comes when every gap and width before it is rounded by itself and added on. */
function drift(
  leftsMm: readonly Millimetres[],
  widthsMm: readonly Millimetres[],
  rounded: (length: number) => number,
): number {
  let edge = rounded(leftsMm[0] ?? 0);
  for (const [at, left] of leftsMm.slice(1).entries()) {
    const width = widthsMm[at] ?? 0;
    edge += rounded(width) + rounded(left - (leftsMm[at] ?? 0) - width);
  }
  return edge;
}
