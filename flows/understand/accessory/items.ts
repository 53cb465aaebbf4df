import { type Marker, markersIn } from './face.ts';
import type { Mention } from './mentions.ts';
import { BREAK, FIGURE, sidesIn, splitOf } from './splits.ts';

/** A fitting with the words that are about it, and the face those words name. */
export type Item = Mention & { words: string; face: Marker['side'] | 'unsure' | null };

const SENTENCE = /[.;]/;
/** Fittings named in one breath share what is said after them: "a socket and a switch on the other side". */
const ONE_BREATH = /^(?: (?:,|and|plus|also|with|a|an|one|two|three|the|another|some|&|or))* $/;

/** Each fitting with its words. `heads` are in order; what stands between two is shared out by its breaks. */
export function itemsIn(text: string, heads: readonly Mention[]): Item[] {
  const first = heads[0];
  if (first === undefined) return [];
  const gaps = heads.map((head, at) => text.slice(head.end, heads[at + 1]?.at ?? text.length));
  const lead = text.slice(0, first.at);
  const before = FIGURE.test(lead) && !FIGURE.test(gaps.at(-1) ?? '');
  const after = sidesIn(gaps.at(-1) ?? '').length > 0;
  const splits = gaps.map((gap, at) =>
    splitOf(gap, at === gaps.length - 1, before, after, sidesIn(lead).length > 0),
  );
  const words = heads.map((head, at) => {
    const told = at === 0 ? lead : `${splits[at - 1]?.heading ?? ''} ${splits[at - 1]?.next ?? ''}`;
    const own = text.slice(head.at, head.end).replace(/<\d+>/g, ' ');
    return {
      told,
      own: before
        ? `${own} ${at === heads.length - 1 ? gaps[at] : (splits[at]?.mine ?? '')}`
        : ` ${splits[at]?.mine ?? ''}`,
    };
  });
  let governs: { side: Marker['side']; firm: boolean } | null = null;
  let farTold = false;
  const items: Item[] = [];
  heads.forEach((head, at) => {
    const { told, own } = words[at] ?? { told: '', own: '' };
    const gap = gaps[at - 1] ?? '';
    const previous = items.at(-1);
    const ended = at === 0 || SENTENCE.test(gap);
    const toldSide = sidesIn(told).at(-1) ?? null;
    // A face named before its fittings holds to the end of the sentence; "other side:" holds until another.
    if (toldSide !== null) governs = { side: toldSide, firm: ended };
    else if (ended && governs !== null && !isHeading(text.slice(0, head.at))) governs = null;
    const sides = new Set(ownSidesIn(own));
    const [ownSide] = sides;
    // "Other side is the kitchen. Socket in the kitchen ..."
    const isSaidAgain = ownSide === 'room' && toldSide === 'far';
    const isTorn =
      sides.size > 1 || (ownSide !== undefined && toldSide !== null && ownSide !== toldSide && !isSaidAgain);
    let face: Item['face'] = isTorn ? 'unsure' : isSaidAgain ? 'far' : (ownSide ?? toldSide ?? null);
    if (face === 'same') face = previous?.face ?? null;
    if (face === null && head.as === 'one') face = previous?.face ?? null;
    face ??= governs === null ? null : governs.firm || governs.side === 'this' ? governs.side : 'unsure';
    if (face === null && farTold) face = 'unsure';
    if (ownSide !== undefined && toldSide === null && previous?.face === null)
      sayBefore(items, gaps, face, reachOf(own));
    if (splits[at - 1]?.either && previous !== undefined) {
      face = 'unsure';
      items[items.length - 1] = { ...previous, face: 'unsure' };
    }
    farTold ||= face === 'far' || face === 'room';
    items.push({ ...head, words: `${FIGURE.test(told) ? told : ''} ${own}`, face });
  });
  return lessSaidAgain(items, text);
}

type Reach = 'all' | 'loose' | 'own';

/** "All on the other side" is of every one before; ", other side" at the end of a list may be. */
function reachOf(own: string): Reach {
  const [marker] = markersIn(own);
  if (marker === undefined) return 'own';
  if (
    /\b(?:all|both|each|everything|they|these|theyre|those|them)(?: (?:of|them|these|those|it|are|is|on|at))* *$/.test(
      own.slice(0, marker.at),
    )
  )
    return 'all';
  const cut = [...own.matchAll(BREAK)].filter(({ index }) => index < marker.at).at(-1);
  const alone =
    cut !== undefined && !FIGURE.test(own.slice(cut.index)) && FIGURE.test(own.slice(0, cut.index));
  return alone ? 'loose' : 'own';
}

/** "A and B on the other side": of both in one breath; not plain, once A has figures of its own. */
function sayBefore(items: Item[], gaps: readonly string[], face: Item['face'], reach: Reach): void {
  for (let at = items.length - 1; at >= 0; at -= 1) {
    const [one, gap] = [items[at], gaps[at] ?? ''];
    if (one === undefined || one.face !== null) return;
    if (reach === 'all' || ONE_BREATH.test(gap)) items[at] = { ...one, face };
    else if (face === 'this' || (/ [,;.]/.test(gap) && (reach !== 'loose' || SENTENCE.test(gap)))) return;
    else items[at] = { ...one, face: 'unsure' };
  }
}

/** "A socket and a switch, the switch is 1200 up": said again with its place, it is still one. */
function lessSaidAgain(items: readonly Item[], text: string): Item[] {
  return items.filter(
    (item, at) =>
      FIGURE.test(item.words) ||
      item.count !== 1 ||
      !items
        .slice(at + 1)
        .some(
          (later) =>
            later.kind === item.kind &&
            later.as === 'named' &&
            /\b(?:the|that|this|its) (?:\w+ )?$/.test(text.slice(0, later.at)) &&
            (later.face ?? item.face) === (item.face ?? later.face),
        ),
  );
}

/** A face named in a clause of its own is the fitting's, unless that clause says something else besides. */
function ownSidesIn(own: string): Marker['side'][] {
  const cuts = [...own.matchAll(BREAK)].map(({ index }) => index);
  return [0, ...cuts].flatMap((from, at) => {
    const chunk = own.slice(from, cuts[at] ?? own.length);
    const markers = markersIn(chunk);
    const rest = markers.reduceRight((words, each) => words.slice(0, each.at) + words.slice(each.end), chunk);
    const plain = at === 0 || markers.length === 0 || rest.split(' ').every((word) => PLAIN.test(word));
    return plain ? markers.map(({ side }) => side) : ['elsewhere' as const];
  });
}

const PLAIN =
  /^(?:|<\d+>|[^a-z<]|up|down|along|across|from|off|of|the|at|is|its|it|on|in|and|but|high|floor|left|right|hand|end|corner|wall|mm|cm|about|over|above|an?|all|both|each|too|as|well|also|that|one|ones|these|those|theyre|thats|are|they|them|this|just|only|measured|by|to|facing|face|when|i|there|same|height)$/;

/** The face named last stands before a colon, or is a sentence of its own. */
function isHeading(before: string): boolean {
  const last = markersIn(before).at(-1);
  return last !== undefined && /^ *[:;]/.test(before.slice(last.end));
}
