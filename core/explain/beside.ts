import { ONE_DOES } from '../shopping.ts';
import { type Basis, basisOf } from '../sources.ts';
import { assumedBasis } from './assumed-basis.ts';
import { type Asked, computed, type Told } from './explained.ts';

/** What stands beside the fixing: what else would do, what was assumed, what to buy. */
export function besideTold(asked: Asked): Told | null {
  switch (asked.steps[0]) {
    case 'alternatives':
      return alternativeTold(asked);
    case 'assumptions':
      return assumptionTold(asked);
    case 'shopping':
      return shoppingTold(asked);
    default:
      return null;
  }
}

function alternativeTold({ plan, steps }: Asked): Told | null {
  const [, at, ...field] = steps;
  const other = plan.alternatives[Number(at)];
  const isOfIt = field.join('.') === 'utilisation' || field.join('.') === 'governing.resistanceN';
  if (!other?.governing || !isOfIt) return null;
  const { mode, resistanceN, basis } = other.governing;
  const path = `alternatives[${at}].governing`;
  return {
    formula:
      field[0] === 'utilisation'
        ? 'largest of action over resistance, over marks and modes, of that fastening'
        : 'the smallest of its failure modes, for load that stays for good',
    inputs: [
      { name: 'mode', value: mode, unit: '', from: 'computed', of: `${path}.mode` },
      ...(field[0] === 'utilisation' ? [computed('resistanceN', resistanceN, `${path}.resistanceN`)] : []),
      computed('weightN', plan.actions?.weightN ?? 0, 'actions.weightN'),
    ],
    basis: plan.basis.filter(({ id }) => basis.includes(id)),
  };
}

function assumptionTold({ plan, steps }: Asked): Told | null {
  const assumption = plan.assumptions[Number(steps[1])];
  if (!assumption) return null;
  const { field, because, ifWrong } = assumption;
  if (steps[2] === 'ifWrong' && ifWrong) {
    const other = {
      name: field,
      value: String(ifWrong.value),
      unit: '',
      from: 'assumed',
      of: field,
    } as const;
    return { formula: 'the job planned again with that', inputs: [other], basis: [assumedBasis(field)] };
  }
  if (steps[2] !== 'value') return null;
  return {
    formula: 'taken, since it was not said',
    inputs: [{ name: field, value: because, unit: '', from: 'assumed', of: field }],
    basis: [assumedBasis(field)],
  };
}

function shoppingTold({ plan, value }: Asked): Told | null {
  const { fixing, marks } = plan;
  if (fixing === null) return null;
  const counted: Basis[] = plan.why.find(({ of }) => of === 'number of fixings')?.basis.slice() ?? [];
  const basis = counted.length > 0 ? counted : [basisOf(ONE_DOES)];
  if (value === fixing.count) {
    return { formula: 'fixings', inputs: [computed('fixings', fixing.count, 'fixing.count')], basis };
  }
  if (value === marks.length) {
    return { formula: 'marks', inputs: [computed('marks', marks.length, 'marks')], basis };
  }
  if (fixing.hangerScrews !== undefined && value === fixing.hangerScrews) {
    const screws = computed('hanger screws', fixing.hangerScrews, 'fixing.hangerScrews');
    return { formula: 'hanger screws', inputs: [screws], basis };
  }
  return { formula: '1', inputs: [], basis: [basisOf(ONE_DOES)] };
}
