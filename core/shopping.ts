import type { Fastener } from './fixing/fastener.ts';
import type { Fixing } from './fixing/fixing-shape.ts';
import type { Job } from './job.ts';
import { sourced } from './sources.ts';
import { isOverGap, mayBeCored } from './wall/cored.ts';
import { hasStuds } from './wall/studs.ts';

/** What comes off the shelf beside a screw: by kind, diameter and length, never by a maker or a colour. */
const BESIDE_THE_SCREW: Record<Fastener, string | null> = {
  'plug-and-screw': 'plastic plug',
  'hollow-unit-plug': 'long plug for hollow and perforated units',
  'aerated-plug': 'plug made for aerated block',
  'frame-plug': 'long frame plug with its own screw',
  'concrete-screw': null,
  'resin-stud': null,
  'stud-screw': null,
  'steel-stud-screw': null,
  'timber-screw': null,
  'lath-screw': null,
  'batten-screws': null,
  'board-across-studs': null,
  'screw-in-anchor': 'screw-in board anchor',
  'expanding-sleeve-anchor': 'expanding sleeve anchor, grip to suit the board',
  'spring-toggle': 'spring toggle with plate washer',
  'bar-toggle': 'pivoting bar toggle with plate washer',
  'strap-toggle': 'strap toggle',
  'winged-plug': 'winged board plug',
  'pin-hook': 'hardened-pin picture hook',
  'picture-rail-hook': 'picture-rail hook and chain',
};

/** What opens behind a sheet comes on a machine bolt. */
const BOLTED: readonly Fastener[] = [
  'expanding-sleeve-anchor',
  'spring-toggle',
  'bar-toggle',
  'strap-toggle',
];

/** One of a tool, a board or a cartridge does for the whole job. */
export const ONE_DOES = sourced(
  1,
  'our-choice',
  'one of each tool, board or cartridge for a job',
  'our-choice',
);

type Item = { item: string; count: number };
/** One serves every piece hung the same way: a bit, a cartridge. */
type Entry = Item & { shared?: true };

/** What to buy or take from the van, with how many. Sizes in millimetres and screw gauge. */
export function shoppingOf(fixing: Fixing, marks: number, job: Job): Item[] {
  return shoppingEntries(fixing, marks, job).map(({ item, count }) => ({ item, count }));
}

/** The same, with what one is enough of however many pieces there are. */
export function shoppingEntries(fixing: Fixing, marks: number, job: Job): Entry[] {
  const { fastener, count, plug, screw, bit } = fixing;
  const list: Entry[] = [];
  const beside = BESIDE_THE_SCREW[fastener] ?? (plug ? plugFor(job) : null);
  if (beside) {
    const size = plug ? ` ${tenth(plug.diameterMm)} x ${tenth(plug.lengthMm)} mm` : '';
    list.push({ item: `${beside}${size}`, count });
  }
  if (isAdded(fastener, job)) list.push(...addedBoard(fastener, fixing.hangerScrews ?? marks));
  if (fastener === 'resin-stud')
    list.push({ item: 'injection resin rated for this wall, one cartridge', count: 1, shared: true });
  if (fastener === 'resin-stud' && isSleeved(job.wall))
    list.push({
      item: `mesh sleeve ${tenth(bit.diameterMm)} mm, as long as the stud goes in the unit`,
      count,
    });
  // A long plug comes with the screw that fits it.
  if (screw && !spansToMasonry(fastener, job.wall))
    list.push({ item: fastener === 'resin-stud' ? threadedStud(screw) : screwName(screw, fastener), count });
  list.push(...bitsOf(fixing, job));
  return list;
}

/** The pilot is the wood bit itself where both are one; else each is its own. One of a size serves every hole. */
function bitsOf({ bit, pilot }: Fixing, job: Job): Entry[] {
  const one = (item: string): Entry => ({ item, count: 1, shared: true });
  if (bit.kind === 'none') return [];
  const size = `${tenth(bit.diameterMm)} mm`;
  const woodBit = pilot && bit.kind !== 'wood' ? [one(`wood bit ${tenth(pilot.diameterMm)} mm`)] : [];
  if (bit.kind !== 'tile') return [one(`${bit.kind} bit ${size}`), ...woodBit];
  if (pilot) return [one(`tile bit ${size}`), ...woodBit];
  return [one(`tile bit one size over ${size}`), one(`${behindTheTile(job)} bit ${size}`)];
}

const plugFor = ({ wall }: Job): string | null => BESIDE_THE_SCREW[plugIn(wall)];

function plugIn(wall: Job['wall']): Fastener {
  if (isOverGap(wall)) return 'frame-plug';
  if (wall.baseMaterial === 'aerated-concrete') return 'aerated-plug';
  return mayBeCored(wall) ? 'hollow-unit-plug' : 'plug-and-screw';
}

const spansToMasonry = (fastener: Fastener, wall: Job['wall']): boolean =>
  fastener === 'frame-plug' || (fastener === 'batten-screws' && isOverGap(wall));

/** Rubble, units with holes, and what stands behind a gap: resin runs away without a sleeve. */
const isSleeved = (wall: Job['wall']): boolean =>
  isOverGap(wall) ||
  mayBeCored(wall) ||
  (wall.baseMaterial === 'natural-stone' && (wall.cores === 'perforated' || wall.cores === 'hollow'));

const behindTheTile = ({ wall }: Job): string => (hasStuds(wall.baseMaterial) ? 'wood' : 'masonry');

/** A board or batten that the piece did not come with. */
const isAdded = (fastener: Fastener, { piece }: Job): boolean =>
  fastener === 'board-across-studs' || (fastener === 'batten-screws' && piece.hanging.by !== 'batten');

const addedBoard = (fastener: Fastener, screws: number): Item[] => [
  {
    item:
      fastener === 'board-across-studs'
        ? 'board 18 to 25 mm thick, long enough to cross the studs'
        : 'batten 18 to 25 mm thick, as long as the frame is wide less what shows',
    count: 1,
  },
  { item: '10 gauge pan head wood screw as long as the board is thick', count: screws },
];

/** A stud for resin, as asked for at a counter. */
export const threadedStud = (screw: NonNullable<Fixing['screw']>): string =>
  `M${tenth(screw.diameterMm)} threaded stud, ${tenth(screw.lengthMm)} mm, with nut and two washers`;

/** A screw as asked for at a counter: "14 gauge (6.1 mm) x 75 mm pan head screw". */
export function screwName(screw: NonNullable<Fixing['screw']>, fastener?: Fastener): string {
  if (fastener && BOLTED.includes(fastener)) {
    const under = screw.head === 'washer' ? 'with washer' : `with ${screw.head} head`;
    return `M${tenth(screw.diameterMm)} x ${tenth(screw.lengthMm)} mm bolt ${under}`;
  }
  const thick = `${tenth(screw.diameterMm)} mm`;
  const size = screw.gauge ? `${screw.gauge} gauge (${thick})` : thick;
  const head = screw.head === 'washer' ? 'screw with washer' : `${screw.head} head screw`;
  return `${size} x ${tenth(screw.lengthMm)} mm ${head}`;
}

const tenth = (value: number): string => String(Math.round(value * 10) / 10);
