import Fuse from 'fuse.js';
import { normalise } from './normalise.ts';
import { ORDINARY, RESPELT, TRADE_WORDS } from './vocabulary.ts';

/** A message in the readers' own spelling; `guessed` are words that were corrected by likeness only. */
export type Respelt = { text: string; guessed: ReadonlySet<string> };

/** Longest message looked at, in characters; the doors refuse more. */
const LONGEST = 2000;
/** Shorter words have too many neighbours to be corrected. */
const SHORTEST_CORRECTED = 5;
/** Two slips only in a word of this many letters. Our choice. */
const TWO_SLIPS_FROM = 8;
/** At most so many words of one message are looked up by likeness, which keeps a turn short. */
const MOST_LOOKED_UP = 12;

const trade = new Set([...TRADE_WORDS, ...Object.values(RESPELT)]);
const likeness = new Fuse(TRADE_WORDS, {
  threshold: 0.35,
  distance: 8,
  includeScore: true,
  minMatchCharLength: 3,
});

/** What nobody sees parts nothing: "2<zero-width space>4 kg" is 24 kg. Tabs and line ends are seen. */
const INVISIBLE = /[\p{Cf}\p{Variation_Selector}]|(?![\t\n\r])\p{Cc}/gu;

/** Puts a message into the readers' spelling: known slips from the glossary, unknown ones by likeness. */
export function respell(said: string): Respelt {
  const guessed = new Set<string>();
  let lookedUp = 0;
  // A line of a list ends where it ends: the next one is about something else.
  const lines = said.slice(0, LONGEST).replace(/(?<=\S)[^\S\r\n]*[\r\n]+\s*(?=\S)/g, ' ; ');
  const plain = normalise(lines.replace(INVISIBLE, '')).replace(/\p{C}+/gu, ' ');
  const text = plain.replace(/\p{L}[\p{L}\p{M}'-]*\p{L}|\p{L}/gu, (word) => {
    const known = Object.hasOwn(RESPELT, word) ? RESPELT[word] : undefined;
    if (known !== undefined && known !== '') return known;
    if (lookedUp >= MOST_LOOKED_UP || !mayBeCorrected(word)) return word;
    lookedUp += 1;
    const close = closest(word);
    if (close === null) return word;
    guessed.add(close);
    return close;
  });
  return { text: joined(text), guessed };
}

/** Words that are written apart as often as together. */
function joined(text: string): string {
  return (
    text
      .replace(/\bplaster boards?\b/g, 'plasterboard')
      .replace(/\bdry walls?\b/g, 'drywall')
      // "The height to 1600" is read as "1600 high", which the readers of sizes know.
      .replace(
        /(?<!wall |ceiling |room |same )\b(height|width) (?:(?:to|is|should be|was|now) )+(\d+(?:[.,]\d+)?(?: ?(?:mm|cm|m|in|inches|ft))?)\b/g,
        (_, side: string, figure: string) => `${figure} ${side === 'height' ? 'high' : 'wide'}`,
      )
      .replace(/\bpower points?\b/g, 'powerpoint')
      .replace(/\bkey holes?\b/g, 'keyholes')
      .replace(/\bbreezeblocks?\b/g, 'breeze block')
      .replace(/\bcinderblocks?\b/g, 'cinder block')
      .replace(/\bdot\s*(?:&|n|'n'|and|an)\s*dab(?:bed)?\b/g, 'dot and dab')
      .replace(/\bmantel (?:piece|shelf|peice)\b/g, 'mantel')
      .replace(/\bt\s*(?:&|n|and)\s*g\b|\btongue (?:&|n|an) groove\b/g, 'tongue and groove')
      .replace(/\bplaster board\b/g, 'plasterboard')
      .replace(/\s+/g, ' ')
      .trim()
  );
}

function mayBeCorrected(word: string): boolean {
  return (
    word.length >= SHORTEST_CORRECTED &&
    /^[a-z]+$/.test(word) &&
    !trade.has(word) &&
    !trade.has(word.replace(/e?s$/, '')) &&
    !ORDINARY.has(word)
  );
}

function closest(word: string): string | null {
  const allowed = word.length >= TWO_SLIPS_FROM ? 2 : 1;
  // The search below is the costly part, and most words are near none.
  if (!TRADE_WORDS.some((item) => isSlipOf(item, word, allowed))) return null;
  const near = likeness
    .search(word, { limit: 5 })
    .filter(({ item }) => isSlipOf(item, word, allowed))
    .map(({ item }) => ({ item, slips: slipsBetween(word, item) }))
    .sort((one, other) => one.slips - other.slips);
  return near[0]?.item ?? null;
}

/** Begins alike, is about as long, and differs by few slips. */
function isSlipOf(item: string, word: string, allowed: number): boolean {
  return (
    item[0] === word[0] &&
    Math.abs(item.length - word.length) <= allowed &&
    !isForm(word, item) &&
    slipsBetween(word, item) <= allowed
  );
}

const ENDINGS: ReadonlySet<string> = new Set(['s', 'es', 'ed', 'er', 'ing', 'y', 'd']);

/** A plural or another ending is a word of its own, not a slip. */
function isForm(word: string, item: string): boolean {
  return word.startsWith(item) && ENDINGS.has(word.slice(item.length));
}

/** Edits between two words, a swap of neighbours counting one (optimal string alignment). */
function slipsBetween(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, at) => at)];
  for (let i = 1; i <= one.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const above = rows[i - 1] ?? [];
      const change = one[i - 1] === other[j - 1] ? 0 : 1;
      let best = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + change);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        best = Math.min(best, (rows[i - 2]?.[j - 2] ?? 0) + 1);
      }
      row.push(best);
    }
    rows.push(row);
  }
  return rows[one.length]?.[other.length] ?? 0;
}
