import type { Speaker } from '../accept.ts';
import { choicesNow } from '../choices-now.ts';
import { awaitingIn, type Open } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { QuestionName } from '../question.ts';
import { todaysName } from '../renamed.ts';
import { notUnderstood } from '../wording/talk.ts';
import { buttonPressed, notKnown, shortAnswer } from './answers.ts';
import { tookReading } from './offered.ts';
import { readingChosen } from './picked.ts';
import { textHeard } from './text.ts';
import { says, type Turn } from './turn.ts';

/** Values that every platform may send for "don't know". */
const NOT_SURE: ReadonlySet<string> = new Set(['unknown', 'dont-know', 'not-sure']);

/**
 * What a button comes to. A fact counts for its own question, open or not; a stale `confirm` or `acknowledge`, or
 * a button of something no longer asked back, changes nothing.
 */
export function choiceHeard(
  open: Open,
  value: string,
  asked: string | undefined,
  speaker: Speaker,
  parts: Parts,
): Turn | null {
  const awaiting = awaitingIn(open);
  const question = asked === undefined ? awaiting : todaysName(asked);
  if (question === null)
    return asked === undefined ? null : says('That button is from a question I no longer ask.');
  const reading = readingChosen(value);
  if (reading !== null) return readingButton(open, reading, question, speaker, parts);
  if (question === 'confirm' || question === 'acknowledge') {
    if (question !== awaiting) return says('That button is from before; nothing is changed by it.');
    return shortAnswer(open, value === 'yes' ? 'yes' : 'no', speaker, parts);
  }
  return (
    buttonPressed(open, question, value, speaker, parts) ??
    (NOT_SURE.has(value) ? notKnown(open, question, speaker) : null) ??
    wordsOfAButton(open, question, value, speaker, parts) ??
    says(question === awaiting ? notUnderstood(open) : noAnswerTo(question, open))
  );
}

/** A program sent it, since the page shows no such button: it is told what would have done. */
function noAnswerTo(question: QuestionName, open: Open): string {
  const values = choicesNow(question, open).map(({ value }) => value);
  const would = values.length === 0 ? 'say it in words' : `one of ${values.join(', ')} would be`;
  return `That is no answer to ${question}: ${would}. Nothing is changed by it.`;
}

/** A button that stands for words ("30 kg", "dull and hard everywhere") is heard as if they were typed. */
function wordsOfAButton(
  open: Open,
  question: QuestionName,
  value: string,
  speaker: Speaker,
  parts: Parts,
): Turn | null {
  const isOffered = choicesNow(question, open).some((each) => each.value === value);
  if (!isOffered) return null;
  if (question !== awaitingIn(open)) return says('That button is from before; nothing is changed by it.');
  return textHeard(open, value, speaker, parts);
}

function readingButton(open: Open, index: number, question: string, speaker: Speaker, parts: Parts): Turn {
  const { offered } = open;
  if (offered === null || offered.ask.question !== question || index >= offered.ask.readings.length) {
    return says('That button is from before; nothing is changed by it.');
  }
  return tookReading(open, offered, index, speaker, parts);
}
