import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { comOf } from '../../piece/centre-of-mass.ts';
import { cordTension, hookSidePull, inwardPull } from '../../piece/cord-tension.ts';
import { massOf } from '../../piece/mass.ts';
import { shareOf } from '../../piece/share.ts';
import type { Actions, Assumption, Mark, PerMark } from '../../plan-shape.ts';
import {
  type Kilograms,
  least,
  type Millimetres,
  mm,
  most,
  type Newtons,
  newtons,
  weightOf,
} from '../../quantity.ts';
import type { Basis } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { outwardPull } from './outward-pull.ts';

/** What the piece does to the wall, and what was assumed to know it. */
export type Load = {
  readonly actions: Actions;
  readonly massKg: Kilograms;
  /** From the middle of the frame to the centre of mass, right positive. */
  readonly comOffCentreMm: Millimetres;
  readonly comFromLeftEndMm: Millimetres;
  readonly comFromWallMm: Millimetres;
  readonly massWhy: Why;
  readonly assumptions: readonly Assumption[];
  readonly basis: readonly Basis[];
};

/** Actions at each mark, without any factor: shares of the weight, outward pull, a cord's pull inward. Newtons. */
export function loadOf(job: Job, setOut: SetOut): Load {
  const { piece } = job;
  const mass = massOf(piece);
  const com = comOf(piece);
  const weightN = weightOf(mass.massKg);
  const comX = mm(setOut.frame.leftMm + com.fromLeftMm);
  const cord = piece.hanging.by === 'cord' ? setOut.cord : undefined;
  const shears = cord
    ? cordShears(weightN, setOut, cord.legAngle)
    : shares(weightN, setOut.marks, comX, piece.hanging.by);
  const perMark = setOut.marks.map((mark, at): PerMark => {
    const shearN = shears[at] ?? newtons(0);
    const carries = cord
      ? shearN > 0
        ? newtons(weightN / carriers(setOut.marks.length))
        : newtons(0)
      : shearN;
    return {
      id: mark.id,
      shearN,
      tensionN: outwardPull(carries, com.fromWallMm, aboveBottom(job, setOut, mark)),
    };
  });
  return {
    actions: {
      weightN,
      perMark,
      ...(cord && {
        cordN: cordTension(weightN, cord.legAngle),
        inwardN: inwardPull(weightN, cord.legAngle),
      }),
    },
    massKg: mass.massKg,
    comOffCentreMm: mm(com.fromLeftMm - piece.widthMm / 2),
    comFromLeftEndMm: comX,
    comFromWallMm: com.fromWallMm,
    massWhy: mass.why,
    assumptions: com.assumptions,
    basis: [...mass.basis, ...com.basis],
  };
}

/** One hanger carries all; of two or more in a row, the outer two. */
const carriers = (marks: number): number => Math.min(marks, 2);

/** Rigid hangers: the outer two share by the lever rule; a ring can't push down, so none takes more than all or less than none. */
function shares(weight: Newtons, marks: readonly Mark[], comX: Millimetres, by: string): Newtons[] {
  const first = marks[0];
  const last = marks.at(-1);
  if (!first || !last) return [];
  if (by === 'batten') return marks.map(() => newtons(weight / marks.length));
  if (marks.length === 1) return [weight];
  const upright = first.fromLeftMm === last.fromLeftMm;
  const share = shareOf(weight, first.fromLeftMm, last.fromLeftMm, comX);
  const clamp = (part: Newtons): Newtons => most(newtons(0), least(weight, part));
  const left = upright ? weight : clamp(share.left);
  const right = upright ? weight : clamp(share.right);
  return marks.map((_, at) => (at === 0 ? left : at === marks.length - 1 ? right : newtons(0)));
}

/** Under one cord only the outer hooks carry: half the weight down and the cord's pull inward, together. */
function cordShears(
  weight: Newtons,
  { marks }: SetOut,
  legAngle: NonNullable<SetOut['cord']>['legAngle'],
): Newtons[] {
  if (marks.length === 1) return [weight];
  const side = hookSidePull(cordTension(weight, legAngle), legAngle);
  const outer = newtons(Math.hypot(weight / 2, side));
  return marks.map((_, at) => (at === 0 || at === marks.length - 1 ? outer : newtons(0)));
}

/** From the bottom edge up to a mark; from the piece's own figures where the mark has no height. */
export function aboveBottom(job: Job, { frame }: SetOut, mark: Mark | undefined): Millimetres {
  const up = mark?.upMm === undefined ? Number.NaN : mark.upMm - frame.bottomMm;
  if (up > 0) return mm(up);
  const { piece, place } = job;
  // Under a ceiling of unknown height a mark is known by its drop, and so is the top of the frame.
  if (mark?.downMm !== undefined && place.up.by === 'below-ceiling') {
    const below = piece.heightMm - (mark.downMm - place.up.mm);
    if (below > 0) return mm(below);
  }
  const drop =
    piece.hanging.by === 'batten' ? piece.hanging.fromTopMm : (piece.hanging.points[0]?.fromTopMm ?? 0);
  return mm(Math.max(piece.heightMm - drop, 1));
}
