import type { Span } from '../words/heard.ts';
import type { Token } from '../words/token.ts';

export type Dimension = 'wide' | 'high' | 'long' | 'deep' | 'round' | 'radius' | 'square';

const WORDS: Record<Dimension, string> = {
  wide: 'wide width w across wideness widht breadth widths broad widthways',
  high: 'high height tall h hight heigth hieght heights vertical upright',
  long: 'long length l lenght longer',
  deep: 'deep depth d depht thick thickness thk proud',
  round: 'round diameter dia diam circular circle',
  radius: 'radius',
  square: 'square sq',
};
const BY_WORD = new Map(
  Object.entries(WORDS).flatMap(([dimension, words]) =>
    words.split(' ').map((word): [string, Dimension] => [word, dimension as Dimension]),
  ),
);
/** Between a figure and the word for it: "900 mm in width", "1,250 mm (h)", "width = 900". */
const BETWEEN = new Set('in ( = : is of about bout roughly approx the around ~ - was by its'.split(' '));

/** What a figure measures, by the word behind it ("900 wide") or before it ("width 900", "w=920"). */
export function dimensionOf(all: readonly Token[], span: Span): Dimension | null {
  return after(all, span) ?? before(all, span.from);
}

function after(all: readonly Token[], span: Span): Dimension | null {
  for (let at = span.to; at < span.to + 3; at += 1) {
    const token = all[at];
    if (token === undefined || token.kind === 'number') return null;
    const dimension = BY_WORD.get(token.text);
    // "width 900 height 1200": the word belongs to the figure that follows it.
    if (dimension !== undefined) return leadsOn(all, at, span.from) ? null : dimension;
    if (!BETWEEN.has(token.text)) return null;
  }
  return null;
}

const NAMES = /^(w|h|d|l|width|height|depth|length|diameter|dia|radius|hight|heigth|hieght|widht)$/;

function leadsOn(all: readonly Token[], at: number, from: number): boolean {
  if (!NAMES.test(all[at]?.text ?? '') || all[at]?.glued || all[at - 1]?.text === '(') return false;
  const next = all[at + 1];
  const leads =
    next?.kind === 'number' || /^[=:]$/.test(next?.text ?? '') || /^(is|of)$/.test(next?.text ?? '');
  // "900 w 1200 h" against "w 900 h 1200": a figure with a word before it leaves the one behind to the next.
  return leads && before(all, from) !== null;
}

function before(all: readonly Token[], from: number): Dimension | null {
  for (let at = from - 1; at >= Math.max(0, from - 4); at -= 1) {
    const token = all[at];
    if (token === undefined || token.kind === 'number' || token.kind === 'unit') return null;
    const dimension = BY_WORD.get(token.text);
    if (dimension !== undefined) {
      const owned = all[at - 1]?.kind === 'unit' || all[at - 1]?.kind === 'number';
      return owned && token.kind === 'word' && !NAMES.test(token.text) ? null : dimension;
    }
    if (!BETWEEN.has(token.text)) return null;
  }
  return null;
}

/** "1200 x 900 (h x w)", "HxW": the height is said first. */
export function isHeightFirst(all: readonly Token[]): boolean {
  return all.some((token, at) => {
    if (/^hxw$/.test(token.text)) return true;
    const [x, then] = [all[at + 1], all[at + 2]];
    const high = BY_WORD.get(token.text) === 'high' && (x?.text === 'x' || x?.text === 'by');
    return (
      high &&
      token.kind === 'word' &&
      BY_WORD.get(then?.text ?? '') === 'wide' &&
      all[at - 1]?.kind !== 'number'
    );
  });
}
