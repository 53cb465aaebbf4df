import type { Plan } from '../../core/plan-shape.ts';
import { mm } from '../../core/quantity.ts';
import type { Basis } from '../../core/sources.ts';
import type { Why } from '../../core/why.ts';
import type { DisplayUnit } from '../reading.ts';
import { HOW_KNOWN } from './how-known.ts';
import { inUnit } from './in-unit.ts';
import { length, tidy } from './length.ts';
import { sentence } from './sentence.ts';

/** What is measured at the wall follows the person's tape; bits, plugs and screws are sold in millimetres. */
const isMeasured = ({ of }: Why): boolean => /^(?:mark|frame|cord rise|batten|tilt|lean)\b/i.test(of);
export const atTheTape = (why: Why, unit: DisplayUnit): string =>
  isMeasured(why) ? inUnit(why.result, unit) : why.result;

export function whyText(why: Why, unit: DisplayUnit): string {
  const inputs = Object.entries(why.inputs).map(([name, value]) =>
    inputText(name, value, isMeasured(why) ? unit : 'mm'),
  );
  const from = inputs.length === 0 ? '' : ` With ${inputs.join(', ')}.`;
  const basis = basisLines(why.basis);
  const by = basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`;
  return `${sentence(`${why.of}: ${atTheTape(why, unit)}`)} It is ${why.formula}.${from}${by}`;
}

/** Where it comes from; what is our own choice or common practice has no title worth reading, and is said once, last. */
function basisLines(basis: readonly Basis[]): string[] {
  const own = basis.filter(({ standing }) => OWN.has(standing)).map(({ standing }) => HOW_KNOWN[standing]);
  const read = basis.filter(({ standing }) => !OWN.has(standing));
  const titled = read.map((each) => `${each.title}, ${each.at} (${HOW_KNOWN[each.standing]})`);
  return [...new Set([...titled, ...own])];
}

const OWN: ReadonlySet<Basis['standing']> = new Set(['our-choice', 'common-practice']);

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm$/, ' mm'],
  [/Kg$/, ' kg'],
  [/Mpa$/, ' MPa'],
  [/Nmm$/, ' N mm'],
  [/N$/, ' N'],
];

/** "leverArmMm", 21.8 as "lever arm 21.8 mm". */
function inputText(name: string, value: number | string, tape: DisplayUnit): string {
  const [form, unit] = UNITS.find(([ends]) => ends.test(name)) ?? [/$/, ''];
  const words = name
    .replace(form, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
  if (typeof value !== 'number') return `${words} ${value}`;
  return unit === ' mm' || (form.source === '$' && tape !== 'mm')
    ? `${words} ${length(mm(value), tape)}`
    : `${words} ${tidy(value, 1)}${unit}`;
}

export function cautionWhy(caution: Plan['cautions'][number]): string {
  const basis = basisLines(caution.basis);
  return `${sentence(caution.text)}${basis.length === 0 ? '' : ` Basis: ${basis.join('; ')}.`}`;
}
