import { isShaken } from '../../fixing/acting/earthquake.ts';
import type { Fastener } from '../../fixing/fastener.ts';
import { type Kilograms, kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { glassOf } from './glass-kind.ts';

const HEAVY_OVERHEAD = sourced(kg(5), 'our-choice', 'safety 6.4: over people', 'our-choice');
const FEMA = sourced(
  { hookInches: [1, 2], hooksForLarge: 2, into: 'stud' },
  'FEMA:2008',
  'tips: not over beds, chairs or couches',
  'read',
);
/** Fasteners that bear on the sheet alone. */
const BOARD_ANCHORS: readonly Fastener[] = [
  'screw-in-anchor',
  'expanding-sleeve-anchor',
  'spring-toggle',
  'bar-toggle',
  'strap-toggle',
  'winged-plug',
  'pin-hook',
];
const COT = sourced(0, 'our-choice', 'safety 6.4: the rule for beds, taken to cots', 'our-choice');

/** The advice of the earthquake leaflet: hook length in inches, hooks for a large piece, what they go into. */
export const HOOK_ADVICE = FEMA.value;

/** Whether a piece over a bed or a seat is worth a warning: glass, or more than 5 kg (unknown mass counts). */
function warnsOverPeople(massKg: Kilograms | null, glass: boolean): boolean {
  return glass || massKg === null || massKg > HEAVY_OVERHEAD.value;
}

const overSeat = (facts: Facts): boolean => {
  const below = facts.job.place?.below;
  return (
    facts.whole &&
    (below === 'bed' || below === 'sofa') &&
    warnsOverPeople(facts.massKg, glassOf(facts) !== 'none')
  );
};

const shakes = ({ job }: Facts): boolean => isShaken(job);

/** What keeps a hanger of this kind on its screw. */
function keeper({ job }: Facts): string {
  const by = job.piece?.hanging?.by;
  if (by === 'batten') return 'a stop screw that keeps the two halves of the batten together';
  if (by === 'clips' || by === 'keyholes') return 'heads drawn up close, and a catch below';
  return 'closed or locking hooks';
}

/** Fastened to a sheet and nothing behind it. */
const inBoardOnly = ({ fixing }: Facts): boolean =>
  fixing?.ok === true && BOARD_ANCHORS.includes(fixing.fixing.fastener);

/** Who is under it, and what happens when the ground moves. */
export const peopleBelowRules: readonly Rule[] = [
  {
    id: 'C-FL-2',
    severity: 'stop',
    applies: ({ job }) => job.place?.below === 'cot',
    text: 'Nothing hard, heavy or corded goes over a cot or within reach of it: a child is under it every night. Move the cot or choose another wall; something soft without a frame is fine.',
    clears: 'The cot moved away, or another wall.',
    basis: from(COT, FEMA),
  },
  {
    id: 'C-FL-1',
    severity: 'warn',
    applies: overSeat,
    text: (facts) =>
      `If it ever falls, someone on the ${facts.job.place?.below} is under it. Move it, or see that it cannot jump off: ${keeper(facts)}. Lighter glazing helps.`,
    basis: from(FEMA, HEAVY_OVERHEAD),
  },
  {
    id: 'C-EQ-1',
    severity: 'warn',
    applies: (facts) => facts.whole && shakes(facts),
    text: (facts) =>
      `Earthquake country: it must not jump off. Use ${keeper(facts)}, and putty at the bottom corners.${inBoardOnly(facts) ? ' The advice is studs or solid wall, and this holds in the board alone: find the studs, or put a board across them.' : ''}`,
    basis: from(FEMA),
  },
];
