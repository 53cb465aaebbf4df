import type { Fact, Listening } from '../../reading.ts';
import { type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { peopleIn } from './people.ts';

const YES = /^\W*(?:yes|yep|yeah|yup|sure|we do|i do|of course|always|will do|ok)\b/;
const NO = /^\W*(?:no|nope|nah|none|never|not)\b/;

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
  const count = passing ? null : peopleIn(words, listening.awaiting === 'crew.people');
  if (count !== null && count > 0) found.push(fact('crew.people', { crew: { people: count } }, said));
  const extraction = dust(words, listening.awaiting === 'crew.dustExtraction');
  if (extraction !== null)
    found.push(fact('crew.dustExtraction', { crew: { dustExtraction: extraction } }, said));
  const lift = lifter(words, listening.awaiting === 'crew.lifter');
  if (lift !== null) found.push(fact('crew.lifter', { crew: { lifter: lift } }, said));
  return { ...nothing(outline), facts: found };
}
