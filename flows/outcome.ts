import type { Plan } from '../core/plan-shape.ts';
import { jobKey, type Open, planThatStands, situationIn } from './open.ts';
import { acknowledgedNow, isStop, planReplies, planReply, stopReplies, text } from './plan-replies.ts';
import type { Reply } from './reply.ts';

/** What a turn leads to once the machine has moved: a plan to log, and what is said of it. */
export type Outcome = { open: Open; logged: Plan | null; replies: Reply[] };

/** Compares where the conversation stood with where it stands, and says what is new. */
export function outcomeOf(before: Open, after: Open, id: string, standingLine: string): Outcome {
  const plan = planThatStands(after);
  if (plan === null) {
    return { open: { ...after, standing: null }, logged: null, replies: noPlanNow(before, after) };
  }
  const of = jobKey(situationIn(after));
  if (before.standing && plan.verdict === 'stop' && saysTheSame(before.standing.plan, plan))
    return {
      open: { ...after, standing: { ...before.standing, plan, of } },
      logged: null,
      replies: stillStopped(before, after),
    };
  if (before.standing?.of === of && sameStops(before.standing.plan, plan)) {
    return { open: after, logged: null, replies: acknowledgedNow(before, after, plan) };
  }
  const open: Open = { ...after, standing: { id, plan, of } };
  const replies =
    plan.verdict === 'stop'
      ? stopReplies(before, plan, after.folded.unit)
      : planReplies(before, after, plan, standingLine);
  return { open, logged: plan, replies: [...replies, planReply(plan, id)] };
}

/**
 * No plan stands now. Only an answer clears a stop or takes a plan down; taking one back or starting over leaves
 * nothing to speak of.
 */
function noPlanNow(before: Open, after: Open): Reply[] {
  const was = before.standing?.plan.verdict;
  if (was === undefined || after.folded.live.length < before.folded.live.length) return [];
  if (was !== 'stop') return [text('The plan above does not count until this is answered.')];
  const [then, now] = [situationIn(before), situationIn(after)];
  const cleared = now.stops.length === 0 && (then.stops.length > 0 || now.plan !== null);
  return cleared ? [text('That clears what stopped it. We go on.')] : [];
}

function sameStops(before: Plan, after: Plan): boolean {
  return stopIds(before) === stopIds(after) && before.verdict === after.verdict;
}

/** The same stop is logged and spoken once, however much more is said; only its words tell two apart. */
function saysTheSame(before: Plan, plan: Plan): boolean {
  const words = ({ cautions }: Plan): string =>
    cautions
      .filter(isStop)
      .map(({ id, text }) => id + text)
      .join();
  return before.verdict === 'stop' && words(before) === words(plan);
}

function stillStopped(before: Open, after: Open): Reply[] {
  const isMore =
    after.folded.live.length > before.folded.live.length && situationIn(after).askedBack === null;
  return isMore ? [text('It is still stopped by what I said above.')] : [];
}

const stopIds = (plan: Plan): string =>
  plan.cautions
    .filter(isStop)
    .map((each) => each.id)
    .join();
