import type { Severity } from '../../plan-shape.ts';
import { kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { asbestosStops } from '../health/asbestos.ts';
import { from, type Rule } from '../rule.ts';

const TENSIONED = sourced(
  0,
  'PT-scanning',
  'no hole before a scan; a tendon holds 26 to 33 kip',
  'read-secondary',
);
const LISTED = sourced(0, 'PLBCA:1990', 's.7', 'from-memory');
const OLD_HOUSE = sourced(1919, 'our-choice', 'a house this old may be protected', 'our-choice', 'year');
const DESIGNED = sourced(kg(50), 'our-choice', 'safety 11: someone who can design and sign', 'our-choice');

/** Known to be possible stops anywhere; not known stops in a flat only, and warns elsewhere. */
function tensioned(facts: Facts): Severity | null {
  if (facts.job.wall?.baseMaterial !== 'concrete') return null;
  const heard = facts.heard(facts.job.wall.tensioned);
  if (heard === 'possible') return 'stop';
  if (heard !== 'unknown') return null;
  return facts.job.building?.kind === 'flat' ? 'stop' : 'warn';
}

const mayBeProtected = (facts: Facts): boolean => {
  const { heritage, yearBuilt } = facts.job.building ?? {};
  return (
    facts.whole &&
    facts.heard(heritage) === 'unknown' &&
    typeof yearBuilt === 'number' &&
    yearBuilt < OLD_HOUSE.value
  );
};

const tooHeavy = ({ massKg }: Facts): boolean => massKg !== null && massKg > DESIGNED.value;
/** Said only where a fastener is the question: no rating clears a suspect sheet or a wall nobody can name. */
const nothingHolds = (facts: Facts): boolean =>
  facts.fixing?.ok === false &&
  !tooHeavy(facts) &&
  !asbestosStops(facts) &&
  facts.heard(facts.job.wall?.baseMaterial) !== 'unknown';

const isPublic = ({ job }: Facts): boolean => job.building?.kind === 'public';

/** What has to be right before anyone drills: tensioned steel, old fabric, and what nobody may decide from a table. */
export const gatesRules: readonly Rule[] = [
  {
    id: 'C-GT-1',
    severity: 'stop',
    applies: (facts) => tensioned(facts) === 'stop',
    text: "Tensioned concrete: there may be tensioned steel in this wall, and a cut tendon lets go with the force of a truck. Nobody drills it until it has been scanned and the building's engineer or manager agrees. A picture rail or another wall needs neither.",
    clears: "A scan, and a yes in writing from the building's engineer or manager; or another wall.",
    basis: from(TENSIONED),
  },
  {
    id: 'C-GT-1',
    severity: 'warn',
    applies: (facts) => facts.whole && tensioned(facts) === 'warn',
    text: 'Tensioned concrete is rare in a house, and nobody has ruled it out here: tilt-up panels, car parks and slabs above garages can have it. Ask before drilling.',
    basis: from(TENSIONED),
  },
  {
    id: 'C-GT-3',
    severity: 'stop',
    applies: ({ job }) => job.building?.heritage === true,
    text: 'A listed or heritage building: fixing into old fabric may need consent. Use the picture rail or existing holes, or stand it on the floor.',
    clears:
      'Consent from the heritage or conservation officer, or a fixing into holes that are there already.',
    basis: from(LISTED),
  },
  {
    id: 'C-GT-3',
    severity: 'warn',
    applies: mayBeProtected,
    text: 'A building this old may be listed or heritage protected: ask before making a hole. A picture rail needs none.',
    basis: from(LISTED, OLD_HOUSE),
  },
  {
    id: 'C-GT-9',
    severity: 'stop',
    applies: tooHeavy,
    text: `Over ${DESIGNED.value} kg: this needs someone who can design and sign for it. Or stand it on the floor, so that two fixings at the top only keep it from tipping.`,
    clears:
      'Someone who can design and sign for it; or the piece stands on the floor and wall fixings only tie the top.',
    basis: from(DESIGNED),
  },
  {
    id: 'C-GT-9',
    severity: 'stop',
    applies: (facts) => isPublic(facts) && !tooHeavy(facts),
    text: 'A public place: strangers lean, pull and stand under it, so this needs someone who can design and sign for it. Standing it on the floor with ties at the top is the other way.',
    clears: 'Someone who can design and sign for it.',
    basis: from(DESIGNED),
  },
  {
    id: 'C-GT-9',
    severity: 'stop',
    applies: nothingHolds,
    text: ({ fixing }) => (fixing?.ok === false ? fixing.because : ''),
    clears: ({ fixing }) => (fixing?.ok === false ? fixing.clears : ''),
    basis: from(DESIGNED),
  },
];
