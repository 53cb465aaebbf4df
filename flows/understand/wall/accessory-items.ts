import { type Marker, markersIn } from './accessory-face.ts';
import type { Mention } from './accessory-mentions.ts';

/** A fitting with the words that are about it, and the face those words name. */
export type Item = Mention & { words: string; face: Marker['side'] | 'unsure' | null };

const BREAK = / (?:,|;|\.|-|and|but|plus|then|also|with|while|whereas|&)(?= |$)/g;
const SENTENCE = /[.;]/;
const FIGURE = /<\d+>/;
/** Fittings named in one breath share what is said after them: "a socket and a switch on the other side". */
const ONE_BREATH = /^(?: (?:,|and|plus|also|with|a|an|one|two|three|the|another|some|&|or))* $/;

type Split = { mine: string; next: string; heading: string; either: boolean };

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

const sidesIn = (words: string): Marker['side'][] => markersIn(words).map(({ side }) => side);

/** The face named last stands before a colon, or is a sentence of its own. */
function isHeading(before: string): boolean {
  const last = markersIn(before).at(-1);
  return last !== undefined && /^ *[:;]/.test(before.slice(last.end));
}

/** What of the words between two fittings is the first one's, and what leads on to the next. */
function splitOf(
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
