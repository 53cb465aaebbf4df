import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

/** The first edition with a rule of where cables run; older wiring need not keep to it. */
const ZONES_SINCE = sourced(1981, 'BS7671:2018', '15th edition, 1981', 'read-secondary', 'year');
const FISHED = sourced(0, 'NEC:300.4', '300.4(D) exception 2: cables may be fished', 'read-secondary');
const OURS = sourced(0, 'our-choice', 'safety 1.2: zones unreliable', 'our-choice');

type Why = 'no-rule' | 'no-country' | 'old' | 'unknown' | null;

/** Why cables may run any way here: no rule in the country, wiring older than the rule, or nobody knows. */
function wiringDoubt({ job }: Facts): Why {
  const { country, yearBuilt, rewiredYear } = job.building ?? {};
  if (country === 'US' || country === 'CA') return 'no-rule';
  const year = typeof rewiredYear === 'number' ? rewiredYear : yearBuilt;
  if (typeof year !== 'number') return 'unknown';
  if (year < ZONES_SINCE.value) return 'old';
  return country === undefined || country === 'unknown' ? 'no-country' : null;
}

const TEXT = {
  'no-rule':
    'Old wiring or new, no rule here says that cables run straight up or across: they may be fished through a finished wall. Treat every spot as unproved.',
  'no-country':
    'No country was given, and not every country has a rule of where cables run; old wiring has none at all. Treat every spot as unproved.',
  old: 'Old wiring may run any way it likes. Treat every spot as unproved: scan across and up, and switch off the circuits in this wall.',
  unknown:
    'The age of the wiring is not known, and old wiring may run any way it likes. Treat every spot as unproved: scan across and up, and switch off the circuits in this wall.',
} as const;

/** How far where-cables-run can be relied on. */
export const wiringRules: readonly Rule[] = [
  {
    id: 'C-SV-7',
    severity: 'warn',
    applies: (facts) => facts.whole && wiringDoubt(facts) !== null,
    text: (facts) => TEXT[wiringDoubt(facts) ?? 'unknown'],
    basis: from(ZONES_SINCE, FISHED, OURS),
  },
];
