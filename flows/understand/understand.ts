import type { AskBack, Fact, Listening, Reading, Understand } from '../reading.ts';
import { besideYear } from './building/building.ts';
import { answersHazards } from './building/hazards-answer.ts';
import { withoutYear } from './building/year.ts';
import { unitSpoken } from './lengths/display-unit.ts';
import { confirmed, heardIn, inchesAreJudged } from './lengths/spoken-inches.ts';
import { readAll } from './readers.ts';
import { shortAnswer } from './short-answer.ts';
import { namesAnother, readsBackMarks } from './steering/after-plan.ts';
import { saysNotKnown } from './steering/dont-know.ts';
import { notAnAnswer } from './steering/expected.ts';
import { isHostile } from './steering/hostile.ts';
import { steering } from './steering/intent.ts';
import { NOT_UNDERSTOOD } from './steering/not-understood.ts';
import { pickOffered } from './steering/offered.ts';
import { correctedQuestion, isCorrection } from './steering/replacing.ts';
import { besideTheQuestion, isRequest, isTradeQuestion } from './steering/trade-question.ts';
import { askedAbout, asksWhy } from './steering/why.ts';
import { leading } from './steering/yes-no.ts';
import { yesNoAnswer } from './steering/yes-no-question.ts';
import { corrected } from './words/correction.ts';
import type { Found } from './words/found.ts';
import { type Outline, outlineOf } from './words/outline.ts';
import { respell } from './words/spelling.ts';
import { isNumber, tokens } from './words/token.ts';

export { factForChoice } from './steering/choice.ts';

/** Nobody says more figures at once; our choice, which keeps the slowest message short. */
const MOST_FIGURES = 80;

/** Facts that a question such as "can you hang a 24 kg mirror on brick?" must carry to be taken for an answer. */
const FACTS_OF_A_JOB = 2;

/** "800x600 rings 80 in": where a size ends and the hangers begin, with no comma typed between. */
const parted = (said: string): string =>
  said.replace(
    /(\d\s?(?:x|×|by)\s?\d[\d.]*(?:\s?(?:mm|cm|m|in|"|″))?)(?=\s(?:on )?(?:two |2 )?(?:d ?-?rings?|rings|keyholes|straps|wire|cord)\b)/giu,
    '$1,',
  );

/**
 * Reads a message: what it steers, asks or answers. The open question has first claim on bare figures; every
 * other fact is read from its own words. Pure; never throws.
 */
export const understand: Understand = (said, listening) => {
  if (isHostile(said)) return NOT_UNDERSTOOD;
  const { text, guessed } = respell(parted(said));
  const words = text.replace(/(?<=\p{L})'(?=\p{L})/gu, '');
  const picked = listening.offered === undefined ? null : pickOffered(words, listening.offered);
  if (picked !== null && 'fact' in picked)
    return { ...NOT_UNDERSTOOD, intent: 'answer', facts: [{ ...picked.fact, said }] };
  if (picked !== null) return { ...NOT_UNDERSTOOD, intent: 'answer', asks: [picked.narrowed] };
  const steers = steering(text);
  if (steers !== null) return { ...NOT_UNDERSTOOD, intent: steers };
  if (asksWhy(text)) return why(text);
  const every = tokens(withoutYear(words, besideYear(listening)));
  if (every.filter(isNumber).length > MOST_FIGURES) return NOT_UNDERSTOOD;
  const all = corrected(every);
  const hearing = heardIn(all, words, said, listening);
  const outline = outlineOf(all, { words, said, unit: hearing.unit, guessed: guessed.size > 0 });
  if (readsBackMarks(outline.text, listening)) return { ...NOT_UNDERSTOOD, intent: 'self-check' };
  const short = shortAnswer(outline, text, listening);
  if (short !== null) return short;
  const read = heard(outline, hearing);
  const found = inchesAreJudged(all, hearing, listening) ? { ...read, facts: confirmed(read.facts) } : read;
  const another =
    /^\W*(?:what|how) about (?:a|an|another|the next)\b/.test(words) &&
    namesAnother(outline.text, found.facts, listening);
  if (
    !another &&
    (isTradeQuestion(text) || asksInPassing(text, found, listening)) &&
    !(isRequest(text) && found.facts.length >= FACTS_OF_A_JOB)
  ) {
    const beside = besideTheQuestion(said);
    const told = beside === null ? NOT_UNDERSTOOD : understand(beside, listening);
    return told.intent === 'answer'
      ? { ...told, intent: 'trade-question', refused: [] }
      : { ...NOT_UNDERSTOOD, intent: 'trade-question' };
  }
  return withUnit(answer(found, outline, text, listening), outline, listening);
};

/** Ends as a question and holds nothing for the open one: "32 kg on two board anchors, accept?". */
function asksInPassing(text: string, found: Found, { awaiting }: Listening): boolean {
  if (!/\?\s*$/.test(text) || text.trim().split(/\s+/).length <= 2) return false;
  const answers = [...found.facts, ...found.asks].some((each) => each.question === awaiting);
  return awaiting === null ? found.facts.length < FACTS_OF_A_JOB : !answers;
}

function why(text: string): Reading {
  const about = askedAbout(text);
  return about === undefined
    ? { ...NOT_UNDERSTOOD, intent: 'why' }
    : { ...NOT_UNDERSTOOD, intent: 'why', about };
}

/** A bare figure in a correction is about what was answered last, or what it names; else about the open question. */
function heard(outline: Outline, listening: Listening): Found {
  const { awaiting } = listening;
  if (awaiting === 'hazards') {
    const gates = answersHazards(outline, false);
    if (gates.facts.length > 0) return gates;
  }
  const figures = outline.text.match(/<\d+>/g)?.length ?? 0;
  const replaced = figures === 1 ? correctedQuestion(outline.words, listening) : null;
  if (replaced !== null && replaced !== awaiting) {
    const found = readAll(outline, { ...listening, awaiting: replaced, lastAnswered: null });
    if (found.facts.some((fact) => fact.question === replaced)) return found;
  }
  return readAll(outline, { ...listening, lastAnswered: null });
}

function answer(found: Found, outline: Outline, text: string, listening: Listening): Reading {
  const { awaiting } = listening;
  const facts = once(found.facts);
  const correction = isCorrection(outline.words, [...facts, ...found.asks.map(asFact)], listening);
  if (namesAnother(outline.text, facts, listening)) return { ...NOT_UNDERSTOOD, intent: 'new-piece', facts };
  const asks = found.asks.filter(
    (ask) => !facts.some((fact) => fact.question === ask.question && fact.partial === undefined),
  );
  const own =
    facts.some((fact) => fact.question === awaiting) || asks.some((ask) => ask.question === awaiting);
  const unknown = saysNotKnown(text);
  const refused = own || unknown ? [] : found.refused;
  if (unknown && awaiting !== null && !own)
    return { ...NOT_UNDERSTOOD, intent: 'dont-know', facts, asks, correction };
  const doubtful = unknown && awaiting !== 'wall.accessories';
  const taken = doubtful
    ? facts.map((fact) => (fact.question === awaiting ? { ...fact, inferred: true } : fact))
    : facts;
  if (facts.length + asks.length + refused.length > 0)
    return { ...NOT_UNDERSTOOD, intent: 'answer', facts: taken, asks, refused, correction };
  if (unknown) return { ...NOT_UNDERSTOOD, intent: 'dont-know' };
  if (awaiting === null) return NOT_UNDERSTOOD;
  const begins = awaiting === 'wall.accessories' || awaiting === 'hazards' ? null : leading(text);
  const given = begins === null ? [] : yesNoAnswer(awaiting, begins, outline.said);
  if (given.length > 0)
    return { ...NOT_UNDERSTOOD, intent: 'answer', facts: given.map((fact) => ({ ...fact, inferred: true })) };
  const refusal = notAnAnswer(awaiting, outline.said);
  return refusal === null ? NOT_UNDERSTOOD : { ...NOT_UNDERSTOOD, refused: [refusal] };
}

const asFact = (ask: AskBack): Fact => ({ question: ask.question, value: {}, said: '' });

/** One fact a question: the later reading of a message stands. */
function once(facts: readonly Fact[]): Fact[] {
  return facts.filter((fact, at) => !facts.slice(at + 1).some((later) => later.question === fact.question));
}

function withUnit(reading: Reading, outline: Outline, listening: Listening): Reading {
  const unit = unitSpoken(outline.tokens, listening);
  return unit === undefined || reading.facts.length + reading.asks.length === 0
    ? reading
    : { ...reading, unit };
}
