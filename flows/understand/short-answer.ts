import type { Intent, Listening, Reading } from '../reading.ts';
import { whatIsThere } from './accessory/ask.ts';
import { answersHazards } from './building/hazards-answer.ts';
import { readAll } from './readers.ts';
import { saysNotKnown } from './steering/dont-know.ts';
import { NOT_UNDERSTOOD } from './steering/not-understood.ts';
import { isNo, isNoneOfThese, isPlainNo, isYes } from './steering/yes-no.ts';
import { yesNoAnswer } from './steering/yes-no-question.ts';
import type { Outline } from './words/outline.ts';

/** Questions where a "no" says that a danger is not there. */
const CLEARS_A_DANGER: ReadonlySet<string> = new Set([
  'hazards',
  'wall.accessories',
  'wall.wet',
  'wall.coating',
  'wall.tensioned',
  'wall.separating',
  'wall.farSide',
  'place.below',
  'piece.lit',
  'building.heritage',
]);

/** Yes, no, or none of these, and nothing else. */
export function shortAnswer(outline: Outline, text: string, listening: Listening): Reading | null {
  const { awaiting } = listening;
  const none = isNoneOfThese(text);
  const yes = isYes(text);
  const no = isNo(text) || none;
  if ((!yes && !no) || (saysNotKnown(text) && !yes && awaiting !== 'building.consent')) return null;
  const intent: Intent = yes ? 'yes' : none && !isNo(text) ? 'none-of-these' : 'no';
  if (awaiting === null || awaiting === 'confirm' || awaiting === 'acknowledge')
    return { ...NOT_UNDERSTOOD, intent };
  // "Not yet" and "haven't" are no "none": nothing that protects someone may be cleared by them.
  if (CLEARS_A_DANGER.has(awaiting) && !yes && !none && !isPlainNo(text))
    return { ...NOT_UNDERSTOOD, intent: 'dont-know' };
  // Having looked says nothing of what is there.
  if (awaiting === 'wall.farSide' && yes)
    return { ...NOT_UNDERSTOOD, intent: 'answer', asks: [whatIsThere(outline.said)] };
  const read = awaiting === 'hazards' ? answersHazards(outline, yes) : readAll(outline, listening);
  const own = read.facts.filter((fact) => fact.question === awaiting);
  const given = own.length > 0 ? own : yesNoAnswer(awaiting, yes ? 'yes' : 'no', outline.said);
  const asks = read.asks.filter(
    ({ question }) =>
      question === awaiting || (awaiting === 'wall.accessories' && question === 'wall.farSide'),
  );
  if (awaiting === 'wall.accessories' && !yes && given.length + asks.length === 0)
    return { ...NOT_UNDERSTOOD, intent: 'dont-know' };
  return {
    ...NOT_UNDERSTOOD,
    intent: intent === 'none-of-these' ? intent : given.length + asks.length > 0 ? 'answer' : intent,
    facts: given,
    asks,
  };
}
