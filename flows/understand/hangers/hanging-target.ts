import { isWord, type Token } from '../words/token.ts';

const ELSEWHERE = new Set(
  'ceiling floor corner wall mantel mantle mantelpiece door window socket switch skirting sofa couch'.split(
    ' ',
  ),
);
const SKIP = new Set(
  'the a it its each either both top very frame of edge edges left right outer outside'.split(' '),
);

/** What a figure of the hangers is measured from. */
export type Target = 'top' | 'left' | 'right' | 'side' | 'rings' | 'elsewhere' | null;

/** Where a figure is measured from: "in from each side", "below the top edge", "down from the ceiling". */
export function target(all: readonly Token[], from: number): Target {
  let at = from;
  while (isWord(all[at], 'in', 'inside', 'inward', 'inwards', 'down', 'up') && at < from + 2) at += 1;
  const tie = all[at];
  const each = isWord(tie, 'each', 'either', 'both') ? at : null;
  if (each === null && !isWord(tie, 'from', 'off', 'below', 'under', 'beneath', 'above', 'on', 'to'))
    return null;
  let side: Target = null;
  for (let next = each ?? at + 1; next < Math.min(all.length, at + 6); next += 1) {
    const word = all[next]?.text ?? '';
    if (ELSEWHERE.has(word)) return 'elsewhere';
    if (/^(tops?|head|up)$/.test(word) && !isWord(tie, 'on')) return side ?? 'top';
    if (/^(rings?|eyes?|hangers?|fixings?|straps?)$/.test(word)) return 'rings';
    if (/^(sides?|edges?|ends?|each|either|both)$/.test(word)) side ??= 'side';
    else if ((word === 'left' || word === 'right') && !isWord(tie, 'on')) side = word;
    else if (!SKIP.has(word)) return side;
  }
  return side;
}
