/** How well a number is known. `C`, `D`, `M`, `P`, `S` in older notes are the last five words here. */
export type Standing =
  | 'read'
  | 'read-secondary'
  | 'derived'
  | 'from-memory'
  | 'common-practice'
  | 'our-choice';

/** A document, or the honest lack of one. */
export type Source = { readonly title: string; readonly issuer: string };

/** The bibliography: id with edition, title, issuer. Every id is cited somewhere, and each citation has its place. */
export const SOURCES = {
  'common-practice': { title: 'Common practice of installers, no source', issuer: 'the trade' },
  'our-choice': { title: 'A declared choice of this project, no source', issuer: 'wallhand' },
  statics: { title: 'Statics and plane geometry, textbook', issuer: 'derived' },
  'EN1992-4:2018': {
    title: 'Eurocode 2, part 4: design of fastenings for use in concrete',
    issuer: 'CEN',
  },
  'Vision-Res-30(10):1990': {
    title: 'Recognition of stimulus orientation, Vision Research 30(10), 1990, pages 1429 to 1437',
    issuer: 'a journal of vision research',
  },
  'NHBC-2020': { title: 'NHBC Standards 2020', issuer: 'NHBC' },
  'EN1995-1-1': { title: 'Eurocode 5: design of timber structures, part 1-1', issuer: 'CEN' },
  'ASME-B18.6.1': { title: 'Wood screws, inch series (diameters as in NDS-2018 appendix L)', issuer: 'ASME' },
  'EN572-1': { title: 'Glass in building: basic soda-lime silicate glass products, part 1', issuer: 'CEN' },
  'EN1991-1-1:2002': { title: 'Eurocode 1: actions on structures, part 1-1: densities', issuer: 'CEN' },
  'EN12385-4': { title: 'Steel wire ropes: stranded ropes for general lifting', issuer: 'CEN' },
  '49CFR393.108': {
    title: 'Protection against shifting cargo: working load limits',
    issuer: 'United States',
  },
  '2006/42/EC': { title: 'Machinery directive, annex I', issuer: 'European Union' },
  'AS/NZS4455.1': {
    title: 'Masonry units, pavers and flags, part 1: masonry units',
    issuer: 'Standards Australia',
  },
  'EN771-1': { title: 'Specification for masonry units, part 1: clay masonry units', issuer: 'CEN' },
  'BIA-TN10': {
    title: 'Technical Note 10: dimensioning and estimating brick masonry',
    issuer: 'Brick Industry Association',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;

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

/** The bibliography entry of a sourced record. */
export function basisOf(record: Omit<Sourced<unknown>, 'value'>): Basis {
  return {
    id: record.source,
    title: SOURCES[record.source].title,
    at: record.at,
    standing: record.standing,
  };
}

/** Each document and place once, in the order first cited. */
export function uniqueBases(bases: readonly Basis[]): Basis[] {
  const seen = new Map<string, Basis>();
  for (const basis of bases) {
    const key = `${basis.id} ${basis.at}`;
    if (!seen.has(key)) seen.set(key, basis);
  }
  return [...seen.values()];
}
