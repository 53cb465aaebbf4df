import { sourced } from '../../sources.ts';
import type { Hidden } from '../../wall/wall.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const COMMON = sourced(0, 'separating-walls', 'common property', 'from-memory');
const BUILT_IN = sourced(0, 'common-practice', 'walls built round something', 'common-practice');
const SEALS = sourced(0, 'common-practice', 'steel frames and vapour seals', 'common-practice');

const SPOKEN: Record<Hidden, string> = {
  'pocket-door': 'a sliding door',
  cistern: 'a cistern',
  boiler: 'a boiler',
  flue: 'a flue',
  meter: 'a meter',
  'wall-heating': 'wall heating',
};

const hidden = ({ job }: Facts): readonly Hidden[] => job.wall?.hides ?? [];
const crowded = (facts: Facts): readonly Hidden[] => hidden(facts).filter((each) => each !== 'wall-heating');
const heated = (facts: Facts): boolean => hidden(facts).includes('wall-heating');

/** "a cistern and a flue" */
const named = (things: readonly Hidden[]): string =>
  [...new Set(things)].map((each) => SPOKEN[each]).join(' and ');

const isCommon = ({ job }: Facts): boolean => job.wall?.common === true && job.building?.consent !== true;

const framed = ({ job }: Facts): boolean =>
  job.wall?.baseMaterial?.endsWith('-studs') === true || job.wall?.baseMaterial === 'timber';
const steelFrame = ({ job }: Facts): boolean => job.wall?.baseMaterial === 'plasterboard-on-steel-studs';
const outsideFrame = (facts: Facts): boolean => framed(facts) && facts.job.wall?.external === true;

/** What is built into the wall, and whose it is. */
export const builtInRules: readonly Rule[] = [
  {
    id: 'C-GT-6',
    severity: 'stop',
    applies: isCommon,
    text: 'This wall is common property: it belongs to everyone in the building, so it is not for one of them to make holes in.',
    clears: 'A yes in writing from the body that owns it; or a wall of your own.',
    basis: from(COMMON),
  },
  {
    id: 'C-GT-6',
    severity: 'note',
    applies: (facts) => facts.whole && facts.job.building?.kind === 'flat' && !isCommon(facts),
    text: 'In flats the corridor, the outside walls and often the structure are common property, which is not yours to drill.',
    basis: from(COMMON),
  },
  {
    id: 'C-GT-7',
    severity: 'stop',
    applies: (facts) => crowded(facts).length > 0,
    text: (facts) =>
      `There is ${named(crowded(facts))} in this wall, and nobody sees how far it reaches or what serves it. Choose another wall, or stand the piece on the floor.`,
    clears: 'Another wall.',
    basis: from(BUILT_IN),
  },
  {
    id: 'C-GT-8',
    severity: 'stop',
    applies: heated,
    text: 'Wall heating: a hole can cut the pipe or the mat anywhere in this wall.',
    clears: 'The heating traced and marked on the wall by whoever put it in; or another wall.',
    basis: from(SEALS),
  },
  {
    id: 'C-GT-8',
    severity: 'warn',
    applies: (facts) => facts.whole && !heated(facts) && (steelFrame(facts) || outsideFrame(facts)),
    text: (facts) =>
      outsideFrame(facts)
        ? 'A framed outside wall: a hole can cut the vapour seal behind the lining, and damp follows. Ask where the seal is, keep holes few, and seal round each one.'
        : 'A steel-frame wall: if it is an outside wall a hole can cut the vapour seal, and wall heating may run in it. Ask, and keep out of both.',
    basis: from(SEALS),
  },
];
