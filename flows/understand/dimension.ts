import type { Span } from './heard.ts';
import type { Token } from './token.ts';

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
  return after(all, span.to) ?? before(all, span.from);
}

function after(all: readonly Token[], from: number): Dimension | null {
  for (let at = from; at < from + 3; at += 1) {
    const token = all[at];
    if (token === undefined || token.kind === 'number') return null;
    const dimension = BY_WORD.get(token.text);
    // "width 900 height 1200": the word belongs to the figure that follows it.
    if (dimension !== undefined) return leadsOn(all, at, from) ? null : dimension;
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
  // "900 w 1200 h" against "w 900 h 1200": the first figure of the message decides.
  return leads && before(all, from - 1) !== null;
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
