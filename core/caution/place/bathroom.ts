import type { JobSoFar } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { bottomFromJob } from '../heights.ts';
import { holesOf } from '../holes.ts';
import { from, type Rule } from '../rule.ts';
import { AU_ZONES, UK_ZONES } from './bathroom-zones.ts';

const WATERPROOF = sourced(mm(1800), 'ABCB:10.2.2', 'shower walls, above the floor', 'read-secondary');
const OURS = sourced(0, 'our-choice', 'safety 6: wet walls', 'our-choice');

/** What a hole in a shower wall is: a stop at or below 1800 mm above the floor or at no known height, else a warn. */
export function showerHole(upMm: Millimetres | null): 'stop' | 'warn' {
  return upMm === null || upMm <= WATERPROOF.value ? 'stop' : 'warn';
}

/** A shower stops an unfinished job unless the piece is known to reach above the membrane: then its holes decide. */
function membraneHoled(facts: Facts): boolean {
  if (facts.job.wall?.wet !== 'shower') return false;
  const holes = holesOf(facts);
  if (holes.length === 0) return showerHole(reachFromJob(facts.job)) === 'stop';
  return holes.some((hole) => showerHole(hole.upMm) === 'stop');
}

/** How high above the floor its top, or a hanger that stands above it, comes by what was said; null where that is not known yet. */
function reachFromJob(job: JobSoFar): Millimetres | null {
  const bottom = bottomFromJob(job);
  const { heightMm, hanging } = job.piece ?? {};
  if (bottom === null) return null;
  const seat = hanging?.seatToScrewMm ?? 0;
  const drops = [hanging?.fromTopMm, ...(hanging?.points ?? []).map(({ fromTopMm }) => fromTopMm)];
  return mm(bottom + (heightMm ?? 0) + Math.max(0, ...drops.map((drop) => seat - (drop ?? 0))));
}

const isWet = ({ job }: Facts): boolean => job.wall?.wet === 'bathroom' || job.wall?.wet === 'shower';
const tiledAndNotAsked = (facts: Facts): boolean =>
  facts.job.wall?.finish?.kind === 'tile' && facts.heard(facts.job.wall.wet) === 'unknown';

/** Bathrooms: mains in wet zones, holes in waterproofed walls. */
export const bathroomRules: readonly Rule[] = [
  {
    id: 'C-WA-1',
    severity: 'stop',
    applies: membraneHoled,
    text: `I won't place holes in a waterproofed shower wall: it is sealed to at least ${WATERPROOF.value} mm above the floor, and a hole lets water behind the tiles. Have it bonded by someone who does wet areas, or choose another wall.`,
    clears: 'Another wall, a piece bonded on without holes, or every hole above the waterproofed height.',
    basis: from(WATERPROOF),
  },
  {
    id: 'C-WA-1',
    severity: 'warn',
    whileDrilling: true,
    applies: (facts) => facts.whole && facts.job.wall?.wet === 'shower' && !membraneHoled(facts),
    text: `Shower wall: these holes are above ${WATERPROOF.value} mm, but the membrane may be taken higher and spray reaches there. Ask how high it goes, and seal each hole.`,
    basis: from(WATERPROOF, OURS),
  },
  {
    id: 'C-WA-1',
    severity: 'warn',
    applies: (facts) => facts.whole && facts.job.wall?.wet === 'bathroom',
    text: 'Wet area: keep every hole off the walls round a bath or shower, which are waterproofed behind the tiles. Elsewhere seal the hole and use screws that do not rust.',
    basis: from(WATERPROOF, OURS),
  },
  {
    id: 'C-WA-1',
    severity: 'warn',
    applies: (facts) => facts.whole && tiledAndNotAsked(facts),
    text: 'Tiled wall: is it a wet area? If it is round a shower or bath it is waterproofed behind the tiles, and nobody makes a hole in it.',
    basis: from(WATERPROOF, OURS),
  },
  {
    id: 'C-BZ-1',
    severity: 'stop',
    applies: (facts) => facts.job.piece?.lit === true && isWet(facts),
    text: 'A mirror with mains in a bathroom may hang in a wet zone. A licensed electrician has to choose the fitting, say where it may go, and connect it.',
    clears: 'A licensed electrician who has set the point, or a mirror without mains.',
    basis: from(UK_ZONES, AU_ZONES),
  },
];
