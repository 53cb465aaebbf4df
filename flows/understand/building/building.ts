import type { AskBack, Fact, Listening } from '../../reading.ts';
import { type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { KIND_ALONE, KINDS, type Kind, MY_HOUSE, TENURE, TENURE_ALONE } from './building-words.ts';
import { countryIn, inCapitals } from './country.ts';
import { ageAsked, type Beside, yearIn } from './year.ts';

const first = <V>(forms: readonly [V, RegExp][], text: string): V | undefined =>
  forms.find(([, words]) => words.test(text))?.[0];

/** What shows that a lone figure of four is the year of building. */
export function besideYear({ awaiting }: Listening): Beside {
  return {
    asked: awaiting === 'building.yearBuilt' || awaiting === 'building.rewiredYear',
    open: awaiting?.startsWith('building.') === true || awaiting === 'hazards',
    names: (part) =>
      countryIn(part, false) !== null ||
      first(TENURE, part) !== undefined ||
      /^\W*(?:mine|ours)\W*$/.test(part),
  };
}

/** Where the job is, how old, whose, and what sort of building. */
export function readBuilding(outline: Outline, listening: Listening): Found {
  const { words, said } = outline;
  const { awaiting } = listening;
  const found: Fact[] = [];
  const country =
    awaiting === 'crew.people'
      ? null
      : (countryIn(words, awaiting === 'building.country') ?? inCapitals(said));
  if (country !== null) found.push(fact('building.country', { building: { country } }, said));
  const rewired = /\bre ?-? ?wir(?:ed|ing)\b/.test(words) || awaiting === 'building.rewiredYear';
  const year = yearIn(words, {
    ...besideYear(listening),
    asked: awaiting === 'building.yearBuilt' || rewired,
  });
  if (year !== null && rewired) {
    found.push(fact('building.rewiredYear', { building: { rewiredYear: year.year } }, said, year.inferred));
  } else if (year !== null) {
    found.push(fact('building.yearBuilt', { building: { yearBuilt: year.year } }, said, year.inferred));
  }
  const tenure =
    first(TENURE, words) ?? (awaiting === 'building.tenure' ? first(TENURE_ALONE, words) : undefined);
  if (tenure !== undefined && !/\b(?:not|isnt|dont)\b[^,.]{0,12}\b(?:rent|own|mine)/.test(words)) {
    found.push(fact('building.tenure', { building: { tenure } }, said));
  } else if (awaiting === 'building.tenure' && /\b(?:dont|not) own\b|\bnot mine\b/.test(words)) {
    // Not owned may be rented or a client's: asked.
  } else if (awaiting === 'building.tenure' && /\b(?:dont|not) rent/.test(words)) {
    found.push(fact('building.tenure', { building: { tenure: 'owner' } }, said, true));
  }
  if (tenure === undefined && awaiting !== 'building.tenure' && MY_HOUSE.test(words)) {
    found.push(fact('building.tenure', { building: { tenure: 'owner' } }, said, true));
  }
  const kind = first(KINDS, words) ?? (awaiting === 'building.kind' ? first(KIND_ALONE, words) : undefined);
  if (kind !== undefined && (awaiting === 'building.kind' || saidOfBuilding(kind, words))) {
    found.push(fact('building.kind', { building: { kind } }, said, awaiting !== 'building.kind'));
  }
  const facts = [...found, ...permission(outline, listening)];
  const age = year === null && awaiting === 'building.yearBuilt' ? ageAsked(words) : null;
  if (age !== null) return { ...nothing(outline), facts, asks: [whichYear(age, said)] };
  if (awaiting === 'building.kind' && kind === undefined && ROOMS.test(words))
    return { ...nothing(outline), facts, asks: [whichBuilding(said)] };
  return { ...nothing(outline), facts };
}

function whichYear(text: string, said: string): AskBack {
  const turns = /\bcentury\b/.test(text) ? [1900, 2000] : [];
  const readings = turns.map((yearBuilt) => ({
    label: `about ${yearBuilt}`,
    fact: fact('building.yearBuilt', { building: { yearBuilt } }, said, true),
  }));
  return { question: 'building.yearBuilt', text, readings };
}

/** Rooms that houses have as well as public buildings. */
const ROOMS =
  /\b(?:foyer|hall(?:way)?|lobby|reception|office|entrance|stairwell|corridor|landing|studio|gym|waiting room)\b/;

function whichBuilding(said: string): AskBack {
  const reading = (label: string, kind: Kind) => ({
    label,
    fact: fact('building.kind', { building: { kind } }, said),
  });
  return {
    question: 'building.kind',
    text: 'Is that in a house, in a block of flats, or in a building the public or staff use?',
    readings: [
      reading('a house', 'house'),
      reading('a flat', 'flat'),
      reading('a public building', 'public'),
    ],
  };
}

/** Not every "flat" or "bar" is a building: it must be said of the place. */
function saidOfBuilding(kind: Kind, words: string): boolean {
  if (kind === 'flat')
    return /\b(?:in|my|our|the|a|this|council|rented|new|old|her|his) (?:\w+ )?(?:flat|apartment|condo|penthouse|maisonette|bedsit)\b(?! (?:cord|wire|sheet|wall|bar|head))|\bblock of (?:flats|units)\b/.test(
      words,
    );
  if (kind === 'public')
    return /\b(?:in|for|at) (?:a|an|the|our|my|their)? ?(?:(?!home)\w+ )?(?:shop|office (?:block|building)|restaurant|pub|cafe|hotel|school|church|hospital|clinic|museum|salon)(?: (?:foyer|lobby|reception|office))?\b/.test(
      words,
    );
  return (
    /\b(?:\d{4}s?|old|new|my|our|terraced|detached|semi detached) (?:\w+ )?(?:house|cottage|bungalow|villa|terrace|semi|townhouse)\b/.test(
      words,
    ) && !/\bbrick house\b/.test(words)
  );
}

function permission({ words, said }: Outline, { awaiting }: Listening): Fact[] {
  const granted =
    /\b(?:landlord|owner|agent|they|he|she|client|strata|manager|we|i)(?:s|ve| has| have)? (?:has |have |got |)?(?:says?|said|given|gave|agreed|approved|allow(?:s|ed)?|is (?:ok|fine|happy)|are (?:ok|fine|happy)|ok(?:ay)?ed)\b(?! no)|\b(?:got|have|has|with|in) (?:the |their |written )?(?:permission|consent|approval|writing)\b|\b(?:permission|consent) (?:given|granted|ok)\b/;
  const refused =
    /\b(?:no|not got|without|dont have|havent got|refused|wont give|not (?:yet )?(?:asked|got)) (?:any |the |their )?(?:permission|consent)\b|\blandlord (?:said no|says no|wont|refused|doesnt)\b|\bnot allowed\b/;
  if (refused.test(words)) return [fact('building.consent', { building: { consent: false } }, said)];
  const wants = awaiting === 'building.consent' || /\b(?:permission|consent|landlord)\b/.test(words);
  return wants && granted.test(words)
    ? [fact('building.consent', { building: { consent: true } }, said)]
    : [];
}
