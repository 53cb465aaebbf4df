import { kg, type Millimetres, mm, settled } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { sizeOf } from '../../wall/accessory.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { inCable, inPlumbing } from '../services/services-where.ts';
import { glassMayCut, glassOf } from './glass-kind.ts';

const AT = 'K4 s.5, diagram 5.1; by analogy, a mirror is backed by a wall';
const LOW = sourced(mm(800), 'ADK:2013', AT, 'read-secondary');
const LOW_BY_DOOR = sourced(mm(1500), 'ADK:2013', AT, 'read-secondary');
const BY_DOOR = sourced(mm(300), 'ADK:2013', AT, 'read-secondary');
const BATHROOM = sourced(mm(2000), 'AS1288', 'mirrors in bathrooms', 'read-secondary');
const HEAVY_GLASS = sourced(kg(10), 'our-choice', 'heavy glass', 'our-choice');
const FILM = sourced(0, 'common-practice', 'safety backing film', 'common-practice');

/** Whether glass here is where people fall against it: below 800, or below 1500 within 300 of a door. Millimetres. */
export function glassIsCritical(bottomMm: Millimetres, doorEdgeMm: Millimetres | null): boolean {
  return (
    bottomMm < LOW.value ||
    (bottomMm < LOW_BY_DOOR.value && doorEdgeMm !== null && doorEdgeMm <= BY_DOOR.value)
  );
}

/** Distance of the piece from the nearest door on this face, edge to edge; null without a door. Millimetres. */
function doorEdge({ job, onWall: { leftMm, rightMm } }: Facts): Millimetres | null {
  const { accessories } = job.wall ?? {};
  if (!Array.isArray(accessories) || leftMm === null || rightMm === null) return null;
  const gaps = accessories
    .filter((each) => each.kind === 'door' && each.face === 'this')
    .map((door) => {
      const half = sizeOf(door).widthMm / 2;
      return settled(mm(Math.max(0, leftMm - (door.xMm + half), door.xMm - half - rightMm)));
    });
  return gaps.length === 0 ? null : mm(Math.min(...gaps));
}

const inReach = (facts: Facts): boolean => {
  const bottom = facts.onWall.bottomMm;
  return facts.whole && glassMayCut(facts) && bottom !== null && glassIsCritical(bottom, doorEdge(facts));
};

/** Nobody said whether this is a bathroom, and there is a basin under it. */
const overBasin = ({ heard, job: { place, wall } }: Facts): boolean =>
  place?.below === 'basin' && heard(wall?.wet) === 'unknown';

/** An Australian bathroom, a mirror below 2 m that is not known to be safety glass or acrylic. */
const bathroomMirror = (facts: Facts): boolean => {
  const { piece, wall, building } = facts.job;
  const bottom = facts.onWall.bottomMm;
  return (
    facts.whole &&
    building?.country === 'AU' &&
    piece?.kind === 'mirror' &&
    (wall?.wet === 'bathroom' || wall?.wet === 'shower' || overBasin(facts)) &&
    glassMayCut(facts) &&
    (bottom === null || bottom < BATHROOM.value)
  );
};

/** Ordinary glass for certain, no vanity that may protect it, and a height that is known. */
const certainly = (facts: Facts): boolean =>
  facts.job.piece?.glass === 'plain' && facts.job.place?.below !== 'basin' && facts.onWall.bottomMm !== null;

const BATHROOM_TEXT =
  'In an Australian bathroom a mirror below 2 m has to be safety glass, or glued flat to the wall, or behind a vanity at least 760 high and 300 deep.';

/** Higher is no help where a mirror or a walkway has its own greatest height, nor where what does not fit, a cable or a pipe says which way to go. */
const mayRise = (facts: Facts): boolean =>
  facts.setOut !== null &&
  facts.job.building?.kind !== 'public' &&
  inCable(facts).length + inPlumbing(facts).length === 0;

/** Glass near people. */
export const glassRules: readonly Rule[] = [
  {
    id: 'C-GL-2',
    severity: 'stop',
    applies: (facts) => bathroomMirror(facts) && certainly(facts),
    text: `${BATHROOM_TEXT} This one is ordinary glass on hangers: change the glass, or hang it on another wall.`,
    clears: 'Safety glass, a mirror glued flat, or a wall outside the bathroom.',
    basis: from(BATHROOM),
  },
  {
    id: 'C-GL-2',
    severity: 'warn',
    applies: (facts) => bathroomMirror(facts) && !certainly(facts),
    text: `${BATHROOM_TEXT} Look for the safety mark before it goes up.`,
    basis: from(BATHROOM),
  },
  {
    id: 'C-GL-1',
    severity: 'warn',
    applies: inReach,
    text: (facts) =>
      `${glassOf(facts) === 'maybe' ? 'If this is glazed with ordinary glass, it' : 'This glass'} is at a height where people fall against it (below ${LOW.value} mm, or below ${LOW_BY_DOOR.value} mm beside a door). Choose safety-backed or toughened glass${mayRise(facts) ? ', or raise it' : ''}.`,
    basis: from(LOW, LOW_BY_DOOR, BY_DOOR),
  },
  {
    id: 'C-GL-3',
    severity: 'note',
    applies: (facts) =>
      facts.whole &&
      glassOf(facts) === 'glass' &&
      glassMayCut(facts) &&
      (facts.massKg ?? 0) > HEAVY_GLASS.value,
    text: 'Ask the glazier for safety backing film: it keeps the pieces together if the glass breaks. It does not strengthen the glass or the hanging.',
    basis: from(FILM),
  },
];
