import type { QuestionName } from '../../question.ts';
import type { Fact, Listening } from '../../reading.ts';

/** Words that take something back and give something else. */
const STRONG =
  /\b(?:make (?:that|it|them)|no,? ?wait|wait,? (?:no|its|it is|the|that)|change (?:that|it|the|my)|should (?:be|have been|read|say)|i ?meant?\b|meant\b|mean to say|scratch that|correction|fat fingers|typo|mis ?read|read (?:\w+ ){0,3}wrong|got (?:it|that|the \w+) wrong|weighed it again|(?:re ?-? ?measured|measured (?:it )?again|re ?weighed|checked again)|was for (?:the |both )?(?:pair|both|two)|after all|turns? out|instead|not \d+|switch (?:it|that|the \w+) to|set (?:it|that|the \w+) to|fat finger|hang on|hold on|excuse me|my mistake|my bad|i was wrong|was wrong|that(?:s| is| was) wrong|nah|oops|whoops|sorry|actually|no,? (?:its|it is|the|that|i|we|make|say)|lets say|rather|update|now its|higher|lower|move (?:it|that|the \w+)|raise it|is now|its now)\b/;
const NOT_THIS =
  /\bnot (?:a|an|the) (?:mirror|picture|canvas|panel|painting|brick|block|plasterboard|drywall|concrete|stone)\b|\bnot (?:brick|block|plasterboard|drywall|concrete|stone|timber)\b/;

/** True when the words replace something said before. */
export function soundsReplacing(words: string): boolean {
  return STRONG.test(words) || NOT_THIS.test(words) || /^\W*(?:no|nope)\W+\d/.test(words);
}

/** The topic a correction names: "weight should be 26". */
const TOPICS: [QuestionName, RegExp][] = [
  ['piece.massKg', /\b(?:weight|weighs?|weighed|mass|heavy|kilos?|kgs?|lbs?|pounds?)\b/],
  ['wall.heightMm', /\b(?:ceiling|wall height|room height)\b/],
  ['wall.thicknessMm', /\b(?:wall thickness|wall is .* thick)\b/],
  ['wall.widthMm', /\b(?:wall|wall width|alcove)\b/],
  ['piece.depthMm', /\b(?:depth|deep)\b/],
  ['piece.size', /\b(?:size|width|height|wide|high|tall|frame is)\b/],
  ['piece.hanging', /\b(?:rings?|hooks?|cord|keyholes?|hangers?|straps?|drop)\b/],
  ['building.yearBuilt', /\b(?:built|year|house is from)\b/],
  ['place.up', /\b(?:above|floor|mantel|centre at|bottom|top|higher|lower)\b/],
  ['place.across', /\b(?:left|right|across|centred)\b/],
];

/** The question that a bare figure in a correction belongs to; null when it is the open one's. */
export function correctedQuestion(words: string, listening: Listening): QuestionName | null {
  if (!soundsReplacing(words)) return null;
  const topic = TOPICS.find(([, form]) => form.test(words))?.[0];
  return topic ?? listening.lastAnswered;
}

/** A correction only when something that stood before is replaced. */
export function isCorrection(words: string, facts: readonly Fact[], listening: Listening): boolean {
  if (!soundsReplacing(words)) return false;
  return facts.some((fact) => fact.question === listening.lastAnswered || isKnown(fact.question, listening));
}

function isKnown(question: QuestionName, { known }: Listening): boolean {
  if (question === 'piece.size')
    return known.piece?.widthMm !== undefined || known.piece?.heightMm !== undefined;
  const [part, field] = question.split('.');
  const holder = Object.entries(known).find(([name]) => name === part)?.[1];
  return (
    holder !== undefined &&
    field !== undefined &&
    Object.entries(holder).some(([name, value]) => name === field && value !== undefined)
  );
}
