import type { Fastener } from '../../fixing/fastener.ts';
import type { Severity } from '../../plan-shape.ts';
import type { Millimetres } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { depthOf } from '../holes.ts';
import { from, type Rule } from '../rule.ts';
import { baseKind } from '../wall/base-kinds.ts';

const PARTY = sourced(0, 'PartyWall:1996', 'plugs and screws for ordinary wall units', 'read-secondary');
const SEPARATING = sourced(0, 'separating-walls', 'general', 'from-memory');
const SHORT_OF = sourced(1 / 2, 'our-choice', 'safety 11: short of half a shared wall', 'our-choice');

/** Whether a way of fixing may be used in a fire or sound separating wall: never one that cuts out or goes through. */
export function inSeparatingWall(fixing: 'surface' | 'cut-out' | 'through-bolt'): Severity {
  return fixing === 'surface' ? 'warn' : 'stop';
}

/** What leaves the lining whole but for a screw or a pin; every other fastener on a sheet opens it. */
const LEAVES_WHOLE: readonly Fastener[] = [
  'stud-screw',
  'steel-stud-screw',
  'timber-screw',
  'lath-screw',
  'batten-screws',
  'board-across-studs',
  'pin-hook',
  'picture-rail-hook',
];

/** Whether a hole of this depth goes half through a wall of this thickness or further. */
function reachesHalf(depthMm: Millimetres, thicknessMm: Millimetres): boolean {
  return depthMm >= thicknessMm * SHORT_OF.value;
}

const separating = ({ whole, job }: Facts): boolean => whole && job.wall?.separating === true;
const masonry = (facts: Facts): boolean => baseKind(facts)?.masonry === true;

/** A wide hole through the sheet, which the fire and the sound come through afterwards. */
const opensSheet = (facts: Facts): boolean =>
  separating(facts) &&
  baseKind(facts)?.masonry === false &&
  facts.fixing?.ok === true &&
  !LEAVES_WHOLE.includes(facts.fixing.fixing.fastener);

function tooFarIn(facts: Facts): boolean {
  const depth = depthOf(facts);
  const thickness = facts.job.wall?.thicknessMm;
  return (
    separating(facts) &&
    masonry(facts) &&
    depth !== null &&
    thickness !== undefined &&
    reachesHalf(depth, thickness)
  );
}

const stops = (facts: Facts): boolean => opensSheet(facts) || tooFarIn(facts);

/** Walls that keep fire and sound from the next home, corridor or garage. */
export const separatingRules: readonly Rule[] = [
  {
    id: 'C-GT-5',
    severity: 'stop',
    applies: opensSheet,
    text: 'A fire or sound separating wall, and all that holds here opens its lining: fire and sound come through such a hole. Screws into the studs are the most it may have.',
    clears:
      "The studs found and measured, so that screws in them carry it, with the owner's or manager's yes; or another wall.",
    basis: from(SEPARATING),
  },
  {
    id: 'C-GT-5',
    severity: 'stop',
    applies: tooFarIn,
    text: 'A fire or sound separating wall, and what holds here goes half through it or further.',
    clears: 'Something lighter, with shallower fixings; or another wall.',
    basis: from(SEPARATING, SHORT_OF),
  },
  {
    id: 'C-GT-5',
    severity: inSeparatingWall('surface'),
    applies: (facts) => separating(facts) && !stops(facts),
    text: (facts) =>
      `A fire or sound separating wall: no cut-outs, no through-bolts${masonry(facts) ? '; plugs and screws stay well short of half the wall' : "; surface screws into studs only, with the owner's or manager's yes"}.`,
    basis: from(SEPARATING, SHORT_OF),
  },
  {
    id: 'C-GT-4',
    severity: 'note',
    applies: (facts) =>
      separating(facts) && !stops(facts) && facts.job.building?.country === 'UK' && masonry(facts),
    text: 'A UK party wall: ordinary plugs and screws are too minor to need a notice, as long as they stay well short of half the wall.',
    basis: from(PARTY, SHORT_OF),
  },
];
