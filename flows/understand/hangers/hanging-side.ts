import type { Span } from '../words/heard.ts';
import { isNumber, isWord, type Token } from '../words/token.ts';

export type Side = 'left' | 'right' | 'both';

export type Sided<F> = F & { side: Side };

/** Gives each length its side: "left 90 in …, right 94 in …", "95 in on the left". */
export function sided<F extends Span>(all: readonly Token[], lengths: readonly F[]): Sided<F>[] {
  const out = lengths.map((each): Sided<F> => ({ ...each, side: 'both' }));
  let side: Side = 'both';
  let since = 0;
  let at = 0;
  for (const [index, token] of all.entries()) {
    while (at < out.length && (out[at]?.from ?? 0) < index) at += 1;
    if (isWord(token, 'both', 'all') && isNumber(all[index + 1])) side = 'both';
    const hand = handOf(token);
    if (hand === null || isReference(all, index)) {
      const current = out.find((each) => each.from === index);
      if (current) current.side = side;
      continue;
    }
    const unclaimed = out.slice(since, at).some((each) => each.side === 'both') && at > since;
    if (isPostfix(all, index) || (side === 'both' && unclaimed && endsClause(all, index))) {
      for (const each of out.slice(since, at)) each.side = hand;
      side = 'both';
    } else side = hand;
    since = at;
  }
  return out;
}

function handOf(token: Token): 'left' | 'right' | null {
  if (/^(left|lh|lhs|l|lefthand)$/.test(token.text)) return 'left';
  if (/^(right|rh|rhs|r|righthand|rite)$/.test(token.text)) return 'right';
  return null;
}

/** "from the left": an edge, not a ring. */
function isReference(all: readonly Token[], at: number): boolean {
  const before = isWord(all[at - 1], 'the', 'top', 'hand') ? all[at - 2] : all[at - 1];
  const further = isWord(before, 'the') ? all[at - 3] : before;
  return isWord(further, 'from', 'off', 'of') || isWord(all[at - 1], 'far');
}

/** "240 down left, 97 in": the hand belongs to what came before. */
function endsClause(all: readonly Token[], at: number): boolean {
  const next = all[at + 1];
  return next === undefined || isWord(next, ',', '.', ';', 'and', ')');
}

/** "95 in on the left". */
function isPostfix(all: readonly Token[], at: number): boolean {
  const before = isWord(all[at - 1], 'the') ? all[at - 2] : all[at - 1];
  return isWord(before, 'on', 'at') && at > 2;
}
