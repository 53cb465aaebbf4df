import type { Item } from './items.ts';
import type { Place } from './settled.ts';

/** A fitting, or several of a kind, as far as its own words place it. */
export type Each = { item: Item; place: Place; count: number; face: 'this' | 'far' | undefined };

/** How many "one"s after a number of fittings are part of it. */
export function partsOf(each: readonly Each[], at: number): number {
  let parts = 0;
  for (let next = at + 1; each[next]?.item.as === 'one'; next += 1) parts += 1;
  return each[at]?.item.as === 'named' ? parts : 0;
}

/** "Two sockets 300 up, one at 500": what is said of all holds for each; so does what comes after "both". */
export function shareOut(each: Each[]): void {
  each.forEach((one, at) => {
    for (let part = at + 1; part <= at + partsOf(each, at); part += 1) {
      const place = each[part]?.place;
      if (place === undefined || one.place.muddled) continue;
      if (place.ys.length === 0 && one.place.ys.length === 1) place.ys.push(...one.place.ys);
      if (place.xs.length === 0 && one.place.xs.length === 1 && partsOf(each, at) >= one.count)
        place.xs.push(...one.place.xs);
    }
    for (let back = at - 1; back >= 0 && (one.place.sharedX || one.place.sharedY); back -= 1) {
      const before = each[back]?.place;
      if (before === undefined || (before.xs.length > 0 && before.ys.length > 0)) break;
      if (one.place.sharedY && before.ys.length === 0) before.ys.push(...one.place.ys.slice(0, 1));
      if (one.place.sharedX && before.xs.length === 0) before.xs.push(...one.place.xs.slice(0, 1));
    }
  });
}
