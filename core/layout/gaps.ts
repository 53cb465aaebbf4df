import { type Millimetres, mm } from '../quantity.ts';

/** Several pieces along a line: the gap between them and each left edge; or by how much they do not fit. */
export type Spread =
  | { ok: true; gapMm: Millimetres; leftsMm: Millimetres[] }
  | { ok: false; gapMm: Millimetres; overByMm: Millimetres };

const total = (lengths: readonly Millimetres[]): number => lengths.reduce((all, each) => all + each, 0);

function leftEdges(startMm: number, widthsMm: readonly Millimetres[], gapMm: number): Millimetres[] {
  let at = startMm;
  return widthsMm.map((width) => {
    const left = mm(at);
    at += width + gapMm;
    return left;
  });
}

/**
 * Equal gaps over a width: g = (W - sum w) / (n + 1) with gaps at the ends, (W - sum w) / (n - 1) with the ends flush.
 * By edges, never by centres. One piece flush has no answer, so it is centred. Millimetres.
 */
export function equalGaps(
  overMm: Millimetres,
  widthsMm: readonly Millimetres[],
  spread: 'ends' | 'flush',
): Spread {
  const atEnds = spread === 'ends' || widthsMm.length < 2;
  const free = overMm - total(widthsMm);
  const gap = free / (widthsMm.length + (atEnds ? 1 : -1));
  if (gap < 0) return { ok: false, gapMm: mm(gap), overByMm: mm(0 - free) };
  return { ok: true, gapMm: mm(gap), leftsMm: leftEdges(atEnds ? gap : 0, widthsMm, gap) };
}

/** A group with a fixed gap, centred: start = (W - (sum w + (n - 1) g)) / 2. Millimetres. */
export function fixedGap(overMm: Millimetres, widthsMm: readonly Millimetres[], gapMm: Millimetres): Spread {
  const group = groupLength(widthsMm, gapMm);
  if (group > overMm) return { ok: false, gapMm, overByMm: mm(group - overMm) };
  return { ok: true, gapMm, leftsMm: leftEdges((overMm - group) / 2, widthsMm, gapMm) };
}

/** Length of a group: sum w + (n - 1) g. Millimetres. */
export function groupLength(widthsMm: readonly Millimetres[], gapMm: Millimetres): Millimetres {
  return mm(total(widthsMm) + Math.max(widthsMm.length - 1, 0) * gapMm);
}

/** Gaps that pieces set out by their centres leave, ends included: equal centres are not equal gaps. Millimetres. */
export function gapsOfCentres(
  overMm: Millimetres,
  widthsMm: readonly Millimetres[],
  centresMm: readonly Millimetres[],
): Millimetres[] {
  let edge = 0;
  const gaps = widthsMm.map((width, at) => {
    const left = (centresMm[at] ?? 0) - width / 2;
    const gap = mm(left - edge);
    edge = left + width;
    return gap;
  });
  return [...gaps, mm(overMm - edge)];
}

/** Bottom edges of rows of one height about a centre line, from the lowest up. Millimetres. */
export function rowBottoms(
  rows: number,
  heightMm: Millimetres,
  gapMm: Millimetres,
  centreMm: Millimetres,
): Millimetres[] {
  const heights = Array.from({ length: rows }, () => heightMm);
  return leftEdges(centreMm - groupLength(heights, gapMm) / 2, heights, gapMm);
}
