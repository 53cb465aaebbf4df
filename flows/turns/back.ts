import { entryWithout, type Speaker } from '../accept.ts';
import { lastAnsweredIn } from '../listening.ts';
import type { Open } from '../open.ts';
import { describe } from '../wording/describe.ts';
import { says, type Turn } from './turn.ts';

/** Takes back what was answered last, so that it is asked again; while something is asked back, only that. */
export function back(open: Open, speaker: Speaker): Turn {
  if (open.offered !== null) {
    return {
      added: [entryWithout('take-back', open.offered.ask.question, speaker)],
      say: ['Left as it was.'],
    };
  }
  const question = lastAnsweredIn(open);
  if (question === null) return says('There is nothing to go back to yet.');
  const last = open.folded.live.findLast((entry) => entry.question === question);
  const was = last?.value ? describe(last.value, open.folded.unit).join(', ') : '';
  const say = was === '' ? 'Back one.' : `Back one: taken off, ${was}.`;
  return { added: [entryWithout('take-back', question, speaker)], say: [say] };
}
