import type { Arrange, GroupJob } from '../../../../core/group-job.ts';
import type { Place } from '../../../../core/job.ts';
import { setOutGroup } from '../../../../core/layout/group/group-set-out.ts';
import type { Piece } from '../../../../core/piece/piece.ts';
import type { Frame } from '../../../../core/plan-shape.ts';
import { kg, mm } from '../../../../core/quantity.ts';
import type { Wall } from '../../../../core/wall/wall.ts';

/** An invented picture on two rings, 50 in from each side and so far down from its top. */
export function pictureOf(widthMm: number, heightMm: number, fromTopMm = 60, massKg = 5): Piece {
  return {
    kind: 'picture',
    widthMm: mm(widthMm),
    heightMm: mm(heightMm),
    massKg: kg(massKg),
    hanging: {
      by: 'rings',
      points: [
        { fromLeftMm: mm(50), fromTopMm: mm(fromTopMm) },
        { fromRightMm: mm(50), fromTopMm: mm(fromTopMm) },
      ],
    },
  };
}

type Change = { wall?: Partial<Wall>; place?: Partial<Place> };

/** Several pieces on a plain wall, their middle at 1450: invented. */
export function groupOf(
  wallMm: number,
  pieces: readonly Piece[],
  arrange: Arrange,
  change: Change = {},
): GroupJob {
  return {
    building: { country: 'AU', yearBuilt: 2005, kind: 'house', tenure: 'owner' },
    pieces,
    arrange,
    wall: {
      baseMaterial: 'clay-brick',
      cores: 'solid',
      thicknessMm: mm(230),
      widthMm: mm(wallMm),
      heightMm: mm(2700),
      accessories: [],
      ...change.wall,
    },
    place: {
      across: { by: 'centre' },
      up: { by: 'centre-at', mm: mm(1450) },
      below: 'nothing',
      ...change.place,
    },
    crew: { people: 2, dustExtraction: true },
  };
}

/** Frames of a group that fits, in order; the reason of the first piece where it does not. */
export function framesOf(job: GroupJob): Frame[] {
  const group = setOutGroup(job);
  const bad = group.pieces.flatMap(({ layout }) => (layout.ok ? [] : [layout.text]));
  if (!group.ok) throw new Error(bad[0] ?? 'no reason given');
  return group.pieces.map(({ layout }) => layout.frame);
}

/** Why a group can't be set out: id, words and the number it is over by. */
export function misfitOf(job: GroupJob) {
  const group = setOutGroup(job);
  return group.pieces.flatMap(({ layout }) => (layout.ok ? [] : [layout]))[0];
}
