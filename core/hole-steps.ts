import type { Fixing } from './fixing/fixing-shape.ts';
import type { Job } from './job.ts';
import { screwName, threadedStud } from './shopping.ts';
import { isOverGap, mayBeCored } from './wall/cored.ts';
import { hasStuds } from './wall/studs.ts';

const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/**
 * The hole and what goes into it, in the order of work, a sentence each; the job as it was reckoned with.
 * Common practice, no source.
 */
export function holeSteps(fixing: Fixing, job: Job): string[] {
  return [...drilling(fixing, job), ...setting(fixing)];
}

const ACTION: Record<Exclude<Fixing['bit']['action'], 'rotary-until-known'>, string> = {
  'hammer-after-finish': 'rotary through the finish, hammer only once in the solid',
  rotary: 'rotary, no hammer',
  none: 'by hand',
};

/** Coring unknown: a fixing either holds in a unit with holes too, or counts only where each hole proves it solid. */
function actionWords(action: Fixing['bit']['action'], { wall }: Job): string {
  if (action !== 'rotary-until-known') return ACTION[action];
  const proof = 'rotary, no hammer. One dust colour and a steady feed to full depth is solid there; a drop';
  if (isOverGap(wall))
    return 'rotary, no hammer until the dust says what is behind the gap; a second drop is a hollow block, and it stays rotary';
  return mayBeCored(wall)
    ? `${proof} is a hole in the unit, and this holds in either`
    : `${proof} means stop, put nothing in and plan again`;
}

function drilling(fixing: Fixing, job: Job): string[] {
  const { bit, fastener, note } = fixing;
  if (bit.kind === 'none') return [];
  const size = `${tenth(bit.diameterMm)} mm`;
  const depth = `stop at ${tenth(bit.depthMm)} mm${fromTheFace(fixing, job)}`;
  const tiled = bit.kind === 'tile';
  if (tiled && fixing.pilot) return [...throughTile(fixing, fixing.pilot, job), stopOn(fixing, job)];
  const onBoard = hasStuds(job.wall.baseMaterial);
  const kind = tiled ? (onBoard ? 'wood' : 'masonry') : bit.kind;
  return [
    ...(tiled
      ? [
          `Two layers of tape, then a tile bit one size over ${size}, rotary, through the tile and no further.`,
        ]
      : []),
    ...(fastener === 'batten-screws' && note ? [note] : []),
    `${placeOfHoles(fixing, job)}: ${size} ${kind} bit, ${depth}, ${actionWords(bit.action, job)}.`,
    ...(isStone(bit.kind) && !onBoard ? ['Vacuum the hole to the bottom; do not blow it.'] : []),
    ...pilotAfter(fixing),
    stopOn(fixing, job),
  ];
}

/** Tile over a frame: the tile gets an oversize hole, the wood behind it a pilot. */
function throughTile(fixing: Fixing, pilot: NonNullable<Fixing['pilot']>, job: Job): string[] {
  const { bit } = fixing;
  return [
    `${placeOfHoles(fixing, job)}: two layers of tape, then a ${tenth(bit.diameterMm)} mm tile bit, rotary, no hammer, stop at ${tenth(bit.depthMm)} mm.`,
    `Then a ${tenth(pilot.diameterMm)} mm wood bit through the middle of it, stop at ${tenth(pilot.depthMm)} mm${fromTheFace(fixing, job)}.`,
  ];
}

const isStone = (kind: Fixing['bit']['kind']): boolean => kind === 'masonry' || kind === 'tile';

/** Where the first bit only opens the plaster or the sheet, the wood behind it gets its own. */
function pilotAfter({ bit, pilot }: Fixing): string[] {
  if (!pilot || bit.kind === 'wood' || bit.kind === 'tile') return [];
  return [
    `Through the plaster or sheet and no further; then a ${tenth(pilot.diameterMm)} mm wood bit, stop at ${tenth(pilot.depthMm)} mm.`,
  ];
}

/** Holes are at the marks, but not those of a board or batten that the hangers go onto. */
function placeOfHoles({ fastener }: Fixing, { piece }: Job): string {
  if (fastener === 'board-across-studs')
    return 'At each stud the board crosses, two holes one above the other';
  if (fastener !== 'batten-screws') return 'At each mark';
  return piece.hanging.by === 'batten'
    ? 'At each mark, two holes one above the other'
    : 'At each plug of the batten';
}

/** A board or batten stands in front of the wall: the depth is still the wall's. */
const fromTheFace = ({ fastener }: Fixing, { piece }: Job): string =>
  fastener === 'board-across-studs' || fastener === 'batten-screws' || piece.hanging.by === 'batten'
    ? ' from the face of the wall'
    : '';

/** What says that the wall is not what it was taken for. */
function stopOn({ pilot, bit, fastener }: Fixing, { wall }: Job): string {
  if (wall.baseMaterial === 'lath-and-plaster')
    return 'White or grey dust, then wood, then nothing, is lath. Stop when plaster sounds loose or moves under the palm, when lumps fall behind, on metal lath, or on damp.';
  if (bit.kind === 'metal')
    return 'Bright thin swarf behind the board is the stud. Stop on steel where no stud should be: a short plate guards a cable or pipe.';
  if (fastener === 'timber-screw')
    return 'Pale dry shavings all the way are right. Stop on soft, dark or wet wood, on a nail, or on a void.';
  if (pilot)
    return 'Pale wood shavings behind the board are right. Stop on steel just behind it, on nothing behind it, or on damp.';
  if (hasStuds(wall.baseMaterial))
    return 'Stop on steel or wood just behind the board, a second hard layer, damp, foil or a hiss.';
  if (isOverGap(wall) && fastener === 'screw-in-anchor')
    return 'Through the board and no further. Stop on foil, foam, cold air, damp or a cable: they run free in that gap.';
  if (isOverGap(wall))
    return 'One drop is the gap: note where the block begins. Stop on a second drop, cold air, foil, foam, a cable or damp.';
  if (wall.baseMaterial === 'aerated-concrete')
    return 'Pale soft dust all the way is right. Stop on metal, which is the wire of a panel: do not force past it.';
  return mayBeCored(wall)
    ? 'A drop or two are the holes in the unit. Stop on more than two, on cold air, metal, damp, or dust that turns to sand.'
    : 'Stop on any change of feel, metal, damp or a void.';
}

/** What comes off the shelf with how to set it is read before the screw goes in, not after. */
function setting({ fastener, note, plug, screw }: Fixing): string[] {
  const steps: string[] = [];
  if (plug && fastener === 'frame-plug')
    steps.push(
      `Push the ${tenth(plug.diameterMm)} x ${tenth(plug.lengthMm)} mm frame plug through board and gap into the block until its rim is at the face of the board.`,
    );
  else if (plug)
    steps.push(
      `Push the ${tenth(plug.diameterMm)} x ${tenth(plug.lengthMm)} mm plug in until its rim is past the finish, at the base material.`,
    );
  if (note && fastener !== 'batten-screws') steps.push(note);
  if (screw && fastener === 'resin-stud')
    steps.push(
      `Fill from the back of the hole and turn the ${threadedStud(screw)} in; keep off it until it has cured.`,
    );
  else if (screw) steps.push(`Fit the ${screwName(screw, fastener)}, the last turns by hand.`);
  return steps;
}
