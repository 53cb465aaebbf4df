import type { Accessory, AccessoryKind, JobSoFar } from '../../../core/job.ts';
import type { Listening } from '../../reading.ts';
import { saysNotKnown } from '../steering/dont-know.ts';
import { asks, type Found, fact, nothing } from '../words/found.ts';
import { type Outline, outlineOf, without } from '../words/outline.ts';
import { BOTH, FAR, facedClauses, NEAR } from './accessory-face.ts';
import { none, unaskedNone } from './accessory-none.ts';
import { spotsIn } from './accessory-place.ts';
import { ACCESSORY, kindOf, nameOf, UNASKED } from './accessory-words.ts';

/** What is not known of the other side must not put this side's fittings there. */
const NOT_LOOKED =
  /\b(?:but |and )?(?:dont|not|no|havent|cant|unsure|couldnt)\b[^,;.]*\b(?:other|far|back|behind|next)\b[^,;.]*/g;

type Item = { kind: AccessoryKind; face: 'this' | 'far'; stretch: string; denied: boolean };

/** What is on the wall, on which face, and where. */
export function readAccessories(outline: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'wall.accessories';
  const { text, said } = outline;
  if (!asked && !(UNASKED.test(text) && /<\d+>/.test(text)))
    return asked ? nothing(outline) : unaskedNone(outline);
  const farUnknown = saysNotKnown(text) && (FAR.test(text) || /\bother\b/.test(text));
  // Told in passing, a list says nothing of the face that was not named.
  const unseen = !asked && !FAR.test(text) && !BOTH.test(text);
  const told = facedClauses(farUnknown ? text.replace(NOT_LOOKED, ' ') : text, ACCESSORY);
  const items = itemsIn(told).filter((item) => !item.denied);
  if (items.length === 0) return none(outline, farUnknown);
  const list: Accessory[] = [];
  const missing: Item[] = [];
  let inferred = false;
  let needsWidth = false;
  for (const item of items) {
    const spots = spotsIn(outline, item.stretch, listening.known.wall?.widthMm);
    inferred ||= spots.inferred;
    needsWidth ||= spots.needsWidth;
    const [y] = spots.ys;
    if (spots.xs.length === 0 || y === undefined) missing.push(item);
    spots.xs.forEach((xMm, at) => {
      const yMm = spots.ys[at] ?? y;
      if (yMm !== undefined) list.push({ kind: item.kind, face: item.face, xMm, yMm });
    });
  }
  if (!asked && list.length === 0) return nothing(outline);
  const [lost] = missing;
  if (list.length === 0 && lost !== undefined) return whereIs(afterwards(outline, asked), lost, needsWidth);
  const value: JobSoFar = {
    wall: {
      accessories: besides(list, listening),
      ...(farUnknown || unseen
        ? { farSide: 'unknown' as const }
        : FAR.test(text) || BOTH.test(text)
          ? { farSide: 'seen' as const }
          : {}),
    },
  };
  const read = fact('wall.accessories', value, said, inferred);
  const used = nothing(afterwards(outline, asked));
  const partial =
    lost === undefined
      ? undefined
      : `where the ${nameOf(lost.kind)} is: from the left end, and up from the floor`;
  return { ...used, facts: [partial === undefined ? read : { ...read, partial }] };
}

/** A fitting of another kind or face than those told before is one more, not another word for them. */
function besides(list: Accessory[], { known }: Listening): Accessory[] {
  const before = known.wall?.accessories;
  if (!Array.isArray(before) || before.length === 0) return list;
  const told = (one: Accessory): boolean =>
    before.some(({ kind, face }) => kind === one.kind && face === one.face);
  return list.some(told) ? list : [...before, ...list];
}

/** What is left once the fittings are read: all of it is about them when they were asked for. */
function afterwards(outline: Outline, asked: boolean): Outline {
  if (asked) return outlineOf([], outline);
  const first = outline.text.search(UNASKED);
  const clause = Math.max(0, outline.text.lastIndexOf(' , ', first), outline.text.lastIndexOf(' . ', first));
  return without(outline, { index: clause, 0: outline.text.slice(clause) });
}

/** Nouns in order; each owns the words up to the next one, and those since the last comma before it. */
function itemsIn(text: string): Item[] {
  const matches = [...text.matchAll(ACCESSORY)];
  const items: Item[] = [];
  let like: AccessoryKind | null = null;
  let face: 'this' | 'far' = 'this';
  matches.forEach((match, at) => {
    const kind = kindOf(match, like);
    if (kind === null) return;
    like = kind;
    const start = match.index;
    const end = matches[at + 1]?.index ?? text.length;
    const clause = Math.max(
      text.lastIndexOf(' , ', start),
      text.lastIndexOf(' ; ', start),
      text.lastIndexOf(' . ', start),
      matches[at - 1]?.index ?? -1,
    );
    const before = text.slice(Math.max(clause, 0), start);
    const own = text
      .slice(start, end)
      .replace(/ (?:and|plus|;|,|then|also)(?: (?:a|an|one|two|the|there is|theres))*\W*$/, ' ');
    // What comes after the last break before the next fitting is about that one.
    const next = matches[at + 1]?.index;
    const cut =
      next === undefined ? -1 : Math.max(...[' , ', ' ; ', ' . '].map((mark) => own.lastIndexOf(mark)));
    const faced = cut > 0 ? own.slice(0, cut) : own;
    const whole = `${at === 0 || /[,;.]/.test(before) ? before : ''} ${own}`;
    if (FAR.test(faced) || (FAR.test(before) && at === 0) || (FAR.test(before) && /[,;.]/.test(before)))
      face = 'far';
    else if (NEAR.test(whole) || /[,;.]/.test(before)) face = 'this';
    const denied =
      /\b(?:no|none|not any|nothing|without|isnt any|arent any|nor|or)(?: \w+)?\s*$/.test(before.trim()) &&
      !/<\d+>/.test(own.split(/ [,;.] /)[0] ?? '');
    const leading = /<\d+>/.test(before) && at === 0 ? before : '';
    items.push({ kind, face, stretch: `${leading} ${own}`, denied });
  });
  return items;
}

function whereIs(outline: Outline, item: Item, needsWidth: boolean): Found {
  const name = nameOf(item.kind);
  const text = needsWidth
    ? `From the left end, please: how far is the middle of the ${name} from the left, and how high above the floor?`
    : `Where is the ${name}: how far is its middle from the left end, and how high above the floor?`;
  return asks(outline, { question: 'wall.accessories', text, readings: [] });
}
