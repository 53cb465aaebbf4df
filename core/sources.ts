import { SOURCES, type SourceId } from './bibliography.ts';

/** How well a number is known. `C`, `D`, `M`, `P`, `S` in older notes are the last five words here. */
export type Standing =
  | 'read'
  | 'read-secondary'
  | 'derived'
  | 'from-memory'
  | 'common-practice'
  | 'our-choice';

/** A number that carries where it comes from. `at` is the clause, table or page. */
export type Sourced<T> = {
  readonly value: T;
  readonly source: SourceId;
  readonly at: string;
  readonly standing: Standing;
  readonly note?: string;
};

/** One entry of a plan's or a verdict's bibliography. */
export type Basis = {
  readonly id: SourceId;
  readonly title: string;
  readonly at: string;
  readonly standing: Standing;
};

/** Makes a sourced record; a shorthand that keeps tables narrow. */
export function sourced<T>(
  value: T,
  source: SourceId,
  at: string,
  standing: Standing,
  note?: string,
): Sourced<T> {
  return note === undefined ? { value, source, at, standing } : { value, source, at, standing, note };
}

/** Entries already made, so that a record cited in every plan is one object in all of them. */
const ENTRIES = new WeakMap<object, Basis>();

/** The bibliography entry of a sourced record; the same object for the same record. */
export function basisOf(record: Omit<Sourced<unknown>, 'value'>): Basis {
  const made = ENTRIES.get(record);
  if (made) return made;
  const { source, at, standing } = record;
  const entry: Basis = { id: source, title: SOURCES[source].title, at, standing };
  ENTRIES.set(record, entry);
  return entry;
}

/** Each document and place once, in the order first cited. */
export function uniqueBases(bases: readonly Basis[]): Basis[] {
  const unique: Basis[] = [];
  for (const basis of new Set(bases)) {
    if (!unique.some(({ id, at }) => id === basis.id && at === basis.at)) unique.push(basis);
  }
  return unique;
}
