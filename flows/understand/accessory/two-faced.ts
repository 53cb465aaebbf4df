import { markersIn } from './face.ts';
import type { Mention } from './mentions.ts';
import { FIGURE } from './splits.ts';

/** "A switch on this side at ... and on the other at ...": one name, two fittings. */
export function twoFaced(heads: readonly Mention[], text: string): Mention[] {
  return heads.flatMap((head, at) => {
    const gap = text.slice(head.end, heads[at + 1]?.at ?? text.length);
    const [one, two] = markersIn(gap).filter(({ side }) => side === 'this' || side === 'far');
    if (one === undefined || two === undefined || one.side === two.side) return [head];
    const first = FIGURE.test(gap.slice(two.end))
      ? two.at
      : gap.slice(one.end).search(/ (?:,|;|\.|and|but) /) + one.end;
    const [mine, more] = [gap.slice(0, first), gap.slice(first)];
    if (first < one.end || !FIGURE.test(mine) || !FIGURE.test(more)) return [head];
    const from = head.end + first;
    return [head, { ...head, at: from, end: from, count: 1, as: 'more' as const }];
  });
}

/** "No sockets on this side but a switch on the other": that face is the sockets', who are not there. */
export function lessDenied(text: string, mentions: readonly Mention[]): string {
  return mentions.reduce((left, { denied, end }, at) => {
    if (!denied) return left;
    const next = mentions[at + 1]?.at ?? text.length;
    const clause =
      /^(?: (?!,|;|\.|-|and|but|plus|then|also|with|<)\S+)*/.exec(text.slice(end, next))?.[0] ?? '';
    return left.slice(0, end) + clause.replace(/\S/g, ',') + left.slice(end + clause.length);
  }, text);
}
