import { type Millimetres, mm } from '../../quantity.ts';
import type { Gauge } from '../steel/screw-sizes.ts';
import { type HeadWanted, stockedScrew } from '../stocked-lengths.ts';
import type { BoardPlace } from './board-place.ts';

/** A stocked screw in a stud: how long, how much of it in the wood and outside. */
export type FittedStudScrew = {
  readonly screwMm: Millimetres;
  readonly inWoodMm: Millimetres;
  readonly outsideMm: Millimetres;
  readonly longHead: boolean;
};

/** The stocked screw that puts at least `intoMm` in the wood; null when none is that long. */
export function fitStudScrew(
  gauge: Gauge,
  intoMm: number,
  outsideMm: Millimetres,
  beyondMm: Millimetres,
  shelf: BoardPlace['shelf'],
  head: HeadWanted,
): FittedStudScrew | null {
  const least = mm(outsideMm + beyondMm + intoMm);
  const stocked = stockedScrew(shelf, head, gauge, least, mm(0));
  if (stocked === null) return null;
  const { screwMm, washer } = stocked;
  return { screwMm, inWoodMm: mm(screwMm - outsideMm - beyondMm), outsideMm, longHead: washer };
}
