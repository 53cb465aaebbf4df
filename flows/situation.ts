import type { Job, JobSoFar } from '../core/job.ts';
import type { Caution, Plan } from '../core/plan-shape.ts';
import { THIN_WALL } from '../core/wall/zones.ts';
import type { Folded } from './fold.ts';
import type { Parts } from './parts.ts';
import type { QuestionName } from './question.ts';
import { QUESTIONS } from './questions/all.ts';
import type { Heard } from './questions/shape.ts';
import { decidingOf } from './what-decides.ts';
import { wholeJob } from './whole-job.ts';

/** Where a conversation stands: all that the machine's guards look at. No history. */
export type Situation = Heard & {
  /** The question that something is asked back for; null when nothing is. */
  readonly askedBack: QuestionName | null;
  /** What stops the job wherever the piece goes. */
  readonly stops: readonly Caution[];
  /** A question that is asked only because its answer would change this plan. */
  readonly deciding: QuestionName | null;
  /** Worked out once nothing is left to ask. */
  readonly plan: Plan | null;
  readonly whole: Job | null;
  readonly confirmed: boolean;
  /** Something was read from words or assumed. */
  readonly hasGuesses: boolean;
  /** Warnings of the plan that nobody has acknowledged yet. */
  readonly unacknowledged: readonly string[];
};

const NAMES = Object.keys(QUESTIONS) as QuestionName[];

/** Works out where the conversation stands from the folded answers; what stood `before` is kept where no answer has changed. */
export function situationOf(folded: Folded, parts: Parts, before?: Situation): Situation {
  const { job, live } = folded;
  const heard: Heard = { job, answered: answeredIn(live), unknown: unknownIn(live) };
  const worked = before && isTheSame(before, heard) ? before : workedOut(heard, parts);
  const { plan } = worked;
  return {
    ...heard,
    askedBack: askedBackIn(live),
    stops: worked.stops,
    deciding: worked.deciding,
    plan,
    whole: worked.whole,
    confirmed: live.some((entry) => entry.act === 'confirm'),
    hasGuesses:
      live.some(({ inferred, act }) => inferred === true || act === 'default') ||
      (plan?.assumptions.length ?? 0) > 0,
    unacknowledged: plan === null ? [] : warnsOf(plan).filter((id) => !acknowledgedIn(live).has(id)),
  };
}

type WorkedOut = Pick<Situation, 'stops' | 'deciding' | 'plan' | 'whole'>;

function workedOut(heard: Heard, { stopsSoFar, planOf }: Parts): WorkedOut {
  const stops = stopsSoFar(thinIfNotKnown(heard));
  const whole = stops.length === 0 && !NAMES.some((name) => isOpen(name, heard)) ? wholeJob(heard.job) : null;
  const deciding = whole === null ? null : decidingOf(whole, heard, planOf);
  return { stops, whole, deciding, plan: whole === null || deciding !== null ? null : planOf(whole) };
}

/** A wall whose thickness was asked and is not known counts as thin (contract, section 4), and stops as one. */
function thinIfNotKnown({ job, unknown }: Heard): JobSoFar {
  if (!unknown.has('wall.thicknessMm') || job.wall?.thicknessMm !== undefined) return job;
  return { ...job, wall: { ...job.wall, thicknessMm: THIN_WALL.value } };
}

/** The fold keeps the very job when an entry sets nothing of it: a yes, an acknowledgement. */
function isTheSame(before: Situation, { job, answered, unknown }: Heard): boolean {
  const rest = ({ size }: ReadonlySet<QuestionName>, now: ReadonlySet<QuestionName>): boolean =>
    size === now.size;
  return (
    before.job === job &&
    rest(before.unknown, unknown) &&
    [...answered].every((name) => before.answered.has(name) || name === 'confirm' || name === 'acknowledge')
  );
}

/** Missing, and not yet put off. */
export function isWanted(name: QuestionName, heard: Heard): boolean {
  return QUESTIONS[name].isMissing(heard) && !heard.unknown.has(name);
}

/** Missing, put off before, and nothing goes on without it. */
export function isPutOff(name: QuestionName, heard: Heard): boolean {
  return heard.unknown.has(name) && QUESTIONS[name].ifUnknown === null && QUESTIONS[name].isMissing(heard);
}

const isOpen = (name: QuestionName, heard: Heard): boolean => isWanted(name, heard) || isPutOff(name, heard);

function warnsOf(plan: Plan): string[] {
  return [...new Set(plan.cautions.filter((each) => each.severity === 'warn').map((each) => each.id))];
}

function answeredIn(live: Folded['live']): ReadonlySet<QuestionName> {
  return new Set(live.flatMap(({ act, question }) => (question && act !== 'asked-back' ? [question] : [])));
}

function unknownIn(live: Folded['live']): ReadonlySet<QuestionName> {
  const unknown = new Set<QuestionName>();
  for (const { act, question } of live) {
    if (question === null || act === 'asked-back') continue;
    if (act === 'unknown') unknown.add(question);
    else unknown.delete(question);
  }
  return unknown;
}

function askedBackIn(live: Folded['live']): QuestionName | null {
  const last = live.at(-1);
  return last?.act === 'asked-back' ? last.question : null;
}

function acknowledgedIn(live: Folded['live']): ReadonlySet<string> {
  return new Set(live.flatMap((entry) => (entry.act === 'acknowledge' ? (entry.cautions ?? []) : [])));
}

/** The job so far as a plan would have it: whole where it is whole. */
export const jobToLog = (situation: Situation): Job | JobSoFar => situation.whole ?? situation.job;
