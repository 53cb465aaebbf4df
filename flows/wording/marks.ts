import type { BattenLine, CrossCheck, Mark, Plan } from '../../core/plan-shape.ts';
import { type Millimetres, mm, sum } from '../../core/quantity.ts';
import type { DatumKind } from '../../core/wall/wall.ts';
import type { DisplayUnit } from '../reading.ts';
import { inUnit } from './in-unit.ts';
import { length } from './length.ts';
import { sentence } from './sentence.ts';
import { DATUM } from './words.ts';

/** Every mark from both ends and from the datum, each a check on the others: complete without a picture. */
export function marksText(
  plan: Plan,
  datum: DatumKind,
  unit: DisplayUnit,
  aboveFloorMm?: Millimetres,
): string {
  return [
    ...plan.marks.map((mark) => markText(mark, datum, unit, aboveFloorMm)),
    ...(plan.batten ? [battenText(plan.batten, datum, unit)] : []),
    ...plan.advice.filter(isHowToLevel),
    ...checksText(plan.crossChecks, unit),
  ].join('\n');
}

/** Said with the marks, which have to stand alone. */
export const isHowToLevel = (line: string): boolean => /^Measure (?:up|down) at \w+ only\b/.test(line);

function markText(mark: Mark, datum: DatumKind, unit: DisplayUnit, aboveFloorMm?: Millimetres): string {
  const across = `${length(mark.fromLeftMm, unit)} from the left, ${length(mark.fromRightMm, unit)} from the right`;
  const here =
    mark.upHereMm !== undefined && mark.upMm !== undefined && mark.upHereMm !== mark.upMm
      ? ` (a tape straight below it reads ${length(mark.upHereMm, unit)})`
      : '';
  const on = mark.on === undefined ? '' : `, ${inUnit(mark.on, unit)}`;
  return sentence(
    `Mark ${mark.id}: ${[across, ...heights(mark, datum, unit)].join(', ')}${here}${fromFloor(mark, unit, aboveFloorMm)}${on}`,
  );
}

function heights(mark: Mark, datum: DatumKind, unit: DisplayUnit): string[] {
  if (datum !== 'ceiling')
    return mark.upMm === undefined ? [] : [`${length(mark.upMm, unit)} up from ${DATUM[datum]}`];
  return [
    ...(mark.downMm === undefined ? [] : [`${length(mark.downMm, unit)} down from the ceiling`]),
    ...(mark.upMm === undefined ? [] : [`${length(mark.upMm, unit)} up from the floor`]),
  ];
}

/** Above a mantel or furniture the floor is the check, where its height is known. */
function fromFloor({ upMm }: Mark, unit: DisplayUnit, aboveFloorMm: Millimetres | undefined): string {
  if (upMm === undefined || aboveFloorMm === undefined || aboveFloorMm === 0) return '';
  return ` (${length(sum(upMm, aboveFloorMm), unit)} up from the floor)`;
}

function battenText(batten: BattenLine, datum: DatumKind, unit: DisplayUnit): string {
  const from = datum === 'ceiling' ? 'the floor' : DATUM[datum];
  return `Batten: from ${length(batten.fromLeftMm, unit)} to ${length(batten.toLeftMm, unit)} from the left, ${length(batten.upMm, unit)} up from ${from}.`;
}

/** A line for each tolerance. A mark from both ends comes to the wall's width, which is said once. */
function checksText(checks: readonly CrossCheck[], unit: DisplayUnit): string[] {
  const [both, others] = [checks.filter(isBothEnds), checks.filter((check) => !isBothEnds(check))];
  const all = [
    ...others.map(({ text, expectMm }) => `${text} ${length(expectMm, unit)}`),
    ...both
      .slice(0, 1)
      .map(({ expectMm }) => `each mark from the left plus from the right ${length(expectMm, unit)}`),
  ];
  const within = Math.max(...checks.map(({ toleranceMm }) => toleranceMm));
  return all.length === 0 ? [] : [`Check, each within ${length(mm(within), unit)}: ${all.join('; ')}.`];
}

const isBothEnds = ({ text }: CrossCheck): boolean => / from the left plus /.test(text);
