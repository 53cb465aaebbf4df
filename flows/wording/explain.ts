import type { Plan, Why } from '../../core/plan-shape.ts';
import { awaitingIn, type Open, situationIn, stateOf } from '../open.ts';
import type { QuestionName } from '../question.ts';
import { QUESTIONS } from '../questions/all.ts';
import { HOW_KNOWN } from './how-known.ts';
import { tidy } from './length.ts';
import { sentence } from './sentence.ts';

/** Why a number of the plan is what it is, or why the open question is asked. */
export function explain(open: Open, about: string | undefined): string[] {
  const plan = open.standing?.plan ?? situationIn(open).plan;
  const whys = about === undefined || plan === null ? [] : asked(plan, about);
  if (whys.length > 0) return whys;
  if (plan !== null && plan.verdict !== 'stop' && about !== undefined && figuresIn(about).length > 0) {
    return [`I find no ${about} in this plan. Ask about ${namesIn(plan)}.`];
  }
  const question = questionMeant(about) ?? awaitingIn(open);
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

function asked(plan: Plan, about: string): string[] {
  const found = plan.why.filter((why) => isAbout(why, about));
  if (found.length > 0) return found.slice(0, MOST_AT_ONCE).map(whyText);
  const words = wordsIn(about).filter((word) => word.length > 3 && !SAYS_NOTHING.has(word));
  const shared = (text: string): number => wordsIn(text).filter((word) => words.includes(word)).length;
  const meant = plan.cautions.filter((each) => each.severity !== 'note' && shared(each.text) > 0);
  return meant
    .sort((one, other) => shared(other.text) - shared(one.text))
    .slice(0, 1)
    .map(cautionWhy);
}

/** More than this in one reply is a lecture. */
const MOST_AT_ONCE = 2;
const SAYS_NOTHING: ReadonlySet<string> = new Set(
  'this that these those what does have need with about warning caution wall hole into from they would'.split(
    ' ',
  ),
);

function isAbout(why: Why, about: string): boolean {
  const figures = figuresIn(about);
  if (figures.length > 0) return figures.some((figure) => figuresIn(why.result).includes(figure));
  const words = wordsIn(about);
  const name = wordsIn(why.of);
  return name.length > 0 && name.every((word) => words.includes(word)) ? true : sharesName(name, words);
}

const sharesName = (name: readonly string[], words: readonly string[]): boolean =>
  name.some((word) => word.length > 3 && words.includes(word));

const figuresIn = (text: string): string[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => String(Number(figure)));
const wordsIn = (text: string): string[] => text.toLowerCase().match(/[a-z][a-z0-9-]*/g) ?? [];

function whyText(why: Why): string {
  const inputs = Object.entries(why.inputs).map(([name, value]) => inputText(name, value));
  const from = inputs.length === 0 ? '' : ` With ${inputs.join(', ')}.`;
  const basis = why.basis.map((each) => `${each.title}, ${each.at} (${HOW_KNOWN[each.standing]})`);
  const by = basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`;
  return `${sentence(`${why.of}: ${why.result}`)} It is ${why.formula}.${from}${by}`;
}

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm$/, ' mm'],
  [/Kg$/, ' kg'],
  [/Mpa$/, ' MPa'],
  [/Nmm$/, ' N mm'],
  [/N$/, ' N'],
];

/** "leverArmMm", 21.8 as "lever arm 21.8 mm". */
function inputText(name: string, value: number | string): string {
  const [form, unit] = UNITS.find(([ends]) => ends.test(name)) ?? [/$/, ''];
  const words = name
    .replace(form, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
  return `${words} ${typeof value === 'number' ? tidy(value, 1) : value}${typeof value === 'number' ? unit : ''}`;
}

function cautionWhy(caution: Plan['cautions'][number]): string {
  const basis = caution.basis.map((each) => `${each.title}, ${each.at} (${HOW_KNOWN[each.standing]})`);
  return `${sentence(caution.text)}${basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`}`;
}

/** The numbers that can be asked about; those of the fixing first, since the marks are many. */
function namesIn(plan: Plan): string {
  const names = [...new Set(plan.why.map((why) => why.of))];
  const ofMarks = (name: string): boolean => /^(?:mark|frame)\b/i.test(name);
  const ordered = [...names.filter((name) => !ofMarks(name)), ...names.filter(ofMarks)];
  return ordered.slice(0, 8).join(', ') || 'the marks, the bit, the screw';
}
