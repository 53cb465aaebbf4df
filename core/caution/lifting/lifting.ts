import { type Kilograms, kg, type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { holesOf } from '../holes.ts';
import { glassOf } from '../place/glass-kind.ts';
import { from, type Rule } from '../rule.ts';
import { HSE_FILTER, singleFigure, TEAM_SHARE, teamFigure, zoneAt } from './hse-filter.ts';
import { liftingIndex, multipliers, NIOSH, recommendedWeight } from './niosh.ts';

const TEN_MM = 10;
const REACH = sourced(40, 'our-choice', 'hands out while offering up a frame', 'our-choice', 'cm');
const START = sourced(75, 'our-choice', 'hands when it is picked up from trestles', 'our-choice', 'cm');
const LADDER_MASS = sourced(kg(10), 'HSE-INDG402', 'more than 10 kg carried', 'from-memory');
const STANDING_REACH = sourced(mm(2000), 'our-choice', 'hanger above this needs a ladder', 'our-choice');
const HOLD = sourced(1 / 3, 'our-choice', 'hands on the sides, share of the height', 'our-choice');
const INDEX = sourced({ help: 1, lifter: 3 }, 'NIOSH:94-110', 'lifting index', 'read-secondary');
const LEAST_TEAM = sourced(3, 'our-choice', 'trade 6.3: three from about 27 kg', 'our-choice');
const TRADE = sourced(
  0,
  'our-choice',
  'safety 5: stop only with no ledger, lifter or third person',
  'our-choice',
);

/** Where the hands are when it goes on: low on the sides, a third of the way up. Above the floor, millimetres. */
function handsAt({ onWall: { bottomMm, topMm }, job }: Facts): Millimetres | null {
  if (bottomMm === null) return null;
  const height = topMm !== null ? topMm - bottomMm : (job.piece?.heightMm ?? 0);
  return mm(bottomMm + height * HOLD.value);
}

const onePerson = (facts: Facts): Kilograms => singleFigure('m', [zoneAt(handsAt(facts))], 'close');

/** The two-person figure with hands between shoulder and elbow, below which two people are never stopped: 26.7 kg. */
export function twoPersonFigure(each: Kilograms = singleFigure('m', ['shoulder-elbow'], 'close')): number {
  const figure = teamFigure([each, each]);
  return figure === 'notCovered' ? 0 : figure;
}

/**
 * Lifting index of one person alone. Hands above the equation's height, or at none that is known, count as at its
 * end: higher is never easier.
 */
function indexOf(facts: Facts, mass: Kilograms): number | null {
  const hands = handsAt(facts);
  const { heightMost } = NIOSH.value;
  const V = hands === null ? heightMost : Math.min(hands / TEN_MM, heightMost);
  const lift = { H: REACH.value, V, D: Math.abs(V - START.value) };
  return liftingIndex(mass, recommendedWeight(multipliers(lift)));
}

const over = (facts: Facts, limit: (mass: Kilograms) => boolean): boolean =>
  facts.massKg !== null && limit(facts.massKg);

const beyondOne = (facts: Facts): boolean =>
  over(facts, (mass) => mass > onePerson(facts) || (indexOf(facts, mass) ?? 0) > INDEX.value.help);

const beyondTwo = (facts: Facts): boolean =>
  over(
    facts,
    (mass) => mass > twoPersonFigure(onePerson(facts)) || (indexOf(facts, mass) ?? 0) > INDEX.value.lifter,
  );

/** Nobody and nothing else is there to take it. What was not said is unknown, and unknown does not stop. */
function noHelp({ job }: Facts): boolean {
  const { people, lifter } = job.crew ?? {};
  return typeof people === 'number' && people < LEAST_TEAM.value && lifter === false;
}

const tooHeavyForTwo = (facts: Facts): boolean =>
  over(facts, (mass) => mass > twoPersonFigure()) && noHelp(facts);

/** Above this the screw and the hook can't be reached from the floor. */
export function needsLadder(hangerAboveFloorMm: Millimetres): boolean {
  return hangerAboveFloorMm > STANDING_REACH.value;
}

/** One person, more than 10 kg, on any ladder: no hand is left for the ladder. */
export function ladderStops(massKg: Kilograms, people: number, onLadder: boolean): boolean {
  return onLadder && people === 1 && massKg > LADDER_MASS.value;
}

function aloneOnLadder(facts: Facts): boolean {
  const { people } = facts.job.crew ?? {};
  const highest = Math.max(...holesOf(facts).map((hole) => hole.upMm ?? 0));
  return over(
    facts,
    (mass) => typeof people === 'number' && ladderStops(mass, people, needsLadder(mm(highest))),
  );
}

const kilos = (value: number): string => String(Math.round(value * 10) / 10);
const massText = ({ massKg }: Facts): string => (massKg === null ? 'this' : `${kilos(massKg)} kg`);
const hse = from(HSE_FILTER.m.close, TEAM_SHARE[2], NIOSH);

/** Lifting and ladders. The figures are guides and not limits, so they stop only where nothing else can help. */
export const liftingRules: readonly Rule[] = [
  {
    id: 'C-MH-2',
    severity: 'stop',
    applies: tooHeavyForTwo,
    text: (facts) =>
      `${massText(facts)} is too heavy for ${facts.job.crew?.people === 1 ? 'one person' : 'two people'} to offer up by hand: the guide for two is ${kilos(twoPersonFigure())} kg. It needs a third person, a lifter, or a temporary ledger that takes the weight; or let it stand on the floor.`,
    clears: 'A third person, a lifter, or a temporary ledger under the bottom edge.',
    basis: [...hse, ...from(TRADE)],
  },
  {
    id: 'C-MH-2',
    severity: 'warn',
    applies: (facts) => facts.whole && beyondTwo(facts) && !tooHeavyForTwo(facts),
    text: (facts) =>
      `${massText(facts)} at that height is beyond the guide for two people (${kilos(twoPersonFigure(onePerson(facts)))} kg). A team lift: three people, or a lifter or a temporary ledger that takes the weight while two people steer and hook on.`,
    basis: hse,
  },
  {
    id: 'C-MH-1',
    severity: 'warn',
    applies: (facts) => facts.whole && beyondOne(facts) && !beyondTwo(facts) && !tooHeavyForTwo(facts),
    text: (facts) =>
      `Lifting ${massText(facts)} to that height is beyond the guide for one person. Two people, load close, and rest it on a ledge or packed stool while you hook on.`,
    basis: hse,
  },
  {
    id: 'C-MH-3',
    severity: 'stop',
    applies: aloneOnLadder,
    text: (facts) =>
      `Not ${massText(facts)} from a ladder on your own: you have no hand left for the ladder. Get a second person, or hang it where you can reach from the floor.`,
    clears: 'A second person, or a height that is reached from the floor.',
    basis: from(LADDER_MASS, STANDING_REACH),
  },
  {
    id: 'C-MH-4',
    severity: 'note',
    applies: (facts) => facts.whole && glassOf(facts) !== 'none',
    text: (facts) =>
      `${glassOf(facts) === 'maybe' ? 'If it is glazed' : 'Glass'}: cut-resistant gloves, closed shoes, tape across the face, carry it on edge.`,
    basis: from(sourced(0, 'common-practice', 'carrying glass', 'common-practice')),
  },
];
