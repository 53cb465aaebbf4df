import { type Millimetres, mm } from '../../quantity.ts';
import { NOISE } from '../tolerance.ts';
import { lengthOf, type Stretch } from './line.ts';

/** A stretch between openings with the pieces that go there and the gap between them. Millimetres. */
export type Part = { stretch: Stretch; leftsMm: Millimetres[]; gapMm: Millimetres };

/** What is left of a stretch beside the openings in it, from the left. Millimetres. */
export function beside(whole: Stretch, openings: readonly Stretch[]): Stretch[] {
  const inOrder = [...openings].sort((one, other) => one.fromMm - other.fromMm);
  const left: Stretch[] = [];
  let fromMm = whole.fromMm;
  for (const opening of inOrder) {
    if (opening.fromMm - fromMm > NOISE)
      left.push({ fromMm, toMm: mm(Math.min(opening.fromMm, whole.toMm)) });
    fromMm = mm(Math.max(fromMm, opening.toMm));
  }
  if (whole.toMm - fromMm > NOISE) left.push({ fromMm, toMm: whole.toMm });
  return left;
}

type Share = { parts: Part[]; least: number };

/**
 * Pieces in order over stretches in order, spread evenly in each with a gap beside every opening; of all ways to
 * share them out, the one whose smallest gap is largest. Null when none fits. Millimetres.
 */
export function partedRun(
  whole: Stretch,
  stretches: readonly Stretch[],
  widthsMm: readonly Millimetres[],
  spread: 'ends' | 'flush',
): Part[] | null {
  const known = new Map<string, Share | null>();
  const share = (at: number, done: number): Share | null => {
    const name = `${at} ${done}`;
    const found = known.get(name);
    if (found !== undefined) return found;
    const best = shared(at, done);
    known.set(name, best);
    return best;
  };
  const shared = (at: number, done: number): Share | null => {
    const stretch = stretches[at];
    if (stretch === undefined) return done === widthsMm.length ? { parts: [], least: Infinity } : null;
    let best: Share | null = null;
    for (let end = done; end <= widthsMm.length; end += 1) {
      const own = spreadIn(stretch, widthsMm.slice(done, end), whole, spread);
      if (own === null) break;
      const rest = share(at + 1, end);
      const least = rest && Math.min(rest.least, own.gapMm);
      if (rest && least !== null && least > (best?.least ?? -1))
        best = { parts: [own, ...rest.parts], least };
    }
    return best;
  };
  return share(0, 0)?.parts ?? null;
}

/** Equal gaps in one stretch: an end of it has a gap too, but an end of the whole run where that is flush. */
function spreadIn(
  stretch: Stretch,
  widthsMm: readonly Millimetres[],
  whole: Stretch,
  spread: 'ends' | 'flush',
): Part | null {
  if (widthsMm.length === 0) return { stretch, leftsMm: [], gapMm: mm(Infinity) };
  const flushLeft = spread === 'flush' && stretch.fromMm === whole.fromMm;
  const flushRight = spread === 'flush' && stretch.toMm === whole.toMm;
  const free = lengthOf(stretch) - widthsMm.reduce((all, each) => all + each, 0);
  const gaps = widthsMm.length + 1 - (flushLeft ? 1 : 0) - (flushRight ? 1 : 0);
  if (free < 0 - NOISE || gaps === 0) return null;
  const gap = Math.max(0, free) / gaps;
  let at = stretch.fromMm + (flushLeft ? 0 : gap);
  const leftsMm = widthsMm.map((width) => {
    const left = mm(at);
    at += width + gap;
    return left;
  });
  return { stretch, leftsMm, gapMm: mm(gap) };
}
