import type { Fact, Listening } from '../../reading.ts';
import { type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';

const NUMBERS = 'zero one two three four five six seven eight nine ten'.split(' ');
const COUNT = '(\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)';
const PEOPLE = [
  new RegExp(`\\b${COUNT} of us\\b`),
  new RegExp(
    `\\b${COUNT} (?:\\w+ )?(?:people|persons?|men|guys|lads|blokes|hands|pairs of hands|helpers|workers|adults|fellas|women|chaps)\\b`,
  ),
  new RegExp(
    `\\b(?:theres|there are|there will be|we are|were|well be|itll be|crew of|team of|a) ${COUNT}(?: of us)?\\W*$`,
  ),
];
const ALONE =
  /\b(?:just|only) (?:me|myself|the one)\b|\bby myself\b|\bon my own\b|\bmyself\b|\bsolo\b|\balone\b|\bone man\b|\bone person\b|\bsingle handed\b|\bno ?(?:one|body) else\b|^\W*me\W*$/;
const TWO =
  /\bme and (?:my|a|the|\w+)\b(?: \w+)?|\b(?:my|the|a) (?:wife|husband|mate|partner|son|daughter|boss|brother|dad|mum|friend|apprentice|neighbour|girlfriend|boyfriend|lad) (?:and (?:me|i|myself)|(?:can|will|is) help(?:ing)?)\b|\ba couple of us\b|\bboth of us\b|\bthe pair of us\b|\bwith (?:a|my) (?:mate|helper|partner|wife|husband)\b|\bcouple\b|\ba pair\b/;

const YES = /^\W*(?:yes|yep|yeah|yup|sure|we do|i do|of course|always|will do|ok)\b/;
const NO = /^\W*(?:no|nope|nah|none|never|not)\b/;

function people(words: string, asked: boolean): number | null {
  for (const form of PEOPLE) {
    const said = form.exec(words)?.[1];
    if (said !== undefined && (asked || form !== PEOPLE[2])) return numberOf(said);
  }
  if (asked && TWO.test(words)) return 2;
  if (ALONE.test(words) && (asked || /\b(?:just me|by myself|on my own)\b/.test(words))) return 1;
  const bare = asked
    ? new RegExp(
        `^\\W*(?:about |maybe |yes |yeah |only |just |probably |us )*${COUNT}(?: (?:i think|mate|max|today|total|in all|on site|please|strong|here|lifting))*\\W*$`,
      ).exec(words)
    : null;
  return bare === null ? null : numberOf(bare[1] ?? '');
}

function numberOf(said: string): number {
  return /^\d/.test(said) ? Number(said) : NUMBERS.indexOf(said);
}

function dust(words: string, asked: boolean): boolean | null {
  const cue =
    /\b(?:vacuum|dust (?:extraction|extractor|shroud|bag|collector)|extractor|extraction|m class|h class|hepa)\b/;
  if (!cue.test(words) && !asked) return null;
  if (
    /\b(?:no|without|dont have(?: a| an| any)?|havent got(?: a| an| any)?|not got(?: a| an| any)?|aint got(?: a| an| any)?|forgot (?:the|my|a)) (?:dust |a |an |any )?(?:vacuum|extractor|extraction|extract|shroud)/.test(
      words,
    )
  )
    return false;
  if (cue.test(words) && !/\?/.test(words)) return true;
  if (!asked) return null;
  if (NO.test(words) || /\b(?:broom|dustpan|dust sheets?|brush|envelope|sheet)\b/.test(words)) return false;
  return YES.test(words) || /\b(?:nozzle|bag)\b/.test(words) ? true : null;
}

function lifter(words: string, asked: boolean): boolean | null {
  const cue =
    /\b(?:lifter|panel lift|hoist|board lift|support ledger|ledger|stand to take|trestles?|prop|lifting stand|drywall lift)\b/;
  if (cue.test(words)) return !/\b(?:no|without|dont have|havent got)\b/.test(words);
  if (!asked) return null;
  if (NO.test(words)) return false;
  return YES.test(words) ? true : null;
}

/** Who lifts, and with what. */
export function readCrew(outline: Outline, listening: Listening): Found {
  const { words, said } = outline;
  const found: Fact[] = [];
  const passing = listening.awaiting === 'place.below' || /\b(?:walk|pass|sit|seat|sleep)/.test(words);
  const count = passing ? null : people(words, listening.awaiting === 'crew.people');
  if (count !== null && count > 0) found.push(fact('crew.people', { crew: { people: count } }, said));
  const extraction = dust(words, listening.awaiting === 'crew.dustExtraction');
  if (extraction !== null)
    found.push(fact('crew.dustExtraction', { crew: { dustExtraction: extraction } }, said));
  const lift = lifter(words, listening.awaiting === 'crew.lifter');
  if (lift !== null) found.push(fact('crew.lifter', { crew: { lifter: lift } }, said));
  return { ...nothing(outline), facts: found };
}
