import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Basis, basisOf } from '../sources.ts';
import { type Room, shiftOntoStuds } from '../wall/stud-shift.ts';
import {
  EDGE_DIAMETERS,
  hasStuds,
  type KnownStuds,
  knownStuds,
  type Landing,
  landing,
  NARROW_STUD,
  TEN_GAUGE,
} from '../wall/studs.ts';
import type { Wall } from '../wall/wall.ts';
import type { PlacedMark } from './cross-checks.ts';
import { lengthText } from './length-text.ts';

/** Which marks fall on timber, in words, and what to do about those that do not. */
export type OnStuds = {
  on: Map<string, string>;
  advice: string[];
  assumptions: Assumption[];
  basis: Basis[];
};

const BATTEN_FIRST =
  'A board or batten across two studs, with the piece hung from it, comes before a fixing in the board alone.';
const FIND_EDGES = 'Find both edges of each stud before drilling; never count.';

/** On a wall with studs whose places are not known, the search for them comes first. */
export function findStuds(wall: Wall): string[] {
  if (!hasStuds(wall.baseMaterial) || knownStuds(wall)) return [];
  return [
    'Find the studs first: a magnet for the lines of screws, then both edges of one. With the middle of the first, the spacing and the width I can say which marks fall on timber.',
  ];
}

/** Marks against the studs of a wall, or null where the studs are not known. */
export function onStuds(
  placed: readonly PlacedMark[],
  wall: Wall,
  room: Room,
  screwDiameterMm: Millimetres = TEN_GAUGE.value,
  what: 'piece' | 'group' = 'piece',
): OnStuds | null {
  const studs = knownStuds(wall);
  if (!studs) return null;
  const landings = placed.map(({ id, xMm }) => ({ id, ...landing(xMm, studs, screwDiameterMm) }));
  const on = new Map(landings.map((each) => [each.id, wordsFor(each, studs)]));
  const said = typeof wall.studs === 'object' && wall.studs.widthMm !== undefined;
  return {
    on,
    advice: adviceFor(landings, placed, studs, screwDiameterMm, room, what),
    assumptions: said ? [] : [narrow],
    basis: [basisOf(EDGE_DIAMETERS), basisOf(TEN_GAUGE)],
  };
}

const narrow: Assumption = {
  field: 'wall.studs.widthMm',
  value: NARROW_STUD.value,
  because: 'stud width was not given; this is the narrow end of what is built',
};

function wordsFor({ on, offBy, studCentreMm }: Landing, studs: KnownStuds): string {
  const off = lengthText(mm(Math.abs(offBy)));
  const side = offBy < 0 ? 'left' : 'right';
  if (on) return `stud at ${lengthText(studCentreMm)}${offBy === 0 ? '' : `, ${off} ${side} of its middle`}`;
  if (Math.abs(offBy) <= studs.widthMm / 2) {
    return `too near the edge of the stud at ${lengthText(studCentreMm)}, ${off} ${side} of its middle`;
  }
  return `between studs, ${off} ${side} of the one at ${lengthText(studCentreMm)}`;
}

const listed = (ids: readonly string[]): string =>
  ids.length < 3 ? ids.join(' and ') : `${ids.slice(0, -1).join(', ')} and ${ids.at(-1)}`;

function adviceFor(
  landings: readonly (Landing & { id: string })[],
  placed: readonly PlacedMark[],
  studs: KnownStuds,
  screwDiameterMm: Millimetres,
  room: Room,
  what: 'piece' | 'group',
): string[] {
  const missing = landings.filter((each) => !each.on);
  if (missing.length === 0) return [`Every mark falls in a stud. ${FIND_EDGES}`];
  const who = listed(missing.map((each) => each.id));
  const miss = `${who} ${missing.length === 1 ? 'misses' : 'miss'} the studs as you gave them.`;
  const shift = shiftOntoStuds(
    placed.map((each) => each.xMm),
    studs,
    screwDiameterMm,
    room,
  );
  if (shift === null) return [`${miss} No move of the ${what} lands all of them. ${BATTEN_FIRST}`];
  const way = shift.leastMm < 0 ? 'left' : 'right';
  const least = lengthText(mm(Math.abs(shift.leastMm)));
  const centred = lengthText(mm(Math.abs(shift.centredMm)));
  return [
    `${miss} Moving the whole ${what} ${centred} to the ${way} lands every mark${least === centred ? '' : ` (${least} is the least that does)`}. ${FIND_EDGES}`,
    `If it can’t move: ${BATTEN_FIRST[0]?.toLowerCase()}${BATTEN_FIRST.slice(1)}`,
  ];
}
