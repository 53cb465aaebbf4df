import type { Plan } from '../core/plan-shape.ts';
import { changesBetween } from './changes.ts';
import { type Open, situationIn, stateOf } from './open.ts';
import type { DisplayUnit } from './reading.ts';
import type { Reply } from './reply.ts';
import { assumptionText } from './wording/assumption.ts';
import { fixingText, shoppingTable } from './wording/fixing.ts';
import { inUnit, stepInUnit } from './wording/in-unit.ts';
import { isHowToLevel, marksText } from './wording/marks.ts';
import { sentence } from './wording/sentence.ts';
import { clearLines } from './wording/stop.ts';

export const isStop = ({ severity }: Plan['cautions'][number]): boolean => severity === 'stop';

/** What is said of a stop: first that marks given before no longer count. */
export function stopReplies(before: Open, plan: Plan, unit: DisplayUnit): Reply[] {
  const clear = clearLines(plan.cautions.filter(isStop), plan.clear, unit).map(text);
  const was = before.standing?.plan;
  const changed =
    was && was.verdict !== 'stop'
      ? [text('That changes the plan: the marks above no longer count. Do not drill.')]
      : [];
  return [...changed, ...cautionReplies(plan, 'stop', unit), ...clear];
}

export function planReplies(before: Open, after: Open, plan: Plan, standingLine: string): Reply[] {
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
export function acknowledgedNow(before: Open, after: Open, plan: Plan): Reply[] {
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

export const planReply = (plan: Plan, id: string): Reply => ({
  kind: 'plan',
  text: PLAN_TEXT[plan.verdict],
  id,
  verdict: plan.verdict,
});
export const text = (said: string): Reply => ({ kind: 'text', text: said });
