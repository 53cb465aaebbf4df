import type { ChainLink, Plan } from '../plan-shape.ts';
import { type Asked, computed, type Told } from './explained.ts';

/** The numbers of the links between the piece and the wall. */
export function linkTold({ plan, steps }: Asked): Told | null {
  const [of, at, field] = steps;
  if (of === 'weakest') return weakestTold(plan);
  const link = of === 'chain' ? plan.chain?.[Number(at)] : undefined;
  if (!link) return null;
  const path = `chain[${at}]`;
  if (link.link === 'wall-fixing') return wallTold(plan, link, field);
  if (field === 'utilisation') {
    const inputs = [
      computed('actionN', link.actionN, `${path}.actionN`),
      computed('resistanceN', link.resistanceN ?? 0, `${path}.resistanceN`),
    ];
    return { formula: 'actionN / resistanceN', inputs, basis: link.basis };
  }
  if (field === 'actionN') return { ...loadOn(plan, link), basis: link.basis };
  const why = plan.why.find((each) => each.of === `strength of the ${link.name}`);
  return why ? { formula: why.formula, inputs: [], basis: link.basis } : null;
}

function weakestTold({ chain = [], weakest }: Plan): Told | null {
  const at = chain.findIndex((each) => each.link === weakest?.link && each.name === weakest.name);
  const link = chain[at];
  if (!link) return null;
  const inputs = [computed('utilisation', link.utilisation ?? 0, `chain[${at}].utilisation`)];
  return { formula: 'utilisation', inputs, basis: link.basis };
}

function wallTold({ fixing, why }: Plan, { basis }: ChainLink, field: string | undefined): Told | null {
  if (fixing === null) return null;
  const { utilisation, governing } = fixing;
  if (field === 'utilisation') {
    return { formula: field, inputs: [computed(field, utilisation, 'fixing.utilisation')], basis };
  }
  if (field === 'resistanceN') {
    const inputs = [computed(field, governing.resistanceN, 'fixing.governing.resistanceN')];
    return { formula: field, inputs, basis };
  }
  const shearN = why.find((each) => each.of === 'utilisation')?.inputs.shearN;
  return typeof shearN === 'number'
    ? { formula: 'shearN', inputs: [computed('shearN', shearN, 'actions.perMark')], basis }
    : null;
}

/** A cord and its rings bear its tension, a batten the whole weight, the rest what acts on the worst mark. */
function loadOn({ actions }: Plan, { link }: ChainLink): Pick<Told, 'formula' | 'inputs'> {
  const { cordN, weightN = 0, perMark = [] } = actions ?? {};
  if (link === 'batten') {
    return { formula: 'weightN', inputs: [computed('weightN', weightN, 'actions.weightN')] };
  }
  if (cordN !== undefined && link !== 'hook') {
    return { formula: 'cordN', inputs: [computed('cordN', cordN, 'actions.cordN')] };
  }
  const worst = perMark.reduce((most, each) => Math.max(most, each.shearN), 0);
  return { formula: 'shearN', inputs: [computed('shearN', worst, 'actions.perMark')] };
}
