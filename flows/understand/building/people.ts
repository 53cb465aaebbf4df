const NUMBERS = 'zero one two three four five six seven eight nine ten'.split(' ');
const COUNT = '(\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)';
const WHO =
  '(?:\\w+ )?(?:people|persons?|men|guys|lads?|blokes?|hands|pairs of hands|helpers?|workers?|adults?|fellas?|women|chaps?|mates?|apprentices?|others?|more|extra)';
const AND = '(?:and|n|&|\\+|plus|with)';

const OF_US = new RegExp(`\\b${COUNT} of us\\b`);
const COUNTED = new RegExp(`\\b${COUNT} ${WHO}\\b`);
const WE_ARE = new RegExp(
  `\\b(?:theres|there are|there will be|we are|were|we re|well be|itll be|crew of|team of|a|us|all) ${COUNT}(?: of us)?\\W*$`,
);
const ME = '(?:me|myself|i)';
/** "Me and two mates", "two lads and me". */
const ME_AND_SOME = new RegExp(
  `\\b${ME} ${AND} (?:my |the )?${COUNT} ?(?:${WHO})?\\b|\\b${COUNT} ${WHO} ${AND} ${ME}\\b`,
);
/** "2 of us plus an apprentice". */
const AND_ONE_MORE = new RegExp(`\\b${COUNT} (?:of us|${WHO}) ${AND} (?:an?|my|the|one|1) \\w+`);
const ALONE =
  /\b(?:just|only) (?:me|myself|the one|the one of me|i)\b|\bby myself\b|\bon my (?:own|tod|jack)\b|\bmyself\b|\bsolo\b|\balone\b|\bone man(?: band)?\b|\bone person\b|\bsingle ?handed\b|\bno ?(?:one|body) else\b|\bno help\b|^\W*me\W*$/;
const RELATION =
  '(?:wife|husband|mate|partner|son|daughter|boss|brother|sister|dad|mum|mom|friend|apprentice|neighbour|neighbor|girlfriend|boyfriend|lad|missus|mrs|hubby|other half|helper|labourer|fella)';
const TWO = new RegExp(
  `\\b(?:my|the|a|our) ${RELATION} (?:${AND} (?:me|i|myself)|(?:can|will|is) help(?:ing)?)\\b|\\b(?:a )?couple of us\\b|\\bboth of us\\b|\\bthe pair of us\\b|\\bwith (?:a|my|the) ${RELATION}\\b|\\bcouple\\b|\\ba pair\\b`,
);
/** "Me n dave", "me, dave and tom", "sam and me": names joined by commas and ands. */
const NAMES = new RegExp(
  `\\b(?:me|myself)((?: ?(?:,| ${AND})+ (?:and )?(?:my |the |a |our )?(?!(?:two|three|four|five|it|its|the|we|will|i)\\b)[a-z]+(?: half)?)+)|\\b[a-z]+ ${AND} (?:me|i)\\b`,
);

/** "Just myself and my boss": an "and" outweighs the "just". */
const JOINED = new RegExp(`\\b(?:me|myself) ${AND} (?!no\\b|nobody\\b|none\\b|only\\b|on\\b)[a-z]`);
/** "Just me and my husband" is two whenever it is said. */
const JOINED_KIN = new RegExp(`\\b(?:just|only) (?:me|myself) ${AND} (?:my |the |a |our )?${RELATION}\\b`);

/** How many lift, from who they are said to be; null when nothing says so. Of two figures the smaller. */
export function peopleIn(words: string, asked: boolean): number | null {
  const some = ME_AND_SOME.exec(words);
  if (some !== null) return numberOf(some[1] ?? some[2] ?? '') + 1;
  const more = AND_ONE_MORE.exec(words)?.[1];
  if (more !== undefined) return numberOf(more) + 1;
  for (const form of [OF_US, COUNTED, ...(asked ? [WE_ARE] : [])]) {
    const said = form.exec(words)?.[1];
    if (said !== undefined && numberOf(said) > 0) return numberOf(said);
  }
  const joined = (asked ? JOINED : JOINED_KIN).test(words) ? NAMES.exec(words)?.[1] : undefined;
  if (joined !== undefined) return 1 + namesIn(joined);
  if (ALONE.test(words) && (asked || /\b(?:just me|by myself|on my own)\b/.test(words))) return 1;
  if (!asked) return null;
  const names = NAMES.exec(words);
  if (names !== null) return names[1] === undefined ? 2 : 1 + namesIn(names[1]);
  return TWO.test(words) ? 2 : bare(words);
}

function namesIn(list: string): number {
  return list.split(new RegExp(`,| ${AND} `)).filter((each) => each.trim() !== '').length;
}

function bare(words: string): number | null {
  const said = new RegExp(
    `^\\W*(?:(?:about|maybe|yes|yeah|only|just|probably|us|its|it is|weve got|have) )*${COUNT}(?: ?(?:or|to|-|maybe) ?${COUNT})?(?: (?:i think|mate|max|today|total|in all|on site|please|strong|here|lifting|if needed))*\\W*$`,
  ).exec(words);
  if (said === null) return null;
  const first = numberOf(said[1] ?? '');
  return said[2] === undefined ? first : Math.min(first, numberOf(said[2]));
}

function numberOf(said: string): number {
  return /^\d/.test(said) ? Number(said) : NUMBERS.indexOf(said);
}
