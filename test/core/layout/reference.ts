import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

/** A worked case of the reference, kept beside the tests as it was handed over. */
export type ReferenceCase = {
  id: string;
  topic: string;
  source: string;
  clause: string;
  basis: string;
  // biome-ignore lint/suspicious/noExplicitAny: each topic has fields of its own, read by the row that answers it.
  inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  expected: any;
  tolerance: number | { type: 'absolute' | 'relative' | 'exact'; value?: number };
};

const read = (name: string): ReferenceCase[] =>
  JSON.parse(readFileSync(new URL(`../../fixtures/reference/${name}.json`, import.meta.url), 'utf8'));

export const REFERENCE: readonly ReferenceCase[] = [...read('safety-cases'), ...read('fixing-cases')];

/** Printed title of a case: id, what it is about, who says so, and how well that is known. */
export const titleOf = (each: ReferenceCase): string =>
  `${each.id}: ${each.topic} (${each.source}; ${each.clause}; ${each.basis})`;

/** Compares within the case's own tolerance, and a hair for decimals; a value with a unit is read for its figure. */
export function agrees(each: ReferenceCase, actual: number, expected: number | { value: number }): void {
  const wanted = typeof expected === 'object' ? expected.value : expected;
  const { tolerance } = each;
  const allowed =
    typeof tolerance === 'number'
      ? tolerance
      : tolerance.type === 'exact'
        ? 0
        : (tolerance.value ?? 0) * (tolerance.type === 'relative' ? Math.abs(wanted) : 1);
  expect(Math.abs(actual - wanted), `${each.id}: ${actual} against ${wanted}`).toBeLessThanOrEqual(
    allowed + 1e-9,
  );
}
