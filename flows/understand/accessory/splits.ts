import { type Marker, markersIn } from './face.ts';

export const BREAK = / (?:,|;|\.|-|and|but|plus|then|also|with|while|whereas|&)(?= |$)/g;
export const FIGURE = /<\d+>/;

/** What of the words between two fittings is whose; `heading` is of all that follow. */
type Split = { mine: string; next: string; heading: string; either: boolean };

export const sidesIn = (words: string): Marker['side'][] => markersIn(words).map(({ side }) => side);

/** What of the words between two fittings is the first one's, and what leads on to the next. */
export function splitOf(
  gap: string,
  isLast: boolean,
  before: boolean,
  facesAfter: boolean,
  facesBefore: boolean,
): Split {
  const whole: Split = { mine: gap, next: '', heading: '', either: false };
  if (isLast) return whole;
  const breaks = [...gap.matchAll(BREAK)];
  const cut = breaks.at(-1);
  if (cut === undefined)
    return before ? { ...whole, mine: '', next: gap } : unbroken(gap, facesAfter, facesBefore);
  const [mine, next] = [gap.slice(0, cut.index), gap.slice(cut.index)];
  if (before) {
    const start = breaks.find(
      ({ index }) => FIGURE.test(gap.slice(index)) && !FIGURE.test(gap.slice(0, index)),
    );
    return start === undefined
      ? { ...whole, mine, next }
      : { ...whole, mine: gap.slice(0, start.index), next: gap.slice(start.index) };
  }
  if (FIGURE.test(next) && !isWhole(mine)) return whole;
  const cuts = breaks.map(({ index }) => index).filter((index) => index < mine.length);
  const last = mine.slice(cuts.at(-1) ?? 0);
  const stands =
    cuts.length > 0 && !FIGURE.test(last) && sidesIn(last).length > 0 && sidesIn(next).length === 0;
  if (!stands || (facesAfter && !/: *$/.test(last))) return { ...whole, mine, next };
  return { ...whole, mine: mine.slice(0, cuts.at(-1)), next, heading: last };
}

/** No comma between: a face said after the figures and before the next fitting may be of either. */
function unbroken(gap: string, facesAfter: boolean, facesBefore: boolean): Split {
  const whole: Split = { mine: gap, next: '', heading: '', either: false };
  const markers = markersIn(gap);
  const last = markers.at(-1);
  const between =
    last !== undefined && FIGURE.test(gap.slice(0, last.at)) && !FIGURE.test(gap.slice(last.end));
  if (!between || (markers.length === 1 && facesAfter && !facesBefore)) return whole;
  const parted = { ...whole, mine: gap.slice(0, last.at), next: gap.slice(last.at) };
  return { ...parted, either: markers.length === 1 && !facesBefore };
}

/** Across and up both told already, as far as figures go. */
const isWhole = (words: string): boolean => (words.match(/<\d+>/g)?.length ?? 0) >= 2;
