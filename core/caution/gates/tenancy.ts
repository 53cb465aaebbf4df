import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const REPLY_DAYS = sourced(21, 'RTA-NZ:42', 's.42A(3), minor change s.42B', 'read');
const NSW = sourced(0, 'NSW-RTR', 'minor changes: picture hooks, nails, screws', 'read-secondary');

/** The day by which a New Zealand landlord has to answer, counting the request's day. */
export function replyDue(requestDay: number): { dueDay: number; days: number } {
  return { dueDay: requestDay + REPLY_DAYS.value, days: REPLY_DAYS.value };
}

const isRented = ({ job }: Facts): boolean => job.building?.tenure === 'tenant';

/** A no stops anyone who does not own the wall; not known stops a tenant only (contract 4). */
function consentMissing(facts: Facts): boolean {
  const { tenure, consent } = facts.job.building ?? {};
  if (tenure === 'owner') return false;
  const heard = facts.heard(consent);
  return heard === false || (isRented(facts) && heard === 'unknown');
}

function law({ job }: Facts): string {
  if (job.building?.country === 'NZ') {
    return ` The landlord has ${REPLY_DAYS.value} days to answer, and can't refuse a minor change.`;
  }
  return job.building?.country === 'AU'
    ? ' In New South Wales a landlord may not unreasonably refuse hooks, nails and screws for pictures; other states have their own lists.'
    : '';
}

/** Whose wall it is. */
export const tenancyRules: readonly Rule[] = [
  {
    id: 'C-GT-2',
    severity: 'stop',
    applies: consentMissing,
    text: (facts) =>
      `${isRented(facts) ? `It's a rented place: ask in writing before anyone makes a hole.${law(facts)}` : 'Whoever the wall belongs to has not said yes to a hole: ask in writing first.'} Till then use a picture rail or holes that are there already, or stand it on the floor.`,
    clears: (facts) => `${isRented(facts) ? 'The landlord' : 'The owner'}'s yes in writing.`,
    basis: from(NSW, REPLY_DAYS),
  },
];
