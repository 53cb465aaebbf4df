import type { JobSoFar } from '../core/job.ts';
import { disagreement, lessBlanketNo } from './disagreement.ts';
import type { Entry } from './entry.ts';
import { laidOver } from './merge.ts';
import type { QuestionName } from './question.ts';
import { QUESTIONS } from './questions/all.ts';
import type { DisplayUnit, Fact } from './reading.ts';
import { describe } from './wording/describe.ts';

/** Who said what, when: what every entry carries. */
export type Speaker = { said: string; by: string; at: string; unit?: DisplayUnit };

/** A fact as the ledger keeps it. A "don't know" read from words is one too. */
export function entryOf(fact: Fact, speaker: Speaker): Entry {
  const ifUnknown = QUESTIONS[fact.question].ifUnknown;
  const isUnknown = ifUnknown !== null && sameValue(ifUnknown.value, fact.value) && !isEmpty(fact.value);
  return {
    act: isUnknown ? 'unknown' : 'set',
    question: fact.question,
    value: fact.value,
    said: speaker.said,
    by: speaker.by,
    at: speaker.at,
    ...(speaker.unit && { unit: speaker.unit }),
    ...(fact.inferred && { inferred: true }),
  };
}

export function entryWithout(act: Entry['act'], question: QuestionName | null, speaker: Speaker): Entry {
  return { act, question, value: null, said: speaker.said, by: speaker.by, at: speaker.at };
}

/** Facts ready to be recorded, and the first that does not agree with what was said before. */
export type Accepted = { facts: Fact[]; lines: string[]; against: { fact: Fact; before: JobSoFar } | null };

/**
 * Sorts facts into those to record and one to ask about. With `replaces` a difference is a correction, and said
 * as one; without it, it is asked back. What was only remembered for the crew is replaced without a "not".
 */
export function accept(
  facts: readonly Fact[],
  said: JobSoFar,
  replaces: (fact: Fact) => boolean,
  unit: DisplayUnit,
  asked: QuestionName | null,
  isRemembered: (question: QuestionName) => boolean = () => false,
): Accepted {
  const accepted: Accepted = { facts: [], lines: [], against: null };
  let against: Fact | null = null;
  let fresh: JobSoFar = {};
  let sofar = said;
  for (const each of wallFirst(facts)) {
    const fact = each.question === 'hazards' ? { ...each, value: lessBlanketNo(each.value, sofar) } : each;
    const isNew = fact.question === asked || fact.question === 'hazards' || isRemembered(fact.question);
    if (!isNew && addsNothing(sofar, fact)) continue;
    const before = disagreement(sofar, fact.value);
    if (before !== null && !replaces(fact)) {
      against ??= fact;
      continue;
    }
    sofar = laidOver(sofar, fact.value);
    accepted.facts.push(fact);
    const isPlain = before === null || isRemembered(fact.question);
    if (isPlain && fact.question !== 'hazards') fresh = laidOver(fresh, fact.value);
    else accepted.lines.push(understood(fact, before, unit));
  }
  accepted.lines.unshift(describe(fresh, unit).join(', '));
  // Held against all that the message said, as it will be when the conversation is taken up again.
  const before = against && disagreement(sofar, against.value);
  return against && before ? { ...accepted, against: { fact: against, before } } : accepted;
}

/** Said before and no more than that: a reader gives back what it completes, though nothing was added. */
const addsNothing = (said: JobSoFar, fact: Fact): boolean => sameValue(laidOver(said, fact.value), said);

/** A wall of another material drops what was said of the old one, so it comes before what is said of the new. */
function wallFirst(facts: readonly Fact[]): readonly Fact[] {
  const isWall = (fact: Fact): boolean => fact.question === 'wall.baseMaterial';
  return [...facts.filter(isWall), ...facts.filter((fact) => !isWall(fact))];
}

/** What replaces something said before names both: "28 kg now, not 24 kg". A yes needs no "not no". */
function understood(fact: Fact, before: JobSoFar | null, unit: DisplayUnit): string {
  if (fact.question === 'hazards') return hazardsText(fact.value, unit);
  const now = describe(fact.value, unit).join(', ');
  const was = before === null ? '' : describe(before, unit).join(', ');
  if (was === now || was === '' || now === '') return now;
  return /:(?:true|false)\b/.test(JSON.stringify(before)) ? `${now} now` : `${now} now, not ${was}`;
}

/** Of the gates only those that hold are named. */
function hazardsText(value: JobSoFar, unit: DisplayUnit): string {
  const holding = lessBlanketNo(value, ALL_NO);
  const words = describe(holding, unit).join(', ');
  if (words === '') return 'none of those';
  return sameValue(holding, value) ? words : `${words}, none of the others`;
}

/** A job in which something speaks against every no, so that only what holds is left over. */
const ALL_NO: JobSoFar = {
  wall: { wet: 'shower', coating: 'textured', condition: 'poor', tensioned: 'possible', separating: true },
  building: { heritage: true },
  piece: { lit: true },
};

const sameValue = (a: JobSoFar, b: JobSoFar): boolean => JSON.stringify(a) === JSON.stringify(b);
const isEmpty = (value: JobSoFar): boolean => Object.keys(value).length === 0;
