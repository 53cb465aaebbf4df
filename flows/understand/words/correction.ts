import { DIRECTIONS } from './counted.ts';
import { isNumber, isUnit, isWord, type Token } from './token.ts';
import { isMassUnit } from './unit.ts';

/** Words after which the figure just said is taken back. */
const MARKERS = new Set(
  'no nah nope na sorry oops woops whoops rather actually wait scratch correction meant mean make call say should tell lie'.split(
    ' ',
  ),
);
/** What people say between the slip and the right figure. */
const FILLERS = new Set(
  `its it is was i that thats the a should be been hang on oh um er uh erm well weighed measured again checked now more
  like really just maybe probably about bout around roughly approx to you mate ok and but better read misread wrong my
  bad me let check , . ; : - ( ! ? them all both those change changed have`.split(/\s+/),
);
/** A figure further back than this is another matter; our choice. */
const REACH = 6;

type Quantity = { from: number; to: number; label: string | null };

/**
 * Self-corrections inside a message, taken: "18 no sorry 19 kg" is "19 kg", "750 x 1050 nah 1060" is
 * "750 x 1060", "31 not 13" is "31". The later figure stands in the earlier one's place. Idempotent; linear.
 */
export function corrected(all: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let at = 0; at < all.length; ) {
    const token = all[at];
    if (token === undefined) break;
    const dropped = negatedAt(all, at);
    if (dropped !== null) {
      at = dropped;
      continue;
    }
    const later = MARKERS.has(token.text) && token.kind === 'word' ? laterFigure(all, at) : null;
    const next = later === null ? null : replace(out, all, later);
    if (next === null) out.push(token);
    at = next ?? at + 1;
  }
  return out;
}

/** "not 13", "rather than 13", "instead of 13 kg": where the figure that does not count ends. */
function negatedAt(all: readonly Token[], at: number): number | null {
  const two = isWord(all[at + 1], 'than', 'of') && isWord(all[at], 'rather', 'instead');
  if (!two && !isWord(all[at], 'not')) return null;
  const start = at + (two ? 2 : 1);
  if (!isNumber(all[start]) || isWord(all[start + 1], '%', 'percent', 'sure')) return null;
  return quantityAt(all, start).to;
}

function laterFigure(all: readonly Token[], at: number): number | null {
  for (let next = at + 1; next < all.length && next <= at + 2 * REACH; next += 1) {
    const token = all[next];
    if (token?.kind === 'number') return token.words && token.value.equals(1) ? null : next;
    if (token === undefined || !(FILLERS.has(token.text) || MARKERS.has(token.text))) return null;
  }
  return null;
}

function quantityAt(all: readonly Token[], from: number): Quantity {
  let to = from + 1;
  if (isUnit(all[to]) && !inwardBefore(all, to)) {
    to += 1;
    const joins = isNumber(all[to]) && !isWord(all[to + 1], 'x');
    const coarse = /^(ft|st|lb|m|kg)$/.test(unitOf(all[to - 1]) ?? '');
    if (joins && coarse) to += isUnit(all[to + 1]) ? 2 : 1;
  }
  const label = all[to];
  return {
    from,
    to,
    label: label && DIRECTIONS.has(label.text) && label.kind !== 'mark' ? label.text : null,
  };
}

/** "100 in 220 down": that "in" is the figure's label. */
function inwardBefore(all: readonly Token[], at: number): boolean {
  return isWord(all[at], 'in') && all[at]?.glued === false;
}

const unitOf = (token: Token | undefined) => (isUnit(token) ? token.unit : null);

/** Puts the figure at `at` in place of the one it corrects, at the end of `out`; null when there is none. */
function replace(out: Token[], all: readonly Token[], at: number): number | null {
  const later = quantityAt(all, at);
  const earlier = earlierFigure(out, later);
  if (earlier === null) return null;
  const pair = pairFor(out, all, earlier, later);
  if (pair !== null) return pair;
  const laterUnit = unitOf(all[later.from + 1]);
  const mass = laterUnit !== null && isMassUnit(laterUnit);
  const earlierUnit = unitOf(out[earlier.from + 1]);
  const earlierMass = earlierUnit !== null && isMassUnit(earlierUnit);
  if (mass && !earlierMass && (earlierUnit !== null || earlier.label !== null)) return null;
  if (mass && out[earlier.from - 1]?.text === 'x') return null;
  if (earlierMass && laterUnit !== null && !mass) return null;
  const figures = all.slice(later.from, later.to);
  const keptUnit =
    laterUnit === null
      ? out
          .slice(earlier.from + 1, earlier.to)
          .filter(isUnit)
          .slice(0, 1)
      : [];
  out.splice(earlier.from, earlier.to - earlier.from, ...figures, ...keptUnit);
  return earlier.label !== null && earlier.label === later.label ? later.to + 1 : later.to;
}

/** "900 x 1200, actually 950 x 1200": both figures are said again. */
function pairFor(out: Token[], all: readonly Token[], earlier: Quantity, later: Quantity): number | null {
  if (all[later.to]?.text !== 'x' || !isNumber(all[later.to + 1]) || out[earlier.from - 1]?.text !== 'x')
    return null;
  const second = quantityAt(all, later.to + 1);
  let from = earlier.from - 2;
  while (from > 0 && !isNumber(out[from])) from -= 1;
  out.splice(from, earlier.to - from, ...all.slice(later.from, second.to));
  return second.to;
}

function earlierFigure(out: readonly Token[], later: Quantity): Quantity | null {
  let nearest: Quantity | null = null;
  for (let at = out.length - 1; at >= 0; at -= 1) {
    if (!isNumber(out[at]) || (isUnit(out[at - 1]) && isNumber(out[at - 2]) && !inwardBefore(out, at - 1)))
      continue;
    const quantity = quantityAt(out, at);
    if (nearest === null && out.length - quantity.to > REACH) return null;
    nearest ??= quantity;
    if (later.label === null || quantity.label === later.label) return quantity;
    const second = out[at - 1]?.text === 'x';
    if (second && /^(high|tall|h|height)$/.test(later.label)) return quantity;
    if (out[quantity.to]?.text === 'x' && /^(wide|w|width)$/.test(later.label)) return quantity;
  }
  return nearest;
}
