import type { DatumKind } from '../../core/job.ts';
import type { BattenLine, CrossCheck, Mark, Plan } from '../../core/plan-shape.ts';
import type { DisplayUnit } from '../reading.ts';
import { inUnit } from './in-unit.ts';
import { length } from './length.ts';
import { sentence } from './sentence.ts';
import { DATUM } from './words.ts';

/** Every mark from both ends and from the datum, each a check on the others: complete without a picture. */
export function marksText(plan: Plan, datum: DatumKind, unit: DisplayUnit): string {
  return [
    ...plan.marks.map((mark) => markText(mark, datum, unit)),
    ...(plan.batten ? [battenText(plan.batten, datum, unit)] : []),
    ...plan.crossChecks.map((check) => checkText(check, unit)),
  ].join('\n');
}

function markText(mark: Mark, datum: DatumKind, unit: DisplayUnit): string {
  const across = `${length(mark.fromLeftMm, unit)} from the left, ${length(mark.fromRightMm, unit)} from the right`;
  const here =
    mark.upHereMm !== undefined && mark.upMm !== undefined && mark.upHereMm !== mark.upMm
      ? ` (a tape straight below it reads ${length(mark.upHereMm, unit)})`
      : '';
  const on = mark.on === undefined ? '' : `, ${inUnit(mark.on, unit)}`;
  return sentence(`Mark ${mark.id}: ${[across, ...heights(mark, datum, unit)].join(', ')}${here}${on}`);
}

function heights(mark: Mark, datum: DatumKind, unit: DisplayUnit): string[] {
  if (datum !== 'ceiling')
    return mark.upMm === undefined ? [] : [`${length(mark.upMm, unit)} up from ${DATUM[datum]}`];
  return [
    ...(mark.downMm === undefined ? [] : [`${length(mark.downMm, unit)} down from the ceiling`]),
    ...(mark.upMm === undefined ? [] : [`${length(mark.upMm, unit)} up from the floor`]),
  ];
}

function battenText(batten: BattenLine, datum: DatumKind, unit: DisplayUnit): string {
  const from = datum === 'ceiling' ? 'the floor' : DATUM[datum];
  return `Batten: from ${length(batten.fromLeftMm, unit)} to ${length(batten.toLeftMm, unit)} from the left, ${length(batten.upMm, unit)} up from ${from}.`;
}

function checkText(check: CrossCheck, unit: DisplayUnit): string {
  return `Check ${check.text}: ${length(check.expectMm, unit)}, within ${length(check.toleranceMm, 'mm')}.`;
}
