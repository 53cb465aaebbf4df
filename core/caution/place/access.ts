import { MM_PER_INCH, mm } from '../../quantity.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { beginsLowEnough, CANE, caneFinds, MIRROR_BOTTOM } from './access-figures.ts';

const isPublic = ({ job }: Facts): boolean => job.building?.kind === 'public';
const inUs = ({ job }: Facts): boolean => job.building?.country === 'US';

/** Sticks out into a walkway where a cane passes under it; needs the height of its bottom edge. */
function hitsWalker({ job, onWall: { bottomMm } }: Facts): boolean {
  const depth = job.piece?.depthMm;
  if (job.place?.below !== 'walkway' || depth === undefined || bottomMm === null) return false;
  return !caneFinds(bottomMm / MM_PER_INCH, depth / MM_PER_INCH);
}

/** Reflecting surface of a washroom mirror: its bottom edge and the frame below the glass, which may be nothing. */
function mirrorTooHigh({ job, onWall: { bottomMm } }: Facts): boolean {
  const { piece, wall, place } = job;
  const wash = wall?.wet === 'bathroom' || place?.below === 'basin';
  if (piece?.kind !== 'mirror' || !wash || bottomMm === null) return false;
  const starts = mm(bottomMm + (piece.build?.frame?.widthMm ?? 0));
  return !beginsLowEnough(place?.below === 'basin' ? 'basin' : 'elsewhere', starts);
}

const CANE_TEXT =
  "A cane won't find this: between 27 in (685 mm) and 80 in (2030 mm) above the floor nothing may stick out more than 4 in (100 mm) over a walkway. Make it shallower, lower its bottom edge to 27 in, or move it.";
const MIRROR_TEXT =
  'The reflecting surface in a public washroom must start no higher than 40 in (1015 mm) over a basin, 35 in (890 mm) elsewhere. The frame is not the reflecting surface.';

/** Public places. The figures are the US document's; elsewhere they warn by analogy. */
export const accessRules: readonly Rule[] = [
  {
    id: 'C-AC-1',
    severity: 'stop',
    applies: (facts) => isPublic(facts) && inUs(facts) && hitsWalker(facts),
    text: CANE_TEXT,
    clears: 'A shallower piece, a bottom edge at 27 in (685 mm) or lower, or a place off the walkway.',
    basis: from(CANE),
  },
  {
    id: 'C-AC-1',
    severity: 'warn',
    applies: (facts) => facts.whole && isPublic(facts) && !inUs(facts) && hitsWalker(facts),
    text: `${CANE_TEXT} (US figures; ask what holds here.)`,
    basis: from(CANE),
  },
  {
    id: 'C-AC-2',
    severity: 'stop',
    applies: (facts) => isPublic(facts) && inUs(facts) && mirrorTooHigh(facts),
    text: MIRROR_TEXT,
    clears: 'A lower mirror, or another mirror in the same washroom at that height.',
    basis: from(MIRROR_BOTTOM),
  },
  {
    id: 'C-AC-2',
    severity: 'warn',
    applies: (facts) => facts.whole && isPublic(facts) && !inUs(facts) && mirrorTooHigh(facts),
    text: `${MIRROR_TEXT} (US figures; ask what holds here.)`,
    basis: from(MIRROR_BOTTOM),
  },
  {
    id: 'C-AC-3',
    severity: 'note',
    applies: (facts) => facts.whole && !isPublic(facts) && mirrorTooHigh(facts),
    text: 'Reflecting surface at 40 in (1015 mm) or lower over a basin: not required at home, still a good height if anyone uses a wheelchair.',
    basis: from(MIRROR_BOTTOM),
  },
];
