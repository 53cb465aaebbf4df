import type { Align, Arrange } from '../../group-job.ts';
import { type Millimetres, mm } from '../../quantity.ts';

/** A piece as the group sees it: its size, and how far its first mark lies below its top edge. Millimetres. */
export type Cell = { widthMm: Millimetres; heightMm: Millimetres; markDropMm: Millimetres };

/** Which piece stands where, by its number from 0: rows from the top, each from the left. */
export type Cells = { rows: number[][]; columns: number };

/** Pieces in the order they were given, left to right and then top to bottom; the last row of a grid may be short. */
export function cellsOf(arrange: Arrange, count: number): Cells {
  const columns = { row: count, column: 1, grid: Math.min(arrange.columns ?? count, count) }[arrange.as];
  const rows: number[][] = [];
  for (let nth = 0; nth < count; nth += 1) {
    if (nth % columns === 0) rows.push([]);
    rows.at(-1)?.push(nth);
  }
  return { rows, columns };
}

/** Each column is as wide as the widest piece in it. Millimetres. */
export function columnWidths({ rows, columns }: Cells, cells: readonly Cell[]): Millimetres[] {
  return Array.from({ length: columns }, (_, column) =>
    mm(Math.max(...rows.map((row) => cells[row[column] ?? -1]?.widthMm ?? 0))),
  );
}

/** How far a piece reaches above and below the line its row is aligned by; a reach may be negative. */
type Reach = { aboveMm: Millimetres; belowMm: Millimetres };

export function reachOf({ heightMm, markDropMm }: Cell, align: Align): Reach {
  switch (align) {
    case 'top':
      return { aboveMm: mm(0), belowMm: heightMm };
    case 'bottom':
      return { aboveMm: heightMm, belowMm: mm(0) };
    case 'centre':
      return { aboveMm: mm(heightMm / 2), belowMm: mm(heightMm / 2) };
    case 'hangers':
      return { aboveMm: markDropMm, belowMm: mm(heightMm - markDropMm) };
  }
}

/** A row reaches as far as the piece in it that reaches furthest, either way from its line. Millimetres. */
export function rowReach(row: readonly number[], cells: readonly Cell[], align: Align): Reach {
  const reaches = row.flatMap((nth) => cells[nth] ?? []).map((cell) => reachOf(cell, align));
  return {
    aboveMm: mm(Math.max(...reaches.map((each) => each.aboveMm))),
    belowMm: mm(Math.max(...reaches.map((each) => each.belowMm))),
  };
}
