import type { Fastener } from '../../fixing/fastener.ts';
import { kg, type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { plugInBase } from '../../wall/plug-depth.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const FIND_OUT = sourced(0, 'our-choice', 'safety 9: wall unknown', 'our-choice');
const HEAVY = sourced(kg(5), 'our-choice', 'heavy for lath, or for board that touches nothing', 'our-choice');
const SPEC = sourced(
  0,
  'NBS-M20',
  'clause 210: two-coat plaster 13 mm overall; plaster carries nothing',
  'read-secondary',
);
const PRACTICE = sourced(0, 'common-practice', 'safety 9: lath, dabs, sound plaster', 'common-practice');

const isHeavy = ({ massKg }: Facts): boolean => massKg === null || massKg > HEAVY.value;
const base = ({ job }: Facts): string | undefined => job.wall?.baseMaterial;

/** A plug made to span board and gap is meant to lie in them, under a batten too. */
const spans = ({ job }: Facts, fastener: Fastener): boolean =>
  fastener === 'frame-plug' ||
  job.wall?.baseMaterial === 'plasterboard-on-dabs' ||
  job.wall?.finish?.kind === 'board';

/**
 * Millimetres of the plug that stay in the finish at best, its far end at the bottom of the hole; only where
 * the finish was measured and touches the base.
 */
function plugInFinish(facts: Facts): Millimetres {
  const { fixing, job } = facts;
  const plug = fixing?.ok ? fixing.fixing.plug : undefined;
  const finish = job.wall?.finish?.thicknessMm;
  if (!fixing?.ok || !plug || finish === undefined || spans(facts, fixing.fixing.fastener)) return mm(0);
  const rim = mm(fixing.fixing.bit.depthMm - plug.lengthMm);
  return mm(plug.lengthMm - plugInBase(plug.lengthMm, finish, rim));
}

const GAP = 'Board on dabs: there is a gap behind the board, which does not touch the wall here.';

/** What the wall is, and whether it can be trusted. Nothing here ever says that a wall is safe. */
export const wallKindRules: readonly Rule[] = [
  {
    id: 'C-WL-1',
    severity: 'stop',
    applies: (facts) => facts.heard(facts.job.wall?.baseMaterial) === 'unknown',
    text: "Let's find out what the wall is made of first: the wrong fixing holds for a week. Knock along it and tell me how it sounds, where the house is and how old it is. A picture rail or the floor needs no answer.",
    clears: 'What the wall is made of: seen at an opening, or told by knock, magnet, age and drawings.',
    basis: from(FIND_OUT),
  },
  {
    id: 'C-WL-5',
    severity: 'stop',
    applies: ({ job }) => job.wall?.condition === 'poor',
    text: "That wall can't be trusted: crumbling, damp, bulging or cracked plaster lets go of anything. Repair it first, or choose another wall.",
    clears: 'The wall repaired and sound, or another wall.',
    basis: from(PRACTICE),
  },
  {
    id: 'C-WL-2',
    severity: 'warn',
    applies: (facts) => plugInFinish(facts) > 0,
    text: (facts) =>
      `Part of that plug (${Math.ceil(plugInFinish(facts))} mm) sits in the finish, which holds nothing. Go deeper or use a longer plug.`,
    basis: from(SPEC),
  },
  {
    id: 'C-WL-3',
    severity: 'warn',
    applies: (facts) => facts.whole && base(facts) === 'lath-and-plaster',
    text: (facts) =>
      `Lath and plaster: no hammer, it shakes the plaster off its keys.${isHeavy(facts) ? ' At this weight only the timber counts: find studs or put up a board across them.' : ''}`,
    basis: from(PRACTICE, HEAVY),
  },
  {
    id: 'C-WL-4',
    severity: 'warn',
    applies: (facts) => facts.whole && base(facts) === 'plasterboard-on-dabs' && isHeavy(facts),
    text: `${GAP} At this weight fix through into the block, spanning the gap.`,
    basis: from(PRACTICE, HEAVY),
  },
  {
    id: 'C-WL-4',
    severity: 'note',
    applies: (facts) => facts.whole && base(facts) === 'plasterboard-on-dabs' && !isHeavy(facts),
    text: `${GAP} Toggles that need room behind do not open in it.`,
    basis: from(PRACTICE),
  },
];
