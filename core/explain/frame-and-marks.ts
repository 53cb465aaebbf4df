import { GEOMETRY } from '../layout/tolerance.ts';
import type { Mark, Plan } from '../plan-shape.ts';
import { mm } from '../quantity.ts';
import { basisOf } from '../sources.ts';
import { type Asked, computed, type Input, type Told } from './explained.ts';
import { givenOrTaken, inputsOf } from './origins.ts';

const basis = [basisOf(GEOMETRY)];
const tenth = (value: number): number => Math.round(value * 10) / 10;

/** A length that the job gives, as this plan has it. */
const given = (plan: Plan, name: string, value: number, field: string): Input => ({
  ...{ name, value: tenth(value), unit: 'mm' },
  ...givenOrTaken(plan, field),
});

/** The far edges of the frame and a mark's distances from the other end: each one step from a number beside it. */
export function frameTold({ plan, steps }: Asked): Told | null {
  const [part, one, other] = steps;
  if (part === 'frame' && plan.frame !== null && (one === 'rightMm' || one === 'topMm')) {
    const { leftMm, rightMm, bottomMm, topMm } = plan.frame;
    return one === 'rightMm'
      ? summed(
          computed('frame left edge', leftMm, 'frame.leftMm'),
          given(plan, 'piece width', rightMm - leftMm, 'piece.widthMm'),
        )
      : summed(
          computed('frame bottom edge', bottomMm, 'frame.bottomMm'),
          given(plan, 'piece height', topMm - bottomMm, 'piece.heightMm'),
        );
  }
  if (part === 'batten' && one === 'toLeftMm' && plan.batten) {
    const { fromLeftMm, toLeftMm } = plan.batten;
    return summed(
      computed('batten left end', fromLeftMm, 'batten.fromLeftMm'),
      given(plan, 'batten length', toLeftMm - fromLeftMm, 'piece.hanging.lengthMm'),
    );
  }
  const mark = part === 'marks' ? plan.marks.find(({ id }) => id === one) : undefined;
  if (mark && other === 'fromRightMm') {
    const width = given(plan, 'wall width', mark.fromLeftMm + mark.fromRightMm, 'wall.widthMm');
    return less(width, computed(`mark ${mark.id} across`, mark.fromLeftMm, `marks.${mark.id}.fromLeftMm`));
  }
  if (mark && other === 'upHereMm') return atTheFirst(plan, mark);
  return mark && other === 'downMm' ? downTold(plan, mark) : null;
}

/** Heights are measured at the first mark, where the tape and the level line agree; the others have a why. */
function atTheFirst({ marks }: Plan, { id, upMm }: Mark): Told | null {
  if (id !== marks[0]?.id || upMm === undefined) return null;
  const up = computed(`mark ${id} up`, upMm, `marks.${id}.upMm`);
  return { formula: up.name, inputs: [up], basis };
}

/** Down from the ceiling: its height less the mark's, or what the mark lies below it where that is all one knows. */
function downTold(plan: Plan, { id, upMm, downMm = mm(0) }: Mark): Told | null {
  if (upMm !== undefined) {
    const height = given(plan, 'wall height', upMm + downMm, 'wall.heightMm');
    return less(height, computed(`mark ${id} up`, upMm, `marks.${id}.upMm`));
  }
  const why = plan.why.find(({ of }) => of === `mark ${id} up`);
  return why ? { formula: `0 - (${why.formula})`, inputs: inputsOf(plan, why), basis } : null;
}

const summed = (one: Input, other: Input): Told => ({
  ...{ formula: `${one.name} + ${other.name}`, inputs: [one, other], basis },
});
const less = (one: Input, other: Input): Told => ({
  ...{ formula: `${one.name} - ${other.name}`, inputs: [one, other], basis },
});
