import type { Building, Job, Place } from '../../core/job.ts';
import type { Hanging, Piece } from '../../core/piece/piece.ts';
import { kg, mm } from '../../core/quantity.ts';
import type { BaseMaterial } from '../../core/wall/wall.ts';
import type { Dice } from './dice.ts';
import { plausibleWall } from './plausible-wall.ts';

/** A job as people bring them, all invented: sizes and masses within what such pieces are (trade practice, no source). */
export function plausibleJob(base: BaseMaterial, dice: Dice): Job {
  const country = dice.oneOf('AU', 'NZ', 'UK', 'US', 'IE', 'CA', 'EU', 'other');
  const piece = plausiblePiece(dice);
  return {
    building: plausibleBuilding(country, dice),
    piece,
    wall: plausibleWall(base, country, dice),
    place: plausiblePlace(piece, dice),
    crew: { people: dice.oneOf(1, 2, 2, 3), dustExtraction: dice.chance(0.5), lifter: dice.chance(0.1) },
  };
}

/** Kilograms a square metre by kind, least and most. */
const DENSITY = { mirror: [10, 30], picture: [4, 20], canvas: [1, 8], panel: [5, 30] } as const;

function plausiblePiece(dice: Dice): Piece {
  const kind = dice.oneOf('mirror', 'mirror', 'picture', 'picture', 'canvas', 'panel');
  const widthMm = dice.between(300, 1600);
  const heightMm = dice.between(300, 1600);
  const [light, heavy] = DENSITY[kind];
  const massKg = Math.max(
    0.5,
    Math.round(((widthMm * heightMm) / 1e6) * dice.between(light, heavy) * 10) / 10,
  );
  return {
    kind,
    widthMm: mm(widthMm),
    heightMm: mm(heightMm),
    massKg: kg(massKg),
    ...(dice.chance(0.6) && { depthMm: mm(dice.between(15, 60)) }),
    glass:
      kind === 'mirror' ? dice.oneOf('plain', 'safety', 'unknown') : dice.oneOf('none', 'plain', 'acrylic'),
    hanging: plausibleHanging(widthMm, heightMm, dice),
  };
}

function plausibleHanging(widthMm: number, heightMm: number, dice: Dice): Hanging {
  const inMm = mm(Math.round(widthMm * dice.between(0.06, 0.2)));
  const fromTopMm = mm(Math.round(heightMm * dice.between(0.05, 0.3)));
  const points = [
    { fromLeftMm: inMm, fromTopMm },
    { fromRightMm: inMm, fromTopMm: mm(fromTopMm + (dice.chance(0.2) ? 4 : 0)) },
  ];
  const by = dice.oneOf('rings', 'rings', 'rings', 'keyholes', 'cord', 'batten', 'clips');
  if (by === 'batten')
    return { by, fromTopMm: mm(40), lengthMm: mm(Math.round(widthMm * dice.between(0.6, 0.95))) };
  if (by !== 'cord') return { by, points };
  const apart = dice.chance(0.5) ? 0 : Math.round((widthMm - 2 * inMm) / 3);
  return { by, points, riseMm: mm(Math.round(fromTopMm * dice.between(0.3, 0.9))), hooksApartMm: mm(apart) };
}

const plausiblePlace = ({ widthMm, heightMm }: Piece, dice: Dice): Place => ({
  across: dice.chance(0.5)
    ? { by: 'centre' }
    : { by: 'left-edge', mm: mm(dice.between(0, 1200 + widthMm / 4)) },
  up: dice.chance(0.7)
    ? { by: 'centre-at', mm: mm(dice.between(1400, 1600)) }
    : { by: 'bottom-above', mm: mm(dice.between(300, Math.max(400, 2300 - heightMm))) },
  below: dice.oneOf(
    'nothing',
    'nothing',
    'nothing',
    'bed',
    'sofa',
    'cot',
    'basin',
    'fireplace',
    'walkway',
    'unknown',
  ),
});

const plausibleBuilding = (country: Building['country'], dice: Dice): Building => ({
  ...(country && { country }),
  yearBuilt: dice.chance(0.9) ? 1880 + dice.below(145) : 'unknown',
  kind: dice.oneOf('house', 'house', 'house', 'flat'),
  tenure: dice.oneOf('owner', 'owner', 'owner', 'client', 'tenant'),
  consent: dice.chance(0.9) ? true : dice.oneOf<boolean | 'unknown'>(false, 'unknown'),
  heritage: dice.chance(0.05),
  ...(dice.chance(0.1) && { seismic: true }),
});
