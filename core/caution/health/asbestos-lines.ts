import type { Country } from '../../job.ts';
import type { Severity } from '../../plan-shape.ts';
import { type Sourced, sourced } from '../../sources.ts';

/** What may hold asbestos in or on a wall. */
export type Suspect =
  | 'fibre-cement'
  | 'unknown-sheet'
  | 'insulating-board'
  | 'textured-coating'
  | 'joint-compound-plasterboard'
  | 'tile-backing'
  | 'not-suspect';

/** Built in `likely` or before: presumed. After that and up to `doubt`: in doubt. Later: unlikely. Years. */
export type Lines = { readonly likely: number; readonly doubt: number };

export const ASBESTOS_LINES: Record<Country, Sourced<Lines>> = {
  AU: sourced({ likely: 1990, doubt: 2003 }, 'NT-asbestos', 'homeowners; total ban 31 December 2003', 'read'),
  UK: sourced({ likely: 1999, doubt: 1999 }, 'HSE-A0', 'before 2000', 'read'),
  NZ: sourced(
    { likely: 1999, doubt: 1999 },
    'NZ-asbestos:2016',
    'presumed before 1 January 2000',
    'read-secondary',
  ),
  US: sourced(
    { likely: 1980, doubt: 1990 },
    'CPSC:1977',
    'old stock after 1977; presumed to 1980',
    'read-secondary',
  ),
  IE: sourced({ likely: 1999, doubt: 2000 }, 'asbestos-bans', 'Ireland, about 2000', 'from-memory'),
  EU: sourced(
    { likely: 2004, doubt: 2004 },
    'asbestos-bans',
    'Directive 1999/77/EC, by 1 January 2005',
    'from-memory',
  ),
  CA: sourced({ likely: 1990, doubt: 2018 }, 'asbestos-bans', 'Canada, 2018', 'from-memory'),
  other: sourced({ likely: 2003, doubt: 2018 }, 'our-choice', 'latest of the lines known here', 'our-choice'),
};

export type AsbestosCase = {
  country: Country | 'unknown';
  year: number | null;
  material: Suspect;
  testedClear: boolean;
};

export type AsbestosFinding = { id: 'C-AB-1' | 'C-AB-2' | 'C-AB-3' | 'C-AB-4'; severity: Severity };

const PRESUMED: AsbestosFinding = { id: 'C-AB-1', severity: 'stop' };
const IN_DOUBT: AsbestosFinding = { id: 'C-AB-3', severity: 'warn' };
const UNLIKELY: AsbestosFinding = { id: 'C-AB-4', severity: 'note' };

/** The line for a country; a country not in the table, or not known, has the latest line there is. */
export function lineFor(country: Country | 'unknown'): Sourced<Lines> {
  return country === 'unknown' ? ASBESTOS_LINES.other : (ASBESTOS_LINES[country] ?? ASBESTOS_LINES.other);
}

/** Countries whose own lines take in filled board joints; where none is known the job may be in one of them. */
const JOINTS_STOP: readonly (Country | 'unknown')[] = ['AU', 'US', 'CA', 'other', 'unknown'];

/**
 * Where nobody knows the country old joints stop up to the latest line of a country that has one for them; the
 * ban of imports elsewhere says nothing of filler.
 */
const jointLines = (country: Country | 'unknown'): Lines =>
  country === 'other' || country === 'unknown'
    ? { likely: ASBESTOS_LINES.AU.value.likely, doubt: lineFor(country).value.doubt }
    : lineFor(country).value;

/**
 * Whether a material of a year stops the job. A suspect sheet or coating of unknown year counts as old.
 * Filled joints of plasterboard stop where a country's line takes them in; elsewhere they are in doubt when
 * old, and of unknown year they are no stop, since plain board by itself is not suspect. Nor is the sheet
 * behind tiles when its year is unknown: it is in doubt.
 */
export function asbestosFinding({
  country,
  year,
  material,
  testedClear,
}: AsbestosCase): AsbestosFinding | null {
  if (testedClear) return null;
  if (material === 'not-suspect') return UNLIKELY;
  const joints = material === 'joint-compound-plasterboard';
  const { likely, doubt } = joints ? jointLines(country) : lineFor(country).value;
  if (year === null) return ofUnknownYear(material);
  if (year <= likely) return joints && !JOINTS_STOP.includes(country) ? IN_DOUBT : PRESUMED;
  if (year > doubt) return UNLIKELY;
  return joints || material === 'textured-coating' || material === 'tile-backing'
    ? IN_DOUBT
    : sheetInDoubt(country);
}

function ofUnknownYear(material: Suspect): AsbestosFinding {
  if (material === 'joint-compound-plasterboard') return UNLIKELY;
  return material === 'tile-backing' ? IN_DOUBT : PRESUMED;
}

/** Between the line and the ban a sheet is tested first where a document says so, else it is in doubt. */
function sheetInDoubt(country: Country | 'unknown'): AsbestosFinding {
  if (country === 'AU') return { id: 'C-AB-2', severity: 'stop' };
  return country === 'US' ? PRESUMED : IN_DOUBT;
}
