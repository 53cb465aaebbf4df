import { riseOfCord } from '../piece/cord.ts';
import type { PlacedHanger } from '../piece/hangers.ts';
import type { Hanging } from '../piece/piece.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { lengthText } from './length-text.ts';
import { NOISE, TAPE_READING } from './tolerance.ts';

/** The cord as it will hang. Millimetres. */
type Hangs = {
  riseMm: Millimetres;
  meanDropMm: Millimetres;
  spreadMm: Millimetres;
  hooksApartMm: Millimetres;
};

/** What is said with a cord: uneven rings, a hook that shows, a length that gives another rise than was measured. */
export function cordAdvice(
  cord: Extract<Hanging, { by: 'cord' }>,
  rings: readonly PlacedHanger[],
  { riseMm, meanDropMm, spreadMm, hooksApartMm }: Hangs,
): string[] {
  const advice: string[] = [];
  const uneven = mm(Math.abs((rings.at(-1)?.dropMm ?? 0) - (rings[0]?.dropMm ?? 0)));
  if (uneven > NOISE) {
    advice.push(
      `The rings are ${lengthText(uneven)} uneven: on a cord the frame finds its own level, so even them first.`,
    );
  }
  if (riseMm > meanDropMm) {
    advice.push(`The hook will show ${lengthText(mm(riseMm - meanDropMm))} above the frame.`);
  }
  if (cord.riseMm === undefined || cord.lengthMm === undefined) return advice;
  const byLength = riseOfCord(cord.lengthMm, spreadMm, hooksApartMm);
  if (byLength.ok && Math.abs(byLength.riseMm - riseMm) <= TAPE_READING.value) return advice;
  const would = byLength.ok ? `: by its length it would rise ${lengthText(byLength.riseMm)}` : '';
  advice.push(
    `The cord’s length and its rise don’t agree${would}. The rise as measured is used; measure it again.`,
  );
  return advice;
}
