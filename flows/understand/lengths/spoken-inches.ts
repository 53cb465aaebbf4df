import type { Fact, Listening } from '../../reading.ts';
import { countryIn, inCapitals } from '../building/country.ts';
import { isUnit, type Token } from '../words/token.ts';
import { isLengthUnit } from '../words/unit.ts';

const INCH_COUNTRIES: ReadonlySet<unknown> = new Set(['US', undefined, 'unknown', 'CA']);

const units = (all: readonly Token[]) => all.flatMap((each) => (isUnit(each) ? [each.unit] : []));

/**
 * How a message without a unit of length is to be read: pounds or an American place in it mean inches, though nobody
 * has spoken in inches yet. A country that measures in millimetres is not overruled by pounds.
 */
export function heardIn(all: readonly Token[], words: string, said: string, listening: Listening): Listening {
  if (listening.unit !== 'mm') return listening;
  const spoken = units(all);
  if (spoken.some((unit) => isLengthUnit(unit) || unit === 'kg' || unit === 'g')) return listening;
  const country = countryIn(words, false) ?? inCapitals(said) ?? listening.known.building?.country;
  const pounds = spoken.includes('lb') || spoken.includes('oz');
  const named = country === 'US' && listening.known.building?.country !== 'US';
  return (pounds && INCH_COUNTRIES.has(country)) || named ? { ...listening, unit: 'in' } : listening;
}

/** True when a bare figure's inches were judged and not said: told so by the message, or in a metric country. */
export function inchesAreJudged(all: readonly Token[], heard: Listening, listening: Listening): boolean {
  if (heard.unit !== 'in' || units(all).some(isLengthUnit)) return false;
  return heard !== listening || !INCH_COUNTRIES.has(listening.known.building?.country);
}

/** Lengths so judged are confirmed before the plan. */
export function confirmed(facts: readonly Fact[]): Fact[] {
  return facts.map((fact) =>
    /Mm"|"mm"/.test(JSON.stringify(fact.value)) ? { ...fact, inferred: true } : fact,
  );
}
