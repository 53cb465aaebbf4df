import { entryWithout, type Speaker } from '../accept.ts';
import type { Entry } from '../entry.ts';
import type { Open } from '../open.ts';
import type { QuestionName } from '../question.ts';
import { describe } from '../wording/describe.ts';
import { says, type Turn } from './turn.ts';

/** Takes back all that was said last, so that it is asked again; while something is asked back, only that. */
export function back(open: Open, speaker: Speaker): Turn {
  if (open.offered !== null) {
    return {
      added: [entryWithout('take-back', open.offered.ask.question, speaker)],
      say: ['Left as it was.'],
    };
  }
  const last = saidLast(open.folded.live);
  const questions = [...new Set(last.map(({ question }) => question))];
  if (questions.length === 0) return says('There is nothing to go back to yet.');
  const was = last.flatMap(({ value }) => (value ? describe(value, open.folded.unit) : [])).join(', ');
  return {
    added: questions.map((question) => entryWithout('take-back', question, speaker)),
    say: [was === '' ? 'Back one.' : `Back one: taken off, ${was}.`],
  };
}

type Asked = Entry & { question: QuestionName };

/** The answers of the last message. What a crew remembers was not said. */
function saidLast(live: readonly Entry[]): Asked[] {
  const answers = live.filter((entry): entry is Asked => entry.question !== null && isAnswer(entry));
  const last = answers.at(-1);
  const isSameMessage = ({ said, at, by }: Asked): boolean =>
    said === last?.said && at === last.at && by === last.by;
  return answers.slice(answers.findLastIndex((entry) => !isSameMessage(entry)) + 1);
}

const isAnswer = ({ act }: Entry): boolean => act !== 'default' && act !== 'asked-back';
