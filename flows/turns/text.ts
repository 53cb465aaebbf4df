import { entryWithout, type Speaker } from '../accept.ts';
import { entriesFor } from '../crew-defaults.ts';
import { isWorkedOut, listeningTo } from '../listening.ts';
import { awaitingIn, type Open } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { QuestionName } from '../question.ts';
import type { Fact, Intent, Reading } from '../reading.ts';
import { tradeAnswer } from '../trade/answer.ts';
import { notKnownOf } from '../understand/steering/not-known-of.ts';
import { explain } from '../wording/explain.ts';
import { greeting, hasBegun, help, howTo, notUnderstood, pausing, whereItStands } from '../wording/talk.ts';
import { onAnotherWall } from './another-wall.ts';
import { notKnown, shortAnswer } from './answers.ts';
import { askedOfThePlan } from './asked-of-the-plan.ts';
import { back } from './back.ts';
import { askedBack, factsSaid } from './facts.ts';
import { anotherPiece, tookReading } from './offered.ts';
import { pickedIn } from './picked.ts';
import { readBack } from './read-back.ts';
import { spokenUnit } from './spoken-unit.ts';
import { lateFinish, madeOf, saysWhatIsInHand } from './told-otherwise.ts';
import { says, type Turn } from './turn.ts';

/** What typed words come to. */
export function textHeard(open: Open, said: string, speaker: Speaker, parts: Parts): Turn {
  if (open.offered !== null) {
    const picked = pickedIn(said, open.offered);
    if (picked !== null) return tookReading(open, open.offered, picked, speaker, parts);
  }
  if (THANKS.test(said)) return says(...(awaitingIn(open) === null ? [whereItStands(open)] : []));
  if (saysWhatIsInHand(open, said)) return says(...readBack(said, open, parts));
  const reading = lateFinish(open, said, parts) ?? parts.understand(said, listeningTo(open));
  const unit = spokenUnit(reading);
  const by: Speaker = unit ? { ...speaker, unit } : speaker;
  return (
    madeOf(open, said, reading, by, parts) ??
    onAnotherWall(open, said, by, parts) ??
    spokenTo(open, said, reading, by, parts) ??
    moreOfAnother(open, said, reading, by) ??
    factsTurn(open, reading, by) ??
    answered(open, reading.intent, by, parts) ??
    inPassing(open, said) ??
    says(notUnderstood(open))
  );
}

const THANKS = /^\W*(?:(?:thanks?|thank you|thx|ta|cheers)\W*)+(?:mate|very much|a lot|so much)?\W*$/i;

/** A nod or a thank-you, once nothing is asked: heard, and nothing is changed by it. */
const COURTESY =
  /^\W*(?:(?:ok(?:ay)?|k|yes|yep|no|sure|thanks?|thank you|ta|cheers|great|good|nice|perfect|cool|done|got it|all good|will do|no worries|mate|👍|👌|🙏)\W*)+$/iu;

function inPassing(open: Open, said: string): Turn | null {
  return awaitingIn(open) === null && COURTESY.test(said) ? says(whereItStands(open)) : null;
}

const NO_ANSWER = 'That one I can’t answer yet, and I won’t guess.';

const TELL_ME =
  'That I can say once I know the job. Tell me all you know in one message, or answer one question at a time.';

/** What is spoken to the assistant itself, whatever figures it holds. */
function spokenTo(open: Open, said: string, reading: Reading, by: Speaker, parts: Parts): Turn | null {
  switch (reading.intent) {
    case 'start-over':
      return startOver(open, by);
    case 'back':
      return reading.facts.length > 0 ? null : back(open, by);
    case 'why':
      return { ...says(...explain(open, reading.about)) };
    case 'help':
      return says(...(/^\W+$/.test(said) ? howTo(open) : help(open)));
    case 'stop':
      return { ...says(pausing(open)), pauses: true };
    case 'trade-question':
      return withFacts(
        askedOfThePlan(said, open, parts) ?? tradeAnswer(said, open),
        factsTurn(open, reading, by),
        says(hasBegun(open) ? NO_ANSWER : TELL_ME),
      );
    case 'new-piece':
      return namesAnother(open, said, by);
    case 'self-check':
      return says(...readBack(said, open, parts));
    default:
      return null;
  }
}

/** What was told beside the question is recorded, and said after its answer. */
function withFacts(answer: Turn | null, told: Turn | null, otherwise: Turn): Turn {
  if (told === null) return answer ?? otherwise;
  const first = answer ?? otherwise;
  return { ...first, ...told, added: [...first.added, ...told.added], say: [...first.say, ...told.say] };
}

function startOver(open: Open, by: Speaker): Turn {
  return {
    added: [entryWithout('start-over', null, by), ...entriesFor(open.defaults, by.at)],
    say: ['Starting again: nothing from before counts.'],
  };
}

/** Only once this piece is worked out; before that, another piece is a correction of this one. */
function namesAnother(open: Open, said: string, by: Speaker): Turn | null {
  if (!isWorkedOut(open)) return null;
  return askedBack({ added: [], say: [] }, anotherPiece(said), by);
}

/** What is told before it is clear whether it is of a new piece waits with the words that named that piece. */
function moreOfAnother({ offered }: Open, said: string, { facts }: Reading, by: Speaker): Turn | null {
  if (offered?.kind !== 'another-piece' || facts.length === 0) return null;
  const all = `${offered.said}, ${said}`;
  return askedBack({ added: [], say: ['First:'] }, anotherPiece(all), { ...by, said: all });
}

function factsTurn(open: Open, reading: Reading, by: Speaker): Turn | null {
  const { facts, refused, asks, intent } = reading;
  if (facts.length + refused.length + asks.length === 0) return null;
  const turn = factsSaid(open, reading, by);
  if (intent !== 'dont-know' || answersOpen(open, facts) || asks.length > 0) return turn;
  const also = notKnown(open, notKnownWhat(open, by), by);
  return { ...also, added: [...turn.added, ...also.added], say: [...turn.say, ...also.say] };
}

/** What is not known is what the words name; where they name nothing, what was asked. */
const notKnownWhat = (open: Open, { said }: Speaker): QuestionName | null =>
  notKnownOf(said, open.folded.job) ?? awaitingIn(open);

const answersOpen = (open: Open, facts: readonly Fact[]): boolean =>
  facts.some((fact) => fact.question === awaitingIn(open));

function answered(open: Open, intent: Intent, by: Speaker, parts: Parts): Turn | null {
  switch (intent) {
    case 'yes':
      return shortAnswer(open, 'yes', by, parts);
    case 'no':
      return shortAnswer(open, 'no', by, parts) ?? shortAnswer(open, 'none', by, parts);
    case 'none-of-these':
      return shortAnswer(open, 'none', by, parts) ?? shortAnswer(open, 'no', by, parts);
    case 'dont-know':
      return notKnown(open, notKnownWhat(open, by), by);
    case 'greet':
      return { ...says(...greeting(open)), ...(hasBegun(open) && { tellsAll: true as const }) };
    case 'where-were-we':
      return { ...says(), tellsAll: true };
    default:
      return null;
  }
}
