import type { JobSoFar } from '../../core/job.ts';
import type { Assumption } from '../../core/plan-shape.ts';
import type { DisplayUnit } from '../reading.ts';
import { describe } from './describe.ts';
import { inUnit } from './in-unit.ts';

/** An assumption in words, with its reason: "wall 100 mm thick: it was not given". */
export function assumptionText(assumption: Assumption, unit: DisplayUnit): string {
  return `${inWords(assumption, unit)}: ${inUnit(assumption.because, unit)}`;
}

function inWords({ field, value }: Assumption, unit: DisplayUnit): string {
  if (field === 'wall.studs.density') return 'studs of light softwood';
  return describe(partAt(field, value), unit).join(', ') || bare(field, value);
}

/** What was assumed, with each reason: for who asks. */
export function assumedText(assumptions: readonly Assumption[], unit: DisplayUnit): string {
  if (assumptions.length === 0) return '';
  return ['Assumed:', ...assumptions.map((each) => `- ${assumptionText(each, unit)}`)].join('\n');
}

/** The same in a line, for the summary: what was told is not known stands there already, and the floor goes without saying. */
export function assumedBriefly(assumptions: readonly Assumption[], unit: DisplayUnit): string {
  const matter = assumptions.filter(({ field, value }) => value !== 'unknown' && field !== 'wall.datum.kind');
  return matter.map((each) => inWords(each, unit)).join('; ');
}

/** The part of a job with one field set: `wall.thicknessMm`, 100 gives `{ wall: { thicknessMm: 100 } }`. */
function partAt(field: string, value: unknown): JobSoFar {
  return field.split('.').reduceRight<unknown>((inner, key) => ({ [key]: inner }), value) as JobSoFar;
}

/** A field nobody has words for yet: its own name, spelled out. */
function bare(field: string, value: unknown): string {
  if (value === 'unknown' || typeof value === 'object') return spelled(field);
  const unit = field.endsWith('Mm') ? ' mm' : field.endsWith('Kg') ? ' kg' : field.endsWith('N') ? ' N' : '';
  return `${spelled(field)} ${String(value)}${unit}`;
}

function spelled(field: string): string {
  const name = field.split('.').at(-1) ?? field;
  return name
    .replace(/(Mm|Kg|N)$/, '')
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase();
}
