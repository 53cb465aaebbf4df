import type { Facts } from './facts.ts';

/** A finding that several rules ask for, reckoned once for each set of facts; the facts never change. */
export function once<T>(find: (facts: Facts) => T): (facts: Facts) => T {
  const found = new WeakMap<Facts, { readonly value: T }>();
  return (facts) => {
    const known = found.get(facts);
    if (known) return known.value;
    const value = find(facts);
    found.set(facts, { value });
    return value;
  };
}
