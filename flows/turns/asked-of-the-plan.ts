import { changesBetween } from '../changes.ts';
import type { Entry } from '../entry.ts';
import { fold } from '../fold.ts';
import { type Open, situationIn, stateOf } from '../open.ts';
import type { Parts } from '../parts.ts';
import { wholeJob } from '../whole-job.ts';
import { assumedText } from '../wording/assumption.ts';
import { clearText } from '../wording/stop.ts';
import { says, type Turn } from './turn.ts';

const WHAT_CHANGED = /\bwhat(?:'s|’s|s| has| is| did)? (?:changed?|different|new|that change|it change)\b/i;
const WHAT_NOW =
  /\bwhat (?:can|could|do|should|must) (?:i|we)\b|\bwhat (?:now|then|next|else)\b|\bhow (?:can|do) (?:i|we) (?:fix|clear|get round)\b|\bnow what\b/i;
const ASSUMED = /\bassum|\bguess|\btaken? for granted\b/i;

/** What is asked of the plan or the stop as a whole: what changed, what was assumed, what can be done about it. */
export function askedOfThePlan(said: string, open: Open, parts: Parts): Turn | null {
  const { plan } = situationIn(open);
  if (stateOf(open) === 'stopped') return WHAT_NOW.test(said) ? says(clearText(open)) : null;
  if (plan === null) return ASSUMED.test(said) ? says(NOTHING_YET) : null;
  if (WHAT_CHANGED.test(said)) return says(whatChanged(open, parts));
  if (!ASSUMED.test(said)) return null;
  return says(assumedText(plan.assumptions, open.folded.unit) || 'Nothing was assumed.');
}

const NOTHING_YET = 'Nothing yet. What I assume stands in the summary, before any mark is given.';

/** Held against the job as it was before the last message that changed it. */
function whatChanged(open: Open, parts: Parts): string {
  const { live, unit } = open.folded;
  const { plan } = situationIn(open);
  const last = live.findLast(({ value }) => value !== null);
  const before = wholeJob(fold(live.filter((entry) => !isSameMessage(entry, last))).job);
  if (plan === null || before === null) return 'This is the first plan: nothing has changed in it.';
  const changes = changesBetween(parts.planOf(before), plan, unit);
  return changes.length === 0
    ? 'Nothing to buy, drill or heed changed by what you said last.'
    : `By what you said last: ${changes.join(' ')}`;
}

const isSameMessage = (entry: Entry, last: Entry | undefined): boolean =>
  entry.said === last?.said && entry.at === last.at;
