import type { JobSoFar } from '../../../core/job.ts';
import type { Millimetres } from '../../../core/quantity.ts';
import type { QuestionName } from '../../question.ts';
import type { AskBack, Fact, Listening, Refusal } from '../../reading.ts';
import type { Found as LengthFound } from '../lengths/length.ts';
import type { Outline } from './outline.ts';

/** What a reader found, and the message that is left for the readers after it. */
export type Found = { facts: Fact[]; asks: AskBack[]; refused: Refusal[]; rest: Outline };

/** One reader: it takes the words it understands out of the message. */
export type Reader = (outline: Outline, listening: Listening) => Found;

export function nothing(rest: Outline): Found {
  return { facts: [], asks: [], refused: [], rest };
}

export function facts(rest: Outline, ...found: Fact[]): Found {
  return { ...nothing(rest), facts: found };
}

export function asks(rest: Outline, ask: AskBack): Found {
  return { ...nothing(rest), asks: [ask] };
}

export function refused(rest: Outline, refusal: Refusal): Found {
  return { ...nothing(rest), refused: [refusal] };
}

export function fact(question: QuestionName, value: JobSoFar, said: string, inferred = false): Fact {
  return inferred ? { question, value, said, inferred } : { question, value, said };
}

/** A length becomes a fact when it has one plausible reading, a question when it has two, a refusal when none. */
export function settled(
  rest: Outline,
  question: QuestionName,
  length: LengthFound,
  value: (length: Millimetres) => JobSoFar,
  options: { expected: string; example: string; inferred?: boolean },
): Found {
  const [first, ...others] = length.readings;
  if (length.negative || first === undefined) {
    const because = length.negative
      ? `${length.text} is less than nothing; I expected ${options.expected}`
      : `${length.text} can't be ${options.expected}`;
    return refused(rest, { question, because, example: options.example });
  }
  if (others.length === 0) {
    const inferred = options.inferred === true || length.inferred;
    return facts(rest, fact(question, value(first.valueMm), rest.said, inferred));
  }
  return asks(rest, {
    question,
    text: `${length.text}: of which unit?`,
    readings: length.readings.map((reading) => ({
      label: `${length.text.replace(/\s*[a-z"']+$/, '')} ${reading.unit}`,
      fact: fact(question, value(reading.valueMm), rest.said),
    })),
  });
}
