import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { QuestionName } from '../../question.ts';

/**
 * How long a thing can be: `bare` for a figure without a unit, which is then taken at its word;
 * `said` for a figure with one. All our choice: wide enough for any job, narrow enough to catch a slip.
 */
export type Band = {
  bare: readonly [Millimetres, Millimetres];
  said: readonly [Millimetres, Millimetres];
};

const band = (bareLeast: number, bareMost: number, saidLeast: number, saidMost: number): Band => ({
  bare: [mm(bareLeast), mm(bareMost)],
  said: [mm(saidLeast), mm(saidMost)],
});

/** Any length in a room; our choice. */
const ANYTHING = band(1, 20_000, 0.5, 50_000);

/** Plausible lengths by question; our choice. */
const BANDS: Partial<Record<QuestionName, Band>> = {
  'piece.size': band(200, 3500, 50, 5000),
  'piece.depthMm': band(5, 250, 2, 400),
  'piece.hanging': band(0, 3500, 0, 5000),
  'wall.widthMm': band(600, 20_000, 150, 50_000),
  'wall.heightMm': band(1800, 6000, 1000, 15_000),
  'wall.thicknessMm': band(30, 900, 10, 1500),
  'wall.boardMm': band(6, 40, 3, 80),
  'wall.finish': band(1, 60, 0.5, 150),
  'wall.voidMm': band(5, 400, 1, 1000),
  'wall.studs': band(25, 1300, 20, 3000),
  'wall.datum': band(150, 3000, 1, 6000),
  'wall.accessories': band(20, 20_000, 1, 50_000),
  'place.across': band(20, 20_000, 1, 50_000),
  'place.up': band(20, 4000, 0, 15_000),
};

export function bandOf(question: QuestionName | undefined): Band {
  return (question && BANDS[question]) ?? ANYTHING;
}

export function within(length: number, [least, most]: readonly [Millimetres, Millimetres]): boolean {
  return length >= least && length <= most;
}
