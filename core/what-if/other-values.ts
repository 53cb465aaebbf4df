import { type Sourced, sourced } from '../sources.ts';

type Others = Sourced<readonly unknown[]>;

const usual = (values: readonly unknown[], at: string): Others =>
  sourced(values, 'common-practice', at, 'common-practice');
const chosen = (values: readonly unknown[], at: string): Others =>
  sourced(values, 'our-choice', at, 'our-choice');

/**
 * What else a field may well be that nobody gave. The yes-or-no gates are not here: that they would stop the job is
 * said with each of them, and there is no number to work out again.
 */
const OTHER_VALUES: Readonly<Record<string, Others>> = {
  'wall.finish.thicknessMm': usual([10, 20, 25], 'two-coat plaster 10 to 20, more over an uneven wall'),
  'wall.boardMm': usual([9.5, 12.5, 15], 'sheets sold: 9.5 or 10, 12.5 or 13, 15 or 16'),
  'wall.voidMm': usual([10, 25, 60], 'gap on dabs 10 to 25; clear between studs 60 or more'),
  'wall.thicknessMm': usual([75, 110, 230], 'block partition, half brick, whole brick'),
  'wall.cores': chosen(['solid', 'perforated', 'hollow'], 'a unit is one of the three'),
  'wall.studs.widthMm': usual([35, 38, 45], 'studs sold: 35, 38, 45'),
  'piece.depthMm': usual([20, 60], 'a flat frame 20, a boxed one 60'),
  'piece.hanging.standOffMm': usual([2, 15], 'a flat ring 2, a strap over a moulding 15'),
  'piece.hanging.seatToScrewMm': chosen([10], 'a ring that bears 10 below the screw'),
  'piece.hanging.hooksApartMm': chosen([100, 200], 'two hooks a hand or two apart'),
  'building.country': chosen(['AU', 'UK', 'US'], 'the three whose shelves and routes differ'),
  'crew.people': chosen([2], 'two lift'),
};

/** Other values of a field, other than the one taken; none where being wrong changes no number. */
export function otherValues(field: string, taken: unknown): readonly unknown[] {
  const named = field.replace(/^pieces\.\d+\./, 'piece.');
  return (OTHER_VALUES[named]?.value ?? []).filter((value) => value !== taken);
}
