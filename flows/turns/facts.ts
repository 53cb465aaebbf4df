import type { JobSoFar } from '../../core/job.ts';
import { type Accepted, accept, entryOf, type Speaker } from '../accept.ts';
import type { Entry } from '../entry.ts';
import { laidOver } from '../merge.ts';
import { awaitingIn, type Offered, type Open, situationIn, stateOf } from '../open.ts';
import type { QuestionName } from '../question.ts';
import type { AskBack, DisplayUnit, Fact, Reading } from '../reading.ts';
import { describe } from '../wording/describe.ts';
import { exampleOf } from '../wording/example.ts';
import { sentence } from '../wording/sentence.ts';
import { ofTheWall } from './of-the-wall.ts';
import type { Turn } from './turn.ts';

/** Once all is gathered a different figure is a correction; before that it is asked about. */
const GATHERED: ReadonlySet<string> = new Set(['confirm', 'acknowledge', 'planned']);

/** Records what a message said; asks back what disagrees with what was said before or can be read two ways. */
export function factsSaid(open: Open, reading: Reading, speaker: Speaker): Turn {
  const awaiting = awaitingIn(open);
  const answering = open.offered?.ask.question ?? awaiting;
  const replaces = (fact: Fact): boolean =>
    reading.correction ||
    isGathered(open) ||
    fact.question === answering ||
    isRemembered(open, fact.question);
  const unit = speaker.unit ?? open.folded.unit;
  const remembered = (question: QuestionName): boolean => isRemembered(open, question);
  const accepted = accept(reading.facts, open.folded.said, replaces, unit, answering, remembered);
  const turn = recorded(accepted.facts, accepted.lines, speaker);
  if (accepted.facts.length === 0 && accepted.against === null) turn.say.push(...alreadySaid(reading, unit));
  const refused = reading.refused.map(
    (each) => `${sentence(each.because)} For example: ${exampleOf(each.question, unit, each.example)}.`,
  );
  const asked = reading.asks[0];
  if (accepted.against) {
    // As it will be known when the conversation is taken up again.
    const known = accepted.facts.reduce((job, { value }) => laidOver(job, value), open.folded.said);
    const offered = contradictionOf(accepted.against, known, speaker.said, unit);
    return askedBack(turn, offered, speaker, null, refused);
  }
  if (asked)
    return askedBack(turn, { kind: 'readings', ask: asked, said: speaker.said }, speaker, null, refused);
  return { ...turn, say: [...turn.say, ...refused] };
}

function isGathered(open: Open): boolean {
  const state = stateOf(open);
  return GATHERED.has(state) || (state === 'stopped' && situationIn(open).plan !== null);
}

/** What was said again is heard all the same. */
function alreadySaid({ facts }: Reading, unit: DisplayUnit): string[] {
  const words = facts.flatMap(({ value }) => describe(value, unit)).join(', ');
  return words === '' ? [] : [`I have that already: ${words}.`];
}

/** Records facts as they are, with one line that says what was understood. */
export function recorded(facts: readonly Fact[], lines: readonly string[], speaker: Speaker): Turn {
  const spoken = lines.filter((line) => line !== '').join(', ');
  return {
    added: facts
      .filter((fact) => Object.keys(fact.value).length > 0 || fact.question === 'hazards')
      .map((fact) => entryOf(fact, speaker)),
    say: spoken === '' ? [] : [sentence(spoken)],
  };
}

/** A crew's default gives way to what is said, without a word. */
function isRemembered(open: Open, question: QuestionName): boolean {
  const last = open.folded.live.findLast((entry) => entry.question === question);
  return last?.act === 'default';
}

export function contradictionOf(
  { fact, before }: NonNullable<Accepted['against']>,
  known: JobSoFar,
  said: string,
  unit: DisplayUnit,
): Offered {
  const was = describe(before, unit).join(', ');
  const now = describe(fact.value, unit).join(', ');
  const wall = ofTheWall(fact, known);
  const ask: AskBack = {
    question: fact.question,
    text: `You said ${was} before; now ${now}. ${wall ? 'Which is right, or is that the wall?' : 'Which is right?'}`,
    readings: [
      { label: sentenceless(was) },
      { label: sentenceless(now), fact },
      ...(wall ? [{ label: sentenceless(describe(wall.value, unit).join(', ')), fact: wall }] : []),
    ],
  };
  return { kind: 'contradiction', ask, said };
}

const sentenceless = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Adds the asking back to a turn, as its last entry. A contradiction keeps its new value in the entry. */
export function askedBack(
  turn: Turn,
  offered: Offered,
  speaker: Speaker,
  value: Entry['value'] = null,
  refused: readonly string[] = [],
): Turn {
  const kept = offered.kind === 'contradiction' ? (offered.ask.readings[1]?.fact?.value ?? value) : value;
  const entry: Entry = {
    act: 'asked-back',
    question: offered.ask.question,
    value: kept,
    said: speaker.said,
    by: speaker.by,
    at: speaker.at,
    ...(speaker.unit && { unit: speaker.unit }),
  };
  return { ...turn, added: [...turn.added, entry], say: [...turn.say, ...refused], offered };
}
