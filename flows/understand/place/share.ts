/** A part of a whole as said: "a third", "two thirds", "3/4", "half way". */
const SHARE =
  /(?:\b(one|an?|two|three|four) )?\b(third|quarter|fifth|sixth|eighth)s?\b|(?<![\d/]\s?)\b([1-7])\/([2-8])\b|\b(half)(?: ?way)?\b|\b(halfway)\b/;
const COUNTS: Readonly<Record<string, number>> = { one: 1, a: 1, an: 1, two: 2, three: 3, four: 4 };
const PARTS: Readonly<Record<string, number>> = { third: 3, quarter: 4, fifth: 5, sixth: 6, eighth: 8 };
/** What shows that it is a part of the wall and not of an inch or a metre. */
const OF_THE_WHOLE =
  /^(?: (?:of|the|way|wall|room|height|width|length|its|whole))*(?: (?:along|across|over|in|up|down)\b|$|\s*[,.;]| (?:from|between)\b)/;

const TAPE = /^(?:2|4|8|quarter|eighth)$/;

export type Share = { share: number; text: string; rest: string };

/** The part of the wall that a message names, or null: shares of a unit ("half a metre") are lengths. */
export function shareIn(words: string): Share | null {
  const match = SHARE.exec(words);
  if (match === null) return null;
  const rest = words.slice(match.index + match[0].length);
  const ofWay = /^(?: of)?(?: the)?(?: way| wall| height| width| room)\b/.test(rest);
  if (!ofWay && !OF_THE_WHOLE.test(rest)) return null;
  const [text, count, part, top, bottom] = match;
  // "3/4 in from the left" is read off a tape; nobody's tape has thirds.
  if (!ofWay && /^ in\b/.test(rest) && TAPE.test(part ?? bottom ?? '')) return null;
  const share =
    part !== undefined
      ? (COUNTS[count ?? 'a'] ?? 1) / (PARTS[part] ?? 1)
      : top !== undefined
        ? Number(top) / Number(bottom)
        : 1 / 2;
  return share >= 1 ? null : { share, text: text.trim(), rest };
}
