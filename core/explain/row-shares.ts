import type { Mark, Plan } from '../plan-shape.ts';
import { computed, type Input, type Told } from './explained.ts';

/** The share of the weight a mark carries: by the lever rule, under a cord, or along a stiff batten. */
export function sharesOfRow(plan: Plan, at: number): Told | null {
  const { actions, marks, fixing } = plan;
  const why = plan.why.find(({ of }) => of === 'load on each mark');
  const [first, last, mark] = [marks[0], marks.at(-1), marks[at]];
  if (!why || !actions || !first || !last || !mark) return null;
  const weight = computed('weightN', actions.weightN, 'actions.weightN');
  const told = (formula: string, ...inputs: Input[]): Told => ({ formula, inputs, basis: why.basis });
  const isOuter = at === 0 || at === marks.length - 1;
  if (marks.length === 1) return told('weightN', weight);
  if (actions.cordN !== undefined) {
    const angle = plan.why.find(({ of }) => of === 'cord tension')?.inputs.legAngleDeg;
    return isOuter
      ? told(
          'root((weightN / 2)^2 + (cordN x (1 - cos(legAngleDeg)))^2)',
          ...[weight, computed('cordN', actions.cordN, 'actions.cordN')],
          computed('legAngleDeg', Number(angle), 'cord angle'),
        )
      : told('0 x weightN', weight);
  }
  const com = computed('massFromLeftEndMm', Number(why.inputs.massFromLeftEndMm), 'piece, frame.leftMm');
  const isStiff = why.inputs.by === 'batten' && fixing?.fastener !== 'batten-screws';
  if (isStiff) return told(stiffFormula(marks), weight, com, ...marks.map(placeOf));
  if (!isOuter) return told('0 x weightN', weight);
  if (first.fromLeftMm === last.fromLeftMm) {
    return why.inputs.by === 'batten'
      ? told('weightN / screws', weight, computed('screws', marks.length, 'marks'))
      : told('weightN', weight);
  }
  const [a, z] = [placeOf(first), placeOf(last)];
  const arm = at === 0 ? `(${z.name} - massFromLeftEndMm)` : `(massFromLeftEndMm - ${a.name})`;
  const share = `max(0, min(weightN, weightN x ${arm} / (${z.name} - ${a.name})))`;
  return told(share, weight, com, a, z);

  /** W / n + W e x / sum(x^2), x from the row's middle. */
  function stiffFormula(row: readonly Mark[]): string {
    const middle = `((${row.map((each) => placeOf(each).name).join(' + ')}) / ${row.length})`;
    const x = (each: Mark): string => `(${placeOf(each).name} - ${middle})`;
    const squares = row.map((each) => `${x(each)}^2`).join(' + ');
    const off = `(massFromLeftEndMm - ${middle})`;
    return mark ? `weightN / ${row.length} + weightN x ${off} x ${x(mark)} / (${squares})` : '';
  }
}

const placeOf = ({ id, fromLeftMm }: Mark): Input =>
  computed(`mark ${id} across`, fromLeftMm, `marks.${id}.fromLeftMm`);
