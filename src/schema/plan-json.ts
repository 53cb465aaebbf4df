import type { Caution, Plan } from '../../core/plan-shape.ts';

/** A caution on the wire: its basis are ids of the plan's own bibliography. */
export type CautionJson = Omit<Caution, 'basis'> & { basis: string[] };

/** A plan on the wire (contract, section 5), as the doors send it and the ledger logs it. */
export type PlanJson = Omit<Plan, 'cautions'> & { cautions: CautionJson[] };

export function cautionJson(caution: Caution): CautionJson {
  return { ...caution, basis: [...new Set(caution.basis.map((each) => each.id))] };
}

export function planJson(plan: Plan): PlanJson {
  return { ...plan, cautions: plan.cautions.map(cautionJson) };
}
