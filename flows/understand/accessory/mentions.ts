import type { AccessoryKind } from '../../../core/wall/wall.ts';
import { COUNTED_APART, kindOf, NAMES } from './words.ts';

/** A fitting named in a message, or the "one" and "another" that stand for one named before. */
export type Mention = {
  kind: AccessoryKind;
  at: number;
  end: number;
  /** How many; null for a plural that does not say. */
  count: number | null;
  /** `one` is part of a number told before ("two sockets, one at ..."); `more` is besides it. */
  as: 'named' | 'one' | 'more';
  /** Said only to tell where something else is: "by the door". */
  landmark: boolean;
  denied: boolean;
};

const COUNTS: Record<string, number> = {
  a: 1,
  an: 1,
  one: 1,
  single: 1,
  two: 2,
  both: 2,
  couple: 2,
  pair: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
};
const COUNT_BEFORE =
  /(?:^| )(a|an|one|two|both|couple|pair|three|four|five|six|seven|eight|[1-9])(?: (?:x|of|the|more|other|big|small|old|new|white|metal|little))*$/;
const COUNT_AFTER = /^ x ([1-9])(?= |$)/;

const LANDMARK =
  /\b(?:by|beside|near|near to|nearest|next to|close to|alongside|along from|under|underneath|above|over|below|beneath|behind|on top of|left of|right of|side of|edge of|between|opposite|against|for|off|from|of|to|past|feeds|feeding|in line with|level with|in front of|inside|around|as|than|with the|aligned? with|align with|lines up with|until|avoid|miss)(?: (?:the|a|an|my|our|that|this|where|main|old|big))*$/;
const PURPOSE = /\b(?:for|feeds|feeding|supplying|to feed)(?: (?:the|a|an|my|our))*$/;
const COUNTED_OF =
  /\b(?:one|two|three|both|all|some|each|any|none|pair|couple|set|bank|row|run|line|number|lots?|loads|bunch|few|[1-9]) of(?: the)?$/;
const DENIED =
  /\b(?:no|not any|not a|not one|zero|without(?: a| any)?|(?:isnt|arent|wasnt|hasnt|havent|dont have|hasnt got|havent got|doesnt have|cant see|not got|never)(?: got)?(?: a| an| any))(?: (?:other|more|visible|obvious|electrical|actual))*$/;
const CHAINED = /^ (?:(?:,|or|nor|and|any|no|a|other) )*$/;

const STANDS_FOR =
  /\b(?:(another|one more|a further|a second|a third|an extra|(?:and )?(?:the )?same(?: again)?(?= (?:on|at|for|in) )|ditto)(?: (?:one|of (?:them|those|the same)))?|(the other|the second|the third|the first|the last|second|first|third|other)(?: one)?|(one)(?: of them)?)(?= (?:at|is|on|by|in|to|about|around|roughly|up|low|high|right|left|from|lower|higher|just|down|near|under|above|and|:|=|-|,|<\d+>|this|here|other|far|over|same|that)|$)/g;
/** "the other side" names a face, "one of" and "no one" name nothing. */
const NO_STAND_IN = /^(?: one)? (?:side|face|room|wall|end|way|half|of)\b/;

/** The fittings named, in order, counts as plain digits. */
export function mentionsIn(text: string): Mention[] {
  const named = [...text.matchAll(NAMES)].map((match) => namedAt(text, match));
  const found = chainedLandmarks(text, chainedDenials(text, named));
  const all = [...found, ...standIns(text, found)].sort((one, other) => one.at - other.at);
  let like: AccessoryKind | null = null;
  return all.flatMap((mention) => {
    if (mention.as === 'named') {
      if (!mention.landmark) like = mention.kind;
      return [mention];
    }
    return like === null ? [] : [{ ...mention, kind: like }];
  });
}

function namedAt(text: string, match: RegExpMatchArray): Mention {
  const at = match.index ?? 0;
  const kind = kindOf(match);
  const before = text.slice(0, at).trimEnd();
  const after = COUNT_AFTER.exec(text.slice(at + match[0].length));
  const counted = COUNT_BEFORE.exec(before)?.[1];
  const plural = /[^s]s$|es$/.test(match[0]) && COUNTED_APART.has(kind);
  const count =
    (after?.[1] === undefined ? null : Number(after[1])) ??
    (counted === undefined ? null : (COUNTS[counted] ?? Number(counted)));
  const many = count !== null && (count > 1 || !plural) ? count : plural ? null : 1;
  return {
    kind,
    at,
    end: at + match[0].length + (after !== null && many !== 1 ? after[0].length : 0),
    count: COUNTED_APART.has(kind) ? many : 1,
    as: 'named',
    landmark: LANDMARK.test(before) && !COUNTED_OF.test(before),
    // What a fitting is for need not be on this wall.
    denied:
      PURPOSE.test(before) ||
      DENIED.test(before) ||
      /^ (?:none|no|nil|zero)(?= [,;.]|$)/.test(text.slice(at + match[0].length)),
  };
}

/** "No sockets, switches or lights" denies them all, as long as nothing is said of where one is. */
function chainedDenials(text: string, named: Mention[]): Mention[] {
  const out = [...named];
  for (let at = 1; at < out.length; at += 1) {
    const [before, here] = [out[at - 1], out[at]];
    if (!before?.denied || !here || here.denied) continue;
    const joint = text.slice(before.end, here.at);
    const after = text.slice(here.end, out[at + 1]?.at ?? text.length);
    const placed =
      !/^(?: (?:,|;|\.|or|nor|and|on|at|either|both|each|any|this|here|there|the|other|far|of|it|sides?|faces?|wall|whatsoever|anywhere|to be seen|no|nothing|else))*\s*$/.test(
        after,
      );
    if (CHAINED.test(`${joint} `.replace(/\s+/g, ' ')) && !placed) out[at] = { ...here, denied: true };
  }
  return out;
}

/** "Between the window and the door". */
function chainedLandmarks(text: string, named: readonly Mention[]): Mention[] {
  return named.map((mention, at) => {
    const before = named[at - 1];
    const chained = before?.landmark && / and (?:the |a )?$/.test(text.slice(before.end, mention.at));
    return chained && /\bbetween (?:the |a |\w+ )*$/.test(text.slice(0, before.at))
      ? { ...mention, landmark: true }
      : mention;
  });
}

function standIns(text: string, named: readonly Mention[]): Mention[] {
  return [...text.matchAll(STANDS_FOR)].flatMap((match) => {
    const at = match.index;
    const end = at + match[0].length;
    const inside = named.some((each) => at < each.end && each.at < end + 1);
    const counts = named.some((each) => /^ ?(?:\w+ ){0,2}$/.test(text.slice(end, each.at)) && each.at > end);
    if (inside || counts || NO_STAND_IN.test(text.slice(end))) return [];
    if (/\b(?:on|at|of|about|no|to|from|which) $/.test(text.slice(0, at)) && match[1] === undefined)
      return [];
    return [
      {
        kind: 'socket' as const,
        at,
        end,
        count: 1,
        as: match[1] !== undefined || isBesides(text, at, named) ? ('more' as const) : ('one' as const),
        landmark: false,
        denied: false,
      },
    ];
  });
}

/** "A socket on the left and one on the right": two, since the first was one by itself. */
function isBesides(text: string, at: number, named: readonly Mention[]): boolean {
  const before = named.findLast((each) => each.end <= at);
  return (
    before?.count === 1 &&
    /\b(?:and|plus|also|,) $/.test(text.slice(0, at)) &&
    text.slice(before.end, at).trim() !== ','
  );
}
