import { choicesNow } from '../choices-now.ts';
import { awaitingIn, type Open, stateOf } from '../open.ts';
import type { QuestionName } from '../question.ts';
import { QUESTIONS } from '../questions/all.ts';
import { describe } from './describe.ts';
import { exampleOf } from './example.ts';
import { sentence } from './sentence.ts';

/** How an answer may look, for the question that is open. */
export function notUnderstood(open: Open): string {
  const question = awaitingIn(open);
  if (open.offered !== null)
    return `One of these: ${listed(open.offered.ask.readings)}. Or say it another way.`;
  if (question !== null) return `I did not follow that. ${howItMayLook(question, open)}`;
  if (open.standing?.plan.verdict === 'stop')
    return 'I did not follow that. Tell me what has changed, or “start over”.';
  return 'I did not follow that. The plan stands: correct anything, ask “why” about a number, or name the next piece.';
}

/** A few buttons are read out; of many, or of a figure, one example does. */
const MOST_READ_OUT = 4;

function howItMayLook(question: QuestionName, open: Open): string {
  const choices = choicesNow(question, open);
  const isPicked = choices.length > 1 && choices.length <= MOST_READ_OUT;
  return isPicked
    ? `One of these: ${listed(choices)}.`
    : `For example: ${exampleOf(question, open.folded.unit)}.`;
}

const listed = (choices: readonly { label: string }[]): string =>
  choices.map(({ label }) => label).join('; ');

/** What is kept from other conversations of the crew, and was not said in this one. Nothing is taken quietly. */
export function keptForTheCrew(open: Open): string {
  const { live, unit } = open.folded;
  const kept = live.filter(
    ({ act, question }) =>
      act === 'default' && !live.some((each) => each.question === question && each.act !== 'default'),
  );
  const words = kept.flatMap(({ value }) => (value ? describe(value, unit) : [])).join(', ');
  return words === '' ? '' : `As before for your crew: ${words}. Say so if it differs here.`;
}

export function greeting(open: Open): string[] {
  if (open.folded.live.some((entry) => entry.act !== 'default'))
    return ['Hello. Nothing is lost; we were here:'];
  return [
    'Hello. I work out where to drill and what to fix with for a heavy picture or mirror, and say so when it should not be drilled. Tell me all you know in one message, or answer one question at a time.',
  ];
}

/** Something was answered; what a crew remembers does not count. */
export function hasBegun(open: Open): boolean {
  return open.folded.live.some((entry) => entry.act !== 'default');
}

/** A lone "?": how to find out what is asked, or what can be said. */
export function howTo(open: Open): string[] {
  const question = awaitingIn(open);
  return question === null ? help(open) : [sentence(QUESTIONS[question].howTo)];
}

export function help(open: Open): string[] {
  const question = awaitingIn(open);
  const now = question === null ? [] : [`Just now: ${sentence(QUESTIONS[question].howTo)}`];
  return [
    'Answer in your own words, several things at once if you like, in mm, cm, m, feet or inches. You can say at any time: “back”, “start over”, “why”, “don’t know”, “stop”, or change anything (“make that 28 kg”). Ask about the trade whenever you like; your place is kept.',
    ...now,
  ];
}

export function pausing(open: Open): string {
  if (stateOf(open) === 'paused') return 'Still paused. Write anything to go on.';
  return 'Paused. Nothing is lost: write anything, today or next month, and we go on from here.';
}

export function whereItStands(open: Open): string {
  if (open.standing?.plan.verdict === 'stop') return 'Noted. What stops the job still stands.';
  return open.standing === null ? 'Noted.' : 'Noted. The plan stands.';
}
