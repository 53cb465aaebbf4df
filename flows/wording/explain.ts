import type { JobSoFar } from '../../core/job.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Why } from '../../core/why.ts';
import { awaitingIn, type Open, situationIn, stateOf } from '../open.ts';
import type { QuestionName } from '../question.ts';
import { QUESTIONS } from '../questions/all.ts';
import type { DisplayUnit } from '../reading.ts';
import { isRoundedTo, otherFigures, warnsOf } from './other-figures.ts';
import { sentence } from './sentence.ts';
import { atTheTape, cautionWhy, whyText } from './why-text.ts';

/** Why a number of the plan is what it is, or why the open question is asked. */
export function explain(open: Open, about: string | undefined): string[] {
  const plan = open.standing?.plan ?? situationIn(open).plan;
  const { unit } = open.folded;
  const whys = about === undefined || plan === null ? [] : asked(plan, about, open.folded.job, unit);
  if (whys.length > 0) return whys;
  if (plan !== null && plan.verdict !== 'stop' && about !== undefined && figuresIn(about).length > 0) {
    return [`I find no ${about} in this plan. Ask about ${namesIn(plan)}.`];
  }
  const meant = questionMeant(about);
  if (meant !== null) return [sentence(QUESTIONS[meant].why)];
  const question = awaitingIn(open);
  if (question !== null && stateOf(open) !== 'stopped') return [sentence(QUESTIONS[question].why)];
  if (plan !== null && plan.verdict === 'stop') return plan.cautions.filter(stops).map(cautionWhy);
  if (question !== null) return [sentence(QUESTIONS[question].why)];
  if (plan !== null) return [`Ask about any number in it: ${namesIn(plan)}.`];
  return ['Nothing is being asked just now.'];
}

/** "Why do you need the year" is about that question, open or not. */
function questionMeant(about: string | undefined): QuestionName | null {
  const words = wordsIn(about ?? '').filter((word) => word.length > 3);
  const named = (Object.keys(QUESTIONS) as QuestionName[]).filter((name) => !isLastWord(name));
  return named.find((name) => wordsIn(spelled(name)).some((word) => words.includes(word))) ?? null;
}

const isLastWord = (name: QuestionName): boolean => name === 'confirm' || name === 'acknowledge';
/** "building.yearBuilt" as words: building, year, built; the group alone names nothing. */
const spelled = (name: string): string =>
  (name.split('.').at(-1) ?? name).replace(/(Mm|Kg|N)$/, '').replace(/([A-Z])/g, ' $1');

const stops = (caution: Plan['cautions'][number]): boolean => caution.severity === 'stop';

function asked(plan: Plan, about: string, job: JobSoFar, unit: DisplayUnit): string[] {
  const found = plan.why.filter((why) => isAbout(why, about, unit));
  if (found.length > 0) return reasonsOf(found, unit);
  const figures = figuresIn(about);
  if (figures.length > 0) return oneStepAway(plan, figures, about, job, unit);
  const words = wordsIn(about).filter((word) => word.length > 3 && !SAYS_NOTHING.has(word));
  const shared = (text: string): number => wordsIn(text).filter((word) => words.includes(word)).length;
  const meant = plan.cautions.filter((each) => each.severity !== 'note' && shared(each.text) > 0);
  return meant
    .sort((one, other) => shared(other.text) - shared(one.text))
    .slice(0, 1)
    .map(cautionWhy);
}

/** A figure that is no result of its own: it follows from one, was rounded or made a percentage, or a warning names it. */
function oneStepAway(
  plan: Plan,
  figures: readonly string[],
  about: string,
  job: JobSoFar,
  unit: DisplayUnit,
): string[] {
  const others = otherFigures(plan, job, unit).filter(({ holds }) => holdsFigure(holds, figures, about));
  if (others.length > 0) return [...new Set(others.map(({ text }) => text))].slice(0, MOST_AT_ONCE);
  const near = plan.why.filter((why) =>
    figuresIn(why.of === 'utilisation' ? percent(why.result) : why.result).some((each) =>
      figures.some((figure) => isRoundedTo(each, figure)),
    ),
  );
  if (near.length > 0) return reasonsOf(near, unit);
  return warnsOf(plan, unit)
    .filter(({ said }) => holdsFigure(said, figures, about))
    .slice(0, 1)
    .map(cautionWhy);
}

const percent = (share: string): string => String(Number(share) * 100);

/** Two marks on one line have the same reason; it is given once. */
function reasonsOf(found: readonly Why[], unit: DisplayUnit): string[] {
  const key = ({ formula, inputs, result }: Why): string => JSON.stringify([formula, inputs, result]);
  const once = found.filter((why, at) => found.findIndex((each) => key(each) === key(why)) === at);
  return once.slice(0, MOST_AT_ONCE).map((why) => whyText(why, unit));
}

/** More than this in one reply is a lecture. */
const MOST_AT_ONCE = 2;
const SAYS_NOTHING: ReadonlySet<string> = new Set(
  'this that these those what does have need with about warning caution wall hole into from they would'.split(
    ' ',
  ),
);

function isAbout(why: Why, about: string, unit: DisplayUnit): boolean {
  const figures = figuresIn(about);
  if (figures.length > 0)
    return [why.result, atTheTape(why, unit)].some((result) => holdsFigure(result, figures, about));
  const words = wordsIn(about);
  const name = wordsIn(why.of);
  return name.length > 0 && name.every((word) => words.includes(word)) ? true : sharesName(name, words);
}

const sharesName = (name: readonly string[], words: readonly string[]): boolean =>
  name.some((word) => word.length > 3 && words.includes(word));

const figuresIn = (text: string): string[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => String(Number(figure)));
const wordsIn = (text: string): string[] => text.toLowerCase().match(/[a-z][a-z0-9-]*/g) ?? [];

/** "67-3/16 in" is asked for whole; "67" finds what is 67 and what is 67 and a bit. */
function holdsFigure(result: string, figures: readonly string[], about: string): boolean {
  const [fraction] = /\d+[- ]\d+\/\d+/.exec(about) ?? [];
  if (fraction !== undefined) return result.includes(fraction.replace(' ', '-'));
  return figures.some((figure) => figuresIn(result.replace(/\d+\/\d+/, '')).includes(figure));
}

/** The numbers that can be asked about; those of the fixing first, since the marks are many. */
function namesIn(plan: Plan): string {
  const names = [...new Set(plan.why.map((why) => why.of))];
  const ofMarks = (name: string): boolean => /^(?:mark|frame)\b/i.test(name);
  const ordered = [...names.filter((name) => !ofMarks(name)), ...names.filter(ofMarks)];
  return ordered.slice(0, 8).join(', ') || 'the marks, the bit, the screw';
}
