import type { Fixing } from '../fixing/fixing-shape.ts';
import type { Job } from '../job.ts';
import { shoppingEntries } from '../shopping.ts';

type Bought = { fixing: Fixing; marks: number; job: Job };

/** What to buy for several pieces: fasteners added up, and one of what serves them all. */
export function groupShopping(pieces: readonly Bought[]): { item: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { fixing, marks, job } of pieces) {
    for (const { item, count, shared } of shoppingEntries(fixing, marks, job)) {
      const before = counts.get(item) ?? 0;
      counts.set(item, shared ? Math.max(before, count) : before + count);
    }
  }
  return [...counts].map(([item, count]) => ({ item, count }));
}
