import type { Country } from '../../../../core/job.ts';
import type { Severity } from '../../../../core/plan-shape.ts';
import type { Wall } from '../../../../core/wall/wall.ts';
import type { Case } from './row.ts';

type Where = Country | 'unknown';

/** A wall of a year in a country. */
export const of = (
  words: string,
  country: Where,
  yearBuilt: number | 'unknown',
  severity: Severity | null,
  wall: Partial<Wall>,
): Case => [`${words} of ${yearBuilt} in ${country}`, severity, { building: { country, yearBuilt }, wall }];

/** Said in the last year of a line, and not in the year after it. */
export const until = (
  words: string,
  country: Where,
  last: number,
  severity: Severity,
  wall: Partial<Wall> = {},
): readonly Case[] => [of(words, country, last, severity, wall), of(words, country, last + 1, null, wall)];

/** Said from a year on, and not in the year before it. */
export const since = (
  words: string,
  country: Where,
  first: number,
  severity: Severity,
  wall: Partial<Wall> = {},
): readonly Case[] => [of(words, country, first - 1, null, wall), of(words, country, first, severity, wall)];

/** Said from a first year to a last, and not in the years beside them. */
export const between = (
  words: string,
  country: Where,
  first: number,
  last: number,
  severity: Severity,
  wall: Partial<Wall> = {},
) => [...since(words, country, first, severity, wall), ...until(words, country, last, severity, wall)];
