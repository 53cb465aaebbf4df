import type { Facts } from './facts.ts';

/**
 * A finding that several rules ask for, reckoned once for each set of facts; the facts never change, so
 * remembering the last is not seen from outside. A weak map for all of them costs more than it saves (tried).
 */
export function once<T>(find: (facts: Facts) => T): (facts: Facts) => T {
  return onceOf(find);
}

/** The same of anything that never changes. */
export function onceOf<Of, T>(find: (of: Of) => T): (of: Of) => T {
  let last: { readonly of: Of; readonly value: T } | null = null;
  return (of) => {
    if (last?.of !== of) last = { of, value: find(of) };
    return last.value;
  };
}
