import type { Country } from '../job.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { type Basis, basisOf, type Sourced, sourced } from '../sources.ts';
import { GAUGES, MODULE_AU } from './courses.ts';
import type { BaseMaterial } from './wall.ts';

/** Unit and joint together: up the wall and along it. Millimetres. */
export type Format = { gaugeMm: Millimetres; lengthMm: Millimetres; basis: readonly Basis[] };

const MODULE_UK = sourced(mm(225), 'EN771-1', 'co-ordinating size 225 x 112.5 x 75', 'read');
const MODULE_US = sourced(mm(8 * MM_PER_INCH), 'BIA-TN10', 'modular: 7-5/8 in and its joint', 'read');

type Block = Sourced<{ up: Millimetres; along: Millimetres }>;
const block = (up: number, along: number, at: string): Block =>
  sourced({ up: mm(up), along: mm(along) }, 'common-practice', `fixing 8: block ${at}`, 'from-memory');
const BLOCKS = {
  AU: block(200, 400, '390 x 190, joint 10'),
  UK: block(225, 450, '440 x 215, joint 10'),
  US: block(8 * MM_PER_INCH, 16 * MM_PER_INCH, '15-5/8 x 7-5/8 in, joint 3/8 in'),
};

/** German bricks come in two heights, so that only measuring tells: normal and thin format with a bed of 12. */
const GERMAN = sourced(
  { normal: mm(250 / 3), thin: mm(62.5) },
  'DIN105',
  'NF 71 and DF 52 high, bed 12',
  'from-memory',
);

/** Whose formats a country builds with; null where it has none of the three, or several. */
function family(country: Country | 'unknown' | undefined): 'AU' | 'UK' | 'US' | null {
  if (country === 'AU' || country === 'NZ') return 'AU';
  if (country === 'UK' || country === 'IE') return 'UK';
  return country === 'US' || country === 'CA' ? 'US' : null;
}

/** Format of a country's bricks or blocks (fixing 8), or null where the country does not tell it. */
export function formatOf(base: BaseMaterial, country: Country | 'unknown' | undefined): Format | null {
  const from = family(country);
  if (from === null) return null;
  if (base === 'concrete-block') {
    const { up, along } = BLOCKS[from].value;
    return { gaugeMm: up, lengthMm: along, basis: [basisOf(BLOCKS[from])] };
  }
  if (base !== 'clay-brick') return null;
  const module = { AU: MODULE_AU, UK: MODULE_UK, US: MODULE_US }[from];
  return {
    gaugeMm: GAUGES[from].value,
    lengthMm: module.value,
    basis: [basisOf(GAUGES[from]), basisOf(module)],
  };
}

/** The course heights a brick wall may have where the country leaves two; none where it leaves one or any. */
export function eitherGauge(
  base: BaseMaterial,
  country: Country | 'unknown' | undefined,
): { gaugesMm: Millimetres[]; basis: readonly Basis[] } | null {
  if (base !== 'clay-brick' || country !== 'EU') return null;
  return { gaugesMm: [GERMAN.value.normal, GERMAN.value.thin], basis: [basisOf(GERMAN)] };
}
