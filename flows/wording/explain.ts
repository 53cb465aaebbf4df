import type { Plan, Why } from '../../core/plan-shape.ts';
import { awaitingIn, type Open, situationIn, stateOf } from '../open.ts';
import { QUESTIONS } from '../questions/all.ts';
import { HOW_KNOWN } from './how-known.ts';
import { tidy } from './length.ts';
import { sentence } from './sentence.ts';

/** Why a number of the plan is what it is, or why the open question is asked. */
export function explain(open: Open, about: string | undefined): string[] {
  const plan = open.standing?.plan ?? situationIn(open).plan;
  const whys = about === undefined || plan === null ? [] : asked(plan, about);
  if (whys.length > 0) return whys;
  const question = awaitingIn(open);
  if (question !== null && stateOf(open) !== 'stopped') return [sentence(QUESTIONS[question].why)];
  if (plan !== null && plan.verdict === 'stop') return plan.cautions.filter(stops).map(cautionWhy);
  if (question !== null) return [sentence(QUESTIONS[question].why)];
  if (plan !== null) return [`Ask about any number in it: ${namesIn(plan)}.`];
  return ['Nothing is being asked just now.'];
}

const stops = (caution: Plan['cautions'][number]): boolean => caution.severity === 'stop';

function asked(plan: Plan, about: string): string[] {
  const found = plan.why.filter((why) => isAbout(why, about));
  if (found.length > 0) return found.slice(0, MOST_AT_ONCE).map(whyText);
  const words = wordsIn(about);
  return plan.cautions
    .filter((each) => words.includes(each.id.toLowerCase()) || sharesWords(each.text, words))
    .slice(0, MOST_AT_ONCE)
    .map(cautionWhy);
}

/** More than this in one reply is a lecture. */
const MOST_AT_ONCE = 2;
/** Two words in common say what is meant; one may be "the". */
const ENOUGH_WORDS = 2;

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

function sharesWords(text: string, words: readonly string[]): boolean {
  const there = new Set(wordsIn(text).filter((word) => word.length > 3));
  return words.filter((word) => there.has(word)).length >= ENOUGH_WORDS;
}

function whyText(why: Why): string {
  const inputs = Object.entries(why.inputs).map(
    ([name, value]) => `${name} ${typeof value === 'number' ? tidy(value, 1) : value}`,
  );
  const from = inputs.length === 0 ? '' : ` With ${inputs.join(', ')}.`;
  const basis = why.basis.map((each) => `${each.title}, ${each.at} (${HOW_KNOWN[each.standing]})`);
  const by = basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`;
  return `${sentence(`${why.of}: ${why.result}`)} It is ${why.formula}.${from}${by}`;
}

function cautionWhy(caution: Plan['cautions'][number]): string {
  const basis = caution.basis.map((each) => `${each.title}, ${each.at} (${HOW_KNOWN[each.standing]})`);
  return `${sentence(caution.text)}${basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`}`;
}

const namesIn = (plan: Plan): string =>
  plan.why
    .map((why) => why.of)
    .slice(0, 6)
    .join(', ') || 'the marks, the bit, the screw';
