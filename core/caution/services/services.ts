import { least, type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { CABLE_SETBACK, reachBeforeCable } from '../../wall/stud-setback.ts';
import type { Facts } from '../facts.ts';
import { depthOf } from '../holes.ts';
import { from, type Rule } from '../rule.ts';
import { moveText } from './services-move.ts';
import { unseenRules } from './services-unseen.ts';
import {
  cableTight,
  heightless,
  inCable,
  inPlumbing,
  standingIn,
  standingNear,
  standingUnread,
} from './services-where.ts';

const SHALLOW = sourced(
  mm(50),
  'BS7671:2018',
  '522.6.202: cables deeper than this may be anywhere',
  'read-secondary',
);
const MARGIN = sourced(0, 'our-choice', 'safety 1.2: margins', 'our-choice');
const PLUMBING = sourced(0, 'our-choice', 'safety 1.2: plumbing points like accessories', 'our-choice');
const LICENCE = sourced(0, 'electrical-law', 'fixed wiring', 'from-memory');

const BOARD = sourced(mm(12.7), 'our-choice', 'half-inch board where none was given', 'our-choice');

/**
 * Depth past which a cable may lawfully be anywhere: 50, and in an American stud wall the board and the setback
 * where that is less. A bare stud wall of unknown board counts as the thinner board.
 */
export function deepFrom({ job }: Facts): Millimetres {
  const { country } = job.building ?? {};
  const { baseMaterial, boardMm, boardLayers = 1 } = job.wall ?? {};
  if ((country !== 'US' && country !== 'CA') || !baseMaterial?.endsWith('-studs')) return SHALLOW.value;
  return least(SHALLOW.value, reachBeforeCable(mm((boardMm ?? BOARD.value) * boardLayers)));
}

/** True when a hole of this depth reaches cables that need not keep to any zone. */
export function isDeep(depthMm: Millimetres, deepFromMm: Millimetres): boolean {
  return depthMm > deepFromMm;
}

const tooDeep = (facts: Facts): boolean => {
  const depth = depthOf(facts);
  return depth !== null && isDeep(depth, deepFrom(facts));
};

/** "50 mm", or in a stud wall of a country that sets cables back, what that setback makes of it. */
const depthText = (facts: Facts): string => {
  const from = deepFrom(facts);
  return from === SHALLOW.value
    ? `${SHALLOW.value} mm`
    : `${Math.round(from)} mm (the board and how far back in the stud a cable must lie)`;
};

/** "cable", "pipe" or both: what a tight mark is near. */
const runsThere = (facts: Facts): string =>
  [...new Set(cableTight(facts).map(({ zone }) => (zone.service === 'plumbing' ? 'pipe' : 'cable')))].join(
    ' and the ',
  );

/** Hidden services. */
export const servicesRules: readonly Rule[] = [
  {
    id: 'C-SV-1',
    severity: 'stop',
    applies: (facts) => inCable(facts).length > 0,
    text: (facts) => `${standingIn(inCable(facts))}, where a cable is allowed to run. ${moveText(facts)}`,
    clears: (facts) => `${moveText(facts)} Or a competent electrician who has traced the cables and says so.`,
    basis: from(SHALLOW, MARGIN),
  },
  ...unseenRules,
  {
    id: 'C-SV-6',
    severity: 'stop',
    applies: (facts) => inPlumbing(facts).length > 0,
    text: (facts) =>
      `${standingIn(inPlumbing(facts))}: there may be a pipe in line with this spot. ${moveText(facts)}`,
    clears: (facts) => `${moveText(facts)} Or the pipes traced by a licensed person.`,
    basis: from(PLUMBING),
  },
  {
    id: 'C-SV-8',
    severity: 'stop',
    applies: ({ job }) => job.piece?.lit === true,
    text: 'This piece needs mains. Wiring it in is the job of a licensed or registered electrician: I can place a mirror, not a supply. Hang one without mains, or let the electrician set the point first.',
    clears: 'The supply agreed with a licensed or registered electrician, or a piece that needs no mains.',
    basis: from(LICENCE),
  },
  {
    id: 'C-SV-2',
    severity: 'warn',
    whileDrilling: true,
    applies: (facts) => cableTight(facts).length > 0,
    text: (facts) =>
      `${standingNear(cableTight(facts))}. That is tight: scan again and mark the ${runsThere(facts)} before drilling.`,
    basis: from(MARGIN),
  },
  {
    id: 'C-SV-2',
    severity: 'warn',
    applies: (facts) => heightless(facts).length > 0,
    text: (facts) => standingUnread(heightless(facts)),
    basis: from(SHALLOW, MARGIN),
  },
  {
    id: 'C-SV-3',
    severity: 'warn',
    whileDrilling: true,
    applies: tooDeep,
    text: (facts) =>
      `The hole depth is over ${depthText(facts)}: deep enough to reach cables that can lawfully be anywhere. Scan, and switch off the circuits in this wall.`,
    basis: from(SHALLOW, CABLE_SETBACK),
  },
];
