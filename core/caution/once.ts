import type { Facts } from './facts.ts';

/**
 * A finding that several rules ask for, reckoned once for each set of facts; the facts never change, so
 * remembering the last is not seen from outside. A weak map for all of them costs more than it saves (tried).
 */
export function once<T>(find: (facts: Facts) => T): (facts: Facts) => T {
  let last: { readonly facts: Facts; readonly value: T } | null = null;
  return (facts) => {
    if (last?.facts !== facts) last = { facts, value: find(facts) };
    return last.value;
  };
}
