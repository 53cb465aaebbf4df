import type { Plan } from '../plan-shape.ts';
import type { Basis } from '../sources.ts';

/** What went into a number, and where that came from: a field that was said or taken, a table, or another number. */
export type Input = {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly from: 'said' | 'assumed' | 'table' | 'computed';
  /** The job's field, the document, or the plan's path; what it was reckoned from where it has none. */
  readonly of: string;
};

/** One number of a plan: its formula in the names of its inputs, those, what came out, and why it is believed. */
export type Explained = {
  readonly ok: true;
  readonly path: string;
  readonly value: unknown;
  readonly formula: string;
  readonly inputs: readonly Input[];
  readonly result: string;
  readonly basis: readonly Basis[];
};

/** A path that leads to no number: what was expected instead, with one that would do. */
export type NoSuchNumber = {
  readonly ok: false;
  readonly path: string;
  readonly expected: string;
  readonly example: string;
};

/** A number being asked for: where it stands in its plan. `steps` are the path's parts, ids in place of places. */
export type Asked = {
  readonly plan: Plan;
  readonly path: string;
  readonly steps: readonly string[];
  readonly value: unknown;
};

/** How a number came about, before its name and its unit are put to it. */
export type Told = Pick<Explained, 'formula' | 'inputs' | 'basis'> & { readonly result?: string };

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Nmm$/, 'N mm'],
  [/Mm$/, 'mm'],
  [/Kg$/, 'kg'],
  [/Mpa$/, 'MPa'],
  [/Deg$/, 'degrees'],
  [/N$/, 'N'],
];

/** The unit in a field's name; a name in plain words is a length of the set-out, in mm. */
export function unitOf(name: string): string {
  const ends = UNITS.find(([pattern]) => pattern.test(name));
  if (ends) return ends[1];
  return name.includes(' ') ? 'mm' : '';
}

/** A number of the same plan as input. */
export function computed(name: string, value: number, path: string, unit = unitOf(name)): Input {
  return { name, value, unit, from: 'computed', of: path };
}
