import type { Hanging } from '../../piece/piece.ts';
import type { Bit, Fixing, Why } from '../../plan-shape.ts';
import { mm } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { addedScrews } from '../batten/added-batten.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { pairingWhys } from '../told/why-it-fits.ts';
import { strengthWhys } from '../told/why-it-holds.ts';
import { SLEEVE_BEYOND } from './fit-hole.ts';
import type { Place } from './fixing-place.ts';
import { HOLE_BEYOND } from './hole.ts';
import { type Weighed, weigh } from './masonry-weigh.ts';
import { isHexHeaded, nameOf, shankMm, type WalkRow } from './walk-row.ts';

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
    fixing: () => fixingOf(weighed, place),
    why: () => whysOf(weighed, place),
    advice: [],
  };
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

function whysOf(weighed: Weighed, place: Place): Why[] {
  const { hole, row } = weighed;
  const { finish } = place;
  const d = shankMm(row.shank);
  const basis = [basisOf(HOLE_BEYOND)];
  const beyond = HOLE_BEYOND.value;
  const resin = row.fastener === 'resin-stud';
  const outside = hole.stocked ? 'outsideMm' : 'outsidePartMm';
  const inside = row.plugMm === undefined ? 'inBaseMm' : 'plugMm';
  return [
    {
      of: 'hole depth',
      formula: resin
        ? 'finish + depth in the base material, and 5 more behind a sleeve'
        : 'the larger of finish + plug + 10 and screw - outside part + 5',
      inputs: resin
        ? {
            finishMm: finish.thicknessMm,
            inBaseMm: hole.plugMm,
            behindSleeveMm: row.sleeve ? SLEEVE_BEYOND.value : 0,
          }
        : {
            finishMm: finish.thicknessMm,
            [inside]: hole.plugMm,
            screwMm: tenth(hole.screwMm),
            outsideMm: tenth(hole.outsideMm),
            beyondPlugMm: beyond.plugMm,
            beyondScrewMm: beyond.screwMm,
          },
      result: `${hole.depthMm} mm`,
      basis: resin && row.sleeve ? [...basis, basisOf(SLEEVE_BEYOND)] : basis,
      symbols: resin
        ? 'up(finishMm + inBaseMm + behindSleeveMm)'
        : `up(max(finishMm + ${inside} + beyondPlugMm, screwMm - outsideMm + beyondScrewMm))`,
    },
    {
      of: 'screw length',
      formula: hole.stocked
        ? 'outside part + finish + plug, one diameter more where stocked, then the next stocked length'
        : 'outside part (of a stud: with its nut and washers) + finish + depth in the base material',
      inputs: {
        [outside]: tenth(hole.stocked ? hole.outsideMm : hole.screwMm - finish.thicknessMm - hole.plugMm),
        finishMm: finish.thicknessMm,
        [inside]: hole.plugMm,
        diameterMm: tenth(d),
        shelf: place.shelf,
      },
      result: `${tenth(hole.screwMm)} mm`,
      basis,
      symbols: `${hole.stocked ? 'stocked' : 'up'}(${outside} + finishMm + ${inside})`,
    },
    ...pairingWhys(weighed, place),
    ...strengthWhys(weighed.worst, weighed.point, row.shank, hole.armMm, weighed.cap),
  ];
}
