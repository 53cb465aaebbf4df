import type { Severity } from '../../plan-shape.ts';
import { kg } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { asbestosStops } from '../health/asbestos.ts';
import { from, type Rule } from '../rule.ts';
import { baseKind } from '../wall/base-kinds.ts';

const TENSIONED = sourced(
  0,
  'PT-scanning',
  'no hole before a scan; a tendon holds 26 to 33 kip',
  'read-secondary',
);
const LISTED = sourced(0, 'PLBCA:1990', 's.7', 'from-memory');
const OLD_HOUSE = sourced(1919, 'our-choice', 'a house this old may be protected', 'our-choice', 'year');
const PARTY = sourced(0, 'PartyWall:1996', 'plugs and screws for ordinary wall units', 'read-secondary');
const SEPARATING = sourced(0, 'separating-walls', 'general', 'from-memory');
const SEALS = sourced(0, 'common-practice', 'steel frames and vapour seals', 'common-practice');
const DESIGNED = sourced(kg(50), 'our-choice', 'safety 11: someone who can design and sign', 'our-choice');

/** Known to be possible stops anywhere; not known stops in a flat only, and warns elsewhere. */
function tensioned(facts: Facts): Severity | null {
  if (facts.job.wall?.baseMaterial !== 'concrete') return null;
  const heard = facts.heard(facts.job.wall.tensioned);
  if (heard === 'possible') return 'stop';
  if (heard !== 'unknown') return null;
  return facts.job.building?.kind === 'flat' ? 'stop' : 'warn';
}

/** Whether a way of fixing may be used in a fire or sound separating wall: never one that cuts out or goes through. */
export function inSeparatingWall(fixing: 'surface' | 'cut-out' | 'through-bolt'): Severity {
  return fixing === 'surface' ? 'warn' : 'stop';
}

const separating = ({ whole, job }: Facts): boolean => whole && job.wall?.separating === true;
const isUk = ({ job }: Facts): boolean => job.building?.country === 'UK';
const isFlat = ({ job }: Facts): boolean => job.building?.kind === 'flat';

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

/** Gates: what has to be right before anyone drills, whatever the fixing. */
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
  {
    id: 'C-GT-5',
    severity: 'warn',
    applies: separating,
    text: (facts) =>
      `A fire or sound separating wall: no cut-outs, no through-bolts${baseKind(facts)?.masonry ? '; plugs and screws stay well short of half the wall' : "; surface screws into studs only, with the owner's or manager's yes"}.`,
    basis: from(SEPARATING),
  },
  {
    id: 'C-GT-4',
    severity: 'note',
    applies: (facts) => separating(facts) && isUk(facts) && baseKind(facts)?.masonry === true,
    text: 'A UK party wall: ordinary plugs and screws are too minor to need a notice.',
    basis: from(PARTY),
  },
  {
    id: 'C-GT-6',
    severity: 'note',
    applies: (facts) => facts.whole && isFlat(facts),
    text: 'In flats the corridor, the outside walls and often the structure are common property, which is not yours to drill.',
    basis: from(SEPARATING),
  },
  {
    id: 'C-GT-8',
    severity: 'warn',
    applies: (facts) => facts.whole && facts.job.wall?.baseMaterial === 'plasterboard-on-steel-studs',
    text: 'A steel-frame wall: on an outside wall a hole can cut the vapour seal, and wall heating may run in it. Ask, and keep out of both.',
    basis: from(SEALS),
  },
];
