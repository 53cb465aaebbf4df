import { sourced } from '../../sources.ts';
import { spokenKind } from '../../wall/accessory.ts';
import type { Unplaced } from '../../wall/wall.ts';
import { isThin, THIN_WALL } from '../../wall/zones.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const BOTH_FACES = sourced(0, 'our-choice', 'safety 1.2: accessories unknown', 'our-choice');

const nothingSeen = (facts: Facts): boolean => facts.heard(facts.job.wall?.accessories) === 'unknown';

/** Told of, and where is not known: in an unfinished job it may still be asked for. */
const unplaced = ({ job, whole }: Facts): readonly Unplaced[] =>
  (job.wall?.unplaced ?? []).filter((each) => whole || each.whereabouts === 'unknown');

/** "the switch on the other side and the socket". */
const unplacedNames = (facts: Facts): string =>
  [
    ...new Set(
      unplaced(facts).map(
        ({ kind, face }) => `the ${spokenKind(kind)}${face === 'far' ? ' on the other side' : ''}`,
      ),
    ),
  ].join(' and ');

/** An unfinished job whose thickness was not asked may still prove thick. */
const mayBeThin = (facts: Facts): boolean => {
  const thickness = facts.job.wall?.thicknessMm;
  return thickness === undefined ? facts.whole : isThin(thickness);
};

/** Only this face was looked at: half of `wall.accessories` is unknown, and in a thin wall that half counts. */
const farUnseen = (facts: Facts): boolean =>
  Array.isArray(facts.job.wall?.accessories) && facts.job.wall.farSide === 'unknown' && mayBeThin(facts);

/** Faces of the wall that nobody looked at, and what was seen there without its place. */
export const unseenRules: readonly Rule[] = [
  {
    id: 'C-SV-4',
    severity: 'stop',
    applies: nothingSeen,
    text: 'Before I place this: what is on both sides of this wall? I need every socket, switch, light, tap, pipe, radiator and heater on this face and on the other, and where each is. Nobody drills a wall that has not been looked at.',
    clears: 'A look at both faces of the wall: what is there and where, or "none on either side".',
    basis: from(BOTH_FACES),
  },
  {
    id: 'C-SV-4',
    severity: 'stop',
    applies: (facts) => unplaced(facts).length > 0,
    text: (facts) =>
      `Before I place this, where is ${unplacedNames(facts)}? Cables and pipes run straight up, down and sideways from there, so nothing is placed until that is measured.`,
    clears: (facts) => `A measure to ${unplacedNames(facts)}: from the left end, and up from the floor.`,
    basis: from(BOTH_FACES),
  },
  {
    id: 'C-SV-4',
    severity: 'stop',
    applies: farUnseen,
    text: (facts) =>
      `Before I place this, what is on the other side of the wall at this spot? ${facts.job.wall?.thicknessMm === undefined ? `A wall counts as thin (${THIN_WALL.value} mm or less) until it is measured, and then` : 'In a wall this thin'} cables for the other room may be right behind the hole.`,
    clears: `A look at the other side, or a measured thickness over ${THIN_WALL.value} mm.`,
    basis: from(THIN_WALL, BOTH_FACES),
  },
];
