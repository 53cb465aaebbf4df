import type { JobSoFar } from '../../core/job.ts';
import type { Assumption } from '../../core/plan-shape.ts';
import type { DisplayUnit } from '../reading.ts';
import { describe } from './describe.ts';

/** An assumption in words, with its reason: "wall 100 mm thick: it was not given". */
export function assumptionText({ field, value, because }: Assumption, unit: DisplayUnit): string {
  const words = describe(partAt(field, value), unit).join(', ');
  return `${words === '' ? bare(field, value) : words}: ${because}`;
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
