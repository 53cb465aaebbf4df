import type { Plan } from '../core/plan-shape.ts';
import { changesBetween } from './changes.ts';
import { jobKey, type Open, planThatStands, situationIn, stateOf } from './open.ts';
import type { DisplayUnit } from './reading.ts';
import type { Reply } from './reply.ts';
import { assumptionText } from './wording/assumption.ts';
import { fixingText, shoppingTable } from './wording/fixing.ts';
import { inUnit, stepInUnit } from './wording/in-unit.ts';
import { isHowToLevel, marksText } from './wording/marks.ts';
import { sentence } from './wording/sentence.ts';
import { clearLines } from './wording/stop.ts';

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

const isStop = ({ severity }: Plan['cautions'][number]): boolean => severity === 'stop';

const stopIds = (plan: Plan): string =>
  plan.cautions
    .filter(isStop)
    .map((each) => each.id)
    .join();

function stopReplies(before: Open, plan: Plan, unit: DisplayUnit): Reply[] {
  const clear = clearLines(plan.cautions.filter(isStop), plan.clear, unit).map(text);
  const was = before.standing?.plan;
  const changed =
    was && was.verdict !== 'stop'
      ? [text('That changes the plan: the marks above no longer count. Do not drill.')]
      : [];
  return [...changed, ...cautionReplies(plan, 'stop', unit), ...clear];
}

function planReplies(before: Open, after: Open, plan: Plan, standingLine: string): Reply[] {
  const { unit, job } = after.folded;
  const was = before.standing?.plan.verdict === 'stop' ? undefined : before.standing?.plan;
  const datum = job.wall?.datum?.kind ?? 'floor';
  const { fixing } = plan;
  const table = shoppingTable(plan);
  return [
    ...(was ? changesText(was, plan, unit).map(text) : []),
    {
      kind: 'marks',
      text: marksText(
        plan,
        datum,
        unit,
        datum === 'mantel' || datum === 'furniture' ? job.wall?.datum?.aboveFloorMm : undefined,
      ),
      marks: plan.marks,
      crossChecks: plan.crossChecks,
      unit,
    },
    ...(fixing === null ? [] : [{ kind: 'fixing', text: fixingText(fixing, unit), fixing } satisfies Reply]),
    ...cautionReplies(plan, 'warn', unit),
    ...plan.advice
      .filter((line) => !was?.advice.includes(line) && !isHowToLevel(line))
      .map((line) => text(sentence(inUnit(line, unit)))),
    ...assumedNow(was, plan, unit),
    ...(was && shoppingTable(was).text === table.text ? [] : [{ kind: 'table', ...table } satisfies Reply]),
    text(standingLine),
    ...(situationIn(after).unacknowledged.length === 0 ? stepsReply(plan, unit) : []),
  ];
}

function changesText(was: Plan, plan: Plan, unit: DisplayUnit): string[] {
  const changes = changesBetween(was, plan, unit);
  return changes.length === 0
    ? ['Nothing to buy, drill or heed changes by that.']
    : [`What changes: ${changes.join(' ')}`];
}

/** After a correction nobody confirms again, so what is newly assumed is said with the plan. */
function assumedNow(was: Plan | undefined, plan: Plan, unit: DisplayUnit): Reply[] {
  if (was === undefined) return [];
  const before = new Set(was.assumptions.map((each) => assumptionText(each, unit)));
  const lines = plan.assumptions
    .map((each) => assumptionText(each, unit))
    .filter((line) => !before.has(line));
  return lines.length === 0 ? [] : [text(['Assumed now:', ...lines.map((line) => `- ${line}`)].join('\n'))];
}

/** The step-by-step at the wall waits for the acknowledgement, where there is something to acknowledge. */
function acknowledgedNow(before: Open, after: Open, plan: Plan): Reply[] {
  return stateOf(before) === 'acknowledge' && stateOf(after) === 'planned'
    ? stepsReply(plan, after.folded.unit)
    : [];
}

function stepsReply(plan: Plan, unit: DisplayUnit): Reply[] {
  if (plan.steps.length === 0) return [];
  return [
    text(
      [
        'At the wall:',
        ...plan.steps.map((step, at) => `${at + 1}. ${sentence(stepInUnit(step, unit))}`),
      ].join('\n'),
    ),
  ];
}

/** A stop says how far to move, which is measured at the wall; it is said in the person's unit. */
function cautionReplies(plan: Plan, severity: 'stop' | 'warn', unit: DisplayUnit): Reply[] {
  return plan.cautions
    .filter((each) => each.severity === severity)
    .map((each) => ({
      kind: 'caution',
      id: each.id,
      severity,
      text: inUnit(each.text, unit),
      basis: [...new Set(each.basis.map((basis) => basis.title))],
    }));
}

const PLAN_TEXT = {
  go: 'That is the plan.',
  care: 'That is the plan; it wants the care said above.',
  stop: 'No hole is placed until that is cleared.',
} as const;

const planReply = (plan: Plan, id: string): Reply => ({
  kind: 'plan',
  text: PLAN_TEXT[plan.verdict],
  id,
  verdict: plan.verdict,
});
const text = (said: string): Reply => ({ kind: 'text', text: said });
