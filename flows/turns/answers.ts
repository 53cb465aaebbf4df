import { accept, entryOf, entryWithout, type Speaker } from '../accept.ts';
import type { Entry } from '../entry.ts';
import { awaitingIn, type Offered, type Open, situationIn } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { QuestionName } from '../question.ts';
import { QUESTIONS } from '../questions/all.ts';
import { hangingIsWhole } from '../whole-job.ts';
import { putOffAdvice } from '../wording/put-off.ts';
import { sentence } from '../wording/sentence.ts';
import { recorded } from './facts.ts';
import { says, type Turn } from './turn.ts';

/** Yes, no, or none of these, to whatever is open. */
export function shortAnswer(
  open: Open,
  answer: 'yes' | 'no' | 'none',
  speaker: Speaker,
  parts: Parts,
): Turn | null {
  const question = awaitingIn(open);
  if (question === null) return null;
  if (question === 'confirm') return confirmed(answer, speaker);
  if (question === 'acknowledge') return acknowledged(open, answer, speaker);
  return buttonPressed(open, question, answer, speaker, parts);
}

function confirmed(answer: string, speaker: Speaker): Turn {
  if (answer === 'yes') return { added: [entryWithout('confirm', 'confirm', speaker)], say: [] };
  return {
    added: [],
    say: [],
    asks: 'What is different? Say it in your own words, for example “make that 28 kg”; or yes, if it is right after all.',
  };
}

function acknowledged(open: Open, answer: string, speaker: Speaker): Turn {
  if (answer !== 'yes') return says('No hurry. Ask “why” about any of them, or change the job.');
  const cautions = [...situationIn(open).unacknowledged];
  const entry: Entry = { ...entryWithout('acknowledge', 'acknowledge', speaker), cautions };
  return { added: [entry], say: ['Noted.'] };
}

/** A button's value, for its own question, open or not. Null when it is none of the question's. */
export function buttonPressed(
  open: Open,
  question: QuestionName,
  value: string,
  speaker: Speaker,
  parts: Parts,
): Turn | null {
  const fact = parts.factForChoice(question, value);
  if (fact === null) return null;
  const accepted = accept([fact], open.folded.said, () => true, open.folded.unit, question);
  return recorded(accepted.facts, accepted.lines, { ...speaker, said: speaker.said || fact.said });
}

/** "Don't know": recorded where the job can go on without it, put off where it can't. */
export function notKnown(open: Open, question: QuestionName | null, speaker: Speaker): Turn {
  if (question === null) return says('Nothing is being asked just now.');
  if (open.offered !== null) return notSureWhich(open.offered, speaker);
  const { ifUnknown, howTo, usual } = QUESTIONS[question];
  if (question === 'confirm' || question === 'acknowledge') return says(howTo);
  const entry = entryWithout('unknown', question, speaker);
  const unplaced = question === 'wall.accessories' ? (open.folded.said.wall?.unplaced ?? []) : [];
  if (unplaced.length > 0) {
    const sought = unplaced.map((each) => ({ ...each, whereabouts: 'unknown' as const }));
    return {
      added: [{ ...entry, value: { wall: { unplaced: sought } } }],
      say: ['Where it is not known, then.'],
    };
  }
  const taken = usual?.(open.folded.job, open.folded.unit) ?? null;
  if (taken !== null) {
    const fact = { question, value: taken.value, said: speaker.said, inferred: true };
    return { added: [entryOf(fact, speaker)], say: [taken.says] };
  }
  if (ifUnknown !== null) {
    if (situationIn(open).unknown.has(question)) return stillNotKnown(open, entry, howTo);
    return {
      added: [{ ...entry, value: isEmpty(ifUnknown.value) ? null : ifUnknown.value }],
      say: [sentence(ifUnknown.says)],
    };
  }
  if (question === 'piece.hanging' && hangingIsWhole(open.folded.job.piece?.hanging)) {
    const isCord = open.folded.job.piece?.hanging?.by === 'cord';
    return {
      added: [entry],
      say: [
        isCord
          ? 'Then I reckon with one hook in the middle, and say so.'
          : 'Then I reckon with that one alone.',
      ],
    };
  }
  const advice = putOffAdvice(question, open.folded.job, open.folded.unit);
  if (situationIn(open).unknown.has(question)) return says(howTo, ...advice);
  return { added: [entry], say: [`Leave it for now; I ask again later. ${howTo}`, ...advice] };
}

/** A hint is given once; who has no answer after it is not told the same again. */
function stillNotKnown({ folded }: Open, entry: Entry, howTo: string): Turn {
  const times = folded.live.filter(({ act, question }) => act === 'unknown' && question === entry.question);
  if (entry.question !== 'wall.baseMaterial') return says(howTo);
  return times.length > 1 ? says(LOOKED_AT) : { added: [entry], say: [howTo] };
}

const LOOKED_AT =
  'Then let somebody look at it who knows walls, or find the drawings of the building. Till then use a picture rail or another wall, or stand it on the floor: that needs no answer. Your place is kept; tell me when you know.';

/** Not sure which of two readings: what was said first stays, and nothing is recorded for the other. */
function notSureWhich({ kind, ask }: Offered, speaker: Speaker): Turn {
  if (kind === 'another-piece') return says('If it hangs as well as the first, it is a new one.');
  const say =
    kind === 'contradiction' ? 'Then what you said first stays for now.' : 'Then I leave that open for now.';
  return { added: [entryWithout('take-back', ask.question, speaker)], say: [say] };
}

const isEmpty = (value: object): boolean => Object.keys(value).length === 0;
