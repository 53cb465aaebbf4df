import type { Country } from '../../job.ts';
import type { Severity } from '../../plan-shape.ts';
import { type Sourced, sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { disturbedByHoles, MINOR_REPAIR, withinMinorRepair } from './lead-area.ts';

/** Last year in which paint likely held lead, and last in which some did. Years of building. */
type LeadLines = { readonly likely: number; readonly some: number };

const LEAD_LINES: Record<Country, Sourced<LeadLines>> = {
  US: sourced({ likely: 1977, some: 1977 }, '40CFR745.83', 'target housing: built before 1978', 'read'),
  AU: sourced({ likely: 1979, some: 1997 }, 'SA-Health-lead', 'before 1980 likely; 0.1 % from 1997', 'read'),
  UK: sourced({ likely: 1965, some: 1992 }, 'Defra-lead', 'to the mid-1960s; 1992 from memory', 'read'),
  NZ: sourced({ likely: 1979, some: 1979 }, 'lead-elsewhere', 'New Zealand, about 1980', 'from-memory'),
  IE: sourced({ likely: 1965, some: 1992 }, 'lead-elsewhere', 'Ireland, as the UK', 'from-memory'),
  CA: sourced({ likely: 1977, some: 1990 }, 'lead-elsewhere', 'Canada, about 1976 and 1990', 'from-memory'),
  EU: sourced({ likely: 1979, some: 1992 }, 'lead-elsewhere', 'Europe, no one line', 'from-memory'),
  other: sourced({ likely: 1979, some: 1997 }, 'our-choice', 'latest of the lines known here', 'our-choice'),
};

/** What a year says of the paint: `warn` likely lead, `note` some, null none expected. An unknown year is a warn. */
export function leadFinding(country: Country | 'unknown', year: number | null): Severity | null {
  if (year === null) return 'warn';
  const { likely, some } = (LEAD_LINES[country === 'unknown' ? 'other' : country] ?? LEAD_LINES.other).value;
  if (year <= likely) return 'warn';
  return year <= some ? 'note' : null;
}

function found({ whole, job }: Facts): Severity | null {
  const { country = 'unknown', yearBuilt } = job.building ?? {};
  return whole ? leadFinding(country, typeof yearBuilt === 'number' ? yearBuilt : null) : null;
}

/** Area of all holes of the plan in square millimetres; nothing while no fastener is chosen. */
function holesOf({ fixing }: Facts): number {
  return fixing?.ok ? disturbedByHoles(fixing.fixing.count, fixing.fixing.bit.diameterMm) : 0;
}

const minor = ({ job }: Facts): string =>
  job.building?.country === 'US'
    ? ` Holes like these are far inside the ${MINOR_REPAIR.value} square feet of minor repair; cutting out a panel is not.`
    : '';

const { US, AU, UK } = LEAD_LINES;

/** Lead in old paint. */
export const leadRules: readonly Rule[] = [
  {
    id: 'C-PB-1',
    severity: 'warn',
    whileDrilling: true,
    applies: (facts) => found(facts) === 'warn',
    text: (facts) => {
      const known = typeof facts.job.building?.yearBuilt === 'number';
      const why = known
        ? 'Lead paint is likely at this age.'
        : 'The age of the paint is not known, so treat it as lead paint.';
      return `${why} Mist the spot, drill slowly with a vacuum at the hole, wipe up wet, and keep children and pregnant people away. No dry sanding.${minor(facts)}`;
    },
    basis: from(US, AU, UK),
  },
  {
    id: 'C-PB-2',
    severity: 'note',
    whileDrilling: true,
    applies: (facts) => found(facts) === 'note',
    text: 'Some paint of this age had lead in it: mist the spot, vacuum at the hole, wipe up wet.',
    basis: from(AU, UK),
  },
  {
    id: 'C-PB-3',
    severity: 'stop',
    applies: (facts) =>
      facts.job.building?.country === 'US' &&
      facts.job.building.tenure === 'client' &&
      found(facts) === 'warn' &&
      !withinMinorRepair(holesOf(facts)),
    text: `That disturbs more than ${MINOR_REPAIR.value} square feet of old paint, so it is no longer minor work under the US lead rule: a certified firm has to do it.`,
    clears: 'A firm certified under the US lead rule, or a way that leaves the paint alone.',
    basis: from(MINOR_REPAIR),
  },
];
