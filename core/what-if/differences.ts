import type { Fixing } from '../fixing/fixing-shape.ts';
import type { Difference } from '../if-wrong.ts';
import type { Plan } from '../plan-shape.ts';

/** What two plans differ in that a person would act on, and how much that matters: verdict, fixing, warning, figure. */
export type Compared = { readonly changes: readonly Difference[]; readonly matters: number };

/** More than any sum of what stands below it. */
const MATTERS = { verdict: 1e6, harder: 1e5, fixing: 1e4, warning: 1e2, depth: 1 / 100 } as const;

const OF_THE_FIXING: readonly (readonly [string, (fixing: Fixing) => unknown])[] = [
  ['fixing.fastener', ({ fastener }) => fastener],
  ['fixing.count', ({ count }) => count],
  ['fixing.plug.diameterMm', ({ plug }) => plug?.diameterMm],
  ['fixing.plug.lengthMm', ({ plug }) => plug?.lengthMm],
  ['fixing.screw.gauge', ({ screw }) => screw?.gauge],
  ['fixing.screw.diameterMm', ({ screw }) => screw?.diameterMm],
  ['fixing.screw.lengthMm', ({ screw }) => screw?.lengthMm],
];

/** Every difference that matters from one plan to another, in the order it matters. */
export function compared(was: Plan, would: Plan): Compared {
  const changes: Difference[] = [];
  let matters = 0;
  const differ = (path: string, from: unknown, to: unknown, weight: number): void => {
    if (from === to) return;
    changes.push({ path, from: from ?? null, to: to ?? null });
    matters += weight;
  };
  differ('verdict', was.verdict, would.verdict, MATTERS.verdict);
  const [before, after] = [was.fixing, would.fixing];
  if (before && after) {
    for (const [path, read] of OF_THE_FIXING) differ(path, read(before), read(after), MATTERS.fixing);
    // Of two ways to be wrong, the one that needs more counts: a longer screw, a deeper hole.
    if ((after.screw?.lengthMm ?? 0) > (before.screw?.lengthMm ?? 0)) matters += MATTERS.harder;
    const [used, use] = [before.utilisation, after.utilisation];
    differ('fixing.utilisation', used, use, Math.abs(use - used));
    const [deep, depth] = [before.bit.depthMm, after.bit.depthMm];
    differ('fixing.bit.depthMm', deep, depth, Math.abs(depth - deep) * MATTERS.depth);
  }
  for (const mark of would.marks) {
    const old = was.marks.find(({ id }) => id === mark.id);
    if (old) differ(`marks.${mark.id}.upMm`, old.upMm, mark.upMm, MATTERS.warning);
    if (old) differ(`marks.${mark.id}.fromLeftMm`, old.fromLeftMm, mark.fromLeftMm, MATTERS.warning);
  }
  for (const id of new Set([...warnsOf(was), ...warnsOf(would)])) {
    const said = (plan: Plan): string | null => (warnsOf(plan).includes(id) ? 'said' : null);
    differ(`cautions.${id}`, said(was), said(would), MATTERS.warning);
  }
  return { changes, matters };
}

const warnsOf = ({ cautions }: Plan): string[] =>
  cautions.filter(({ severity }) => severity !== 'note').map(({ id }) => id);
