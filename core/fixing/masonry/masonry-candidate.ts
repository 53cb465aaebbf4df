import type { Hanging } from '../../piece/piece.ts';
import { mm } from '../../quantity.ts';
import { addedScrews } from '../batten/added-batten.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Bit, Fixing } from '../fixing-shape.ts';
import { coreNeeded } from '../steel/shank-strength.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { pairingWhys } from '../told/why-it-fits.ts';
import { strengthWhys } from '../told/why-it-holds.ts';
import type { Place } from './fixing-place.ts';
import { holeWhys } from './hole-why.ts';
import { type Weighed, weigh } from './masonry-weigh.ts';
import { coreOf, isHexHeaded, nameOf, shankMm, type WalkRow } from './walk-row.ts';

/** A row of a masonry walk, reckoned through. */
export function masonryCandidate(row: WalkRow, place: Place): Candidate | Unusable {
  const weighed = weigh(row, place);
  const fastener = row.onBattenWholeKg === undefined ? row.fastener : 'batten-screws';
  const name = nameOf(row);
  if (!weighed.ok) return { ok: false, fastener, name, because: weighed.because };
  return {
    ok: true,
    fastener,
    name,
    usualKg: row.usualKg,
    ...(row.onBattenWholeKg !== undefined && { onAddedBatten: true as const }),
    point: weighed.point,
    worst: weighed.worst,
    needs: () => needsOf(weighed),
    fixing: () => fixingOf(weighed, place),
    why: () => [
      ...holeWhys(weighed, place),
      ...pairingWhys(weighed, place),
      ...strengthWhys(weighed.worst, weighed.point, row.shank, weighed.hole.armMm, weighed.cap),
    ],
    advice: [],
  };
}

/** A screw that bends: the core that would not. */
function needsOf({ worst, point, hole, row }: Weighed): string | null {
  if (worst.mode !== 'screw-bending') return null;
  const wanted = coreNeeded(point.shearN, hole.armMm);
  const has = Math.round(coreOf(row.shank).coreMm * 10) / 10;
  return wanted && `a core of ${Math.ceil(wanted.coreMm * 10) / 10} mm would not bend, and this has ${has}`;
}

function fixingOf(weighed: Weighed, place: Place): Fixing {
  const { row, count, worst, hole } = weighed;
  const onBatten = row.onBattenWholeKg !== undefined || place.job.piece.hanging.by === 'batten';
  const bit: Bit = {
    kind: place.finish.kind === 'tile' ? 'tile' : 'masonry',
    action: row.action,
    diameterMm: mm(row.holeMm),
    depthMm: hole.depthMm,
  };
  const note = notesOf(weighed, place);
  return {
    fastener: row.onBattenWholeKg === undefined ? row.fastener : 'batten-screws',
    count,
    bit,
    ...(row.plugMm !== undefined && { plug: { diameterMm: mm(row.holeMm), lengthMm: hole.plugMm } }),
    screw: {
      ...(typeof row.shank === 'number' && { gauge: row.shank }),
      diameterMm: shankMm(row.shank),
      lengthMm: hole.screwMm,
      head: headOf(row, place.job.piece.hanging.by, onBatten, hole.longHead),
    },
    ...(note !== '' && { note }),
    governing: governingOf(worst),
    utilisation: worst.utilisation,
  };
}

type Head = NonNullable<Fixing['screw']>['head'];

/** The head the hanger needs: pan under a ring, round for a keyhole, countersunk in a batten, washer where the head is small. */
function headOf(row: WalkRow, by: Hanging['by'], onBatten: boolean, longHead: boolean): Head {
  if (isHexHeaded(row.shank) || row.shank === 'concrete-screw-6') return 'hex';
  if (row.shank === 'bolt-M5') return 'washer';
  if (onBatten) return 'countersunk';
  if (by === 'keyholes') return 'round';
  return longHead ? 'washer' : 'pan';
}

function notesOf({ row, count, hole: { longHead } }: Weighed, place: Place): string {
  const { finish, job } = place;
  const by = job.piece.hanging.by;
  return [
    ...(row.note ? [row.note] : []),
    ...(finish.kind === 'tile' ? [TILE] : []),
    ...(row.onBattenWholeKg === undefined ? [] : [addedBattenNote(count, place)]),
    ...hangerNote(by, shankMm(row.shank)),
    ...(longHead && by !== 'keyholes'
      ? ['No pan head is stocked that long: a washer goes under the head.']
      : []),
  ].join(' ');
}

const TILE =
  'Through the tile on rotary, one size up, on tape; then the masonry bit. The plug goes wholly behind the tile; seal the hole before the screw.';

/** The plugs of an added batten stand along it and not at the marks. */
function addedBattenNote(count: number, place: Place): string {
  const at = addedScrews(place, count).map((xMm) => tenth(xMm));
  return `A level batten 18 to 25 mm thick behind the frame takes the plugs, ${at.slice(0, -1).join(', ')} and ${at.at(-1)} mm from the left end of the wall; the hangers go on screws in the batten at the marks, and a spacer of its thickness near the bottom of the frame.`;
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
