import { readFileSync } from 'node:fs';

// biome-ignore lint/suspicious/noExplicitAny: the shape of a case is its topic's, and the file is checked by eye
type Figures = Record<string, any>;

/** A published case. What is in `inputs` and `expected` differs from topic to topic. */
export type Case = {
  id: string;
  topic: string;
  source: string;
  clause: string;
  inputs: Figures;
  expected: Figures;
  tolerance: number;
  basis: string;
};

const ALL: Case[] = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/safety-cases.json', import.meta.url), 'utf8'),
);

/** The cases with these ids, in this order, each with a title that names its source and standing. */
export function cases(...ids: readonly string[]): (Case & { title: string })[] {
  return ids.map((id) => {
    const found = ALL.find((each) => each.id === id);
    if (!found) throw new Error(`no case ${id}`);
    return { ...found, title: `${id}, ${found.topic} (${found.source}; ${found.basis})` };
  });
}

/** Every published id. */
export const allIds: readonly string[] = ALL.map((each) => each.id);
