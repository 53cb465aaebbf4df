import type { Job } from './job.ts';
import type { Piece } from './piece/piece.ts';
import type { Millimetres } from './quantity.ts';

/** What is made level with what in a row: centre lines, top edges, bottom edges, or the first mark of each piece. */
export type Align = 'centre' | 'top' | 'bottom' | 'hangers';

/** How several pieces stand to each other (contract 4): left to right, top to bottom, or a grid filled row by row. */
export type Arrange = {
  as: 'row' | 'column' | 'grid';
  /** One gap between all; else `spread`. */
  gapMm?: Millimetres;
  /** Equal gaps over the room there is: gaps at the ends too, or the ends flush. */
  spread?: 'ends' | 'flush';
  /** Of a grid. */
  columns?: number;
  /** Of a grid: between its rows, where that differs from the gap across. */
  rowGapMm?: Millimetres;
  /** Centre lines where nothing is said. */
  align?: Align;
};

/** Several pieces on one wall: a job whose `place` is the group's. */
export type GroupJob = Omit<Job, 'piece'> & { pieces: readonly Piece[]; arrange: Arrange };
