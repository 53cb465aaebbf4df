import type { JobSoFar } from '../core/job.ts';
import { type Millimetres, mm } from '../core/quantity.ts';

type Range = readonly [light: number, heavy: number];

/**
 * Usual mass by outside size: worked out from densities (light: slim softwood frame, 3 mm back; heavy: wide
 * hardwood frame, 5 to 6 mm back). Derived, for advice to who can't weigh; taken for an answer only by who picks it. The mirror's
 * heavy end is that of 6 mm glass, its light end of 4 mm.
 */
const MASS_BY_SIZE: readonly {
  upTo: { widthMm: number; heightMm: number };
  kg: Readonly<Record<'mirror' | 'picture' | 'acrylic' | 'canvas', Range>>;
}[] = [
  {
    upTo: { widthMm: 400, heightMm: 500 },
    kg: { mirror: [3, 7], picture: [2, 4], acrylic: [1, 3.5], canvas: [0.7, 2] },
  },
  {
    upTo: { widthMm: 500, heightMm: 700 },
    kg: { mirror: [5, 11], picture: [3, 6.5], acrylic: [2, 5.5], canvas: [1, 3] },
  },
  {
    upTo: { widthMm: 600, heightMm: 800 },
    kg: { mirror: [6.5, 14], picture: [4, 8.5], acrylic: [2.5, 7.5], canvas: [1.2, 3.5] },
  },
  {
    upTo: { widthMm: 600, heightMm: 900 },
    kg: { mirror: [7, 16], picture: [5, 9.5], acrylic: [3, 8], canvas: [1.5, 4] },
  },
  {
    upTo: { widthMm: 700, heightMm: 1000 },
    kg: { mirror: [9, 20], picture: [6, 12], acrylic: [3.5, 10], canvas: [1.7, 4.5] },
  },
  {
    upTo: { widthMm: 900, heightMm: 1200 },
    kg: { mirror: [14, 30], picture: [9.5, 18], acrylic: [5.5, 15], canvas: [2.3, 6] },
  },
  {
    upTo: { widthMm: 800, heightMm: 1600 },
    kg: { mirror: [17, 35], picture: [11, 21], acrylic: [6.5, 18], canvas: [2.6, 6.5] },
  },
  {
    upTo: { widthMm: 1000, heightMm: 1500 },
    kg: { mirror: [19, 40], picture: [13, 24], acrylic: [7.5, 20], canvas: [3, 7] },
  },
  {
    upTo: { widthMm: 1200, heightMm: 1800 },
    kg: { mirror: [27, 56], picture: [19, 34], acrylic: [10, 29], canvas: [3.5, 9] },
  },
];

type Usual = { light: number; heavy: number; upTo: { widthMm: Millimetres; heightMm: Millimetres } };

/** What a piece of this kind and size usually weighs, kg; null where size or kind is not known or off the table. */
export function usualMass({ piece }: JobSoFar): Usual | null {
  const { kind, widthMm, heightMm, glass } = piece ?? {};
  if (kind === undefined || kind === 'panel' || widthMm === undefined || heightMm === undefined) return null;
  const row = MASS_BY_SIZE.find((each) => widthMm * heightMm <= each.upTo.widthMm * each.upTo.heightMm);
  if (row === undefined) return null;
  const column =
    kind === 'picture' ? (glass === 'acrylic' || glass === 'none' ? 'acrylic' : 'picture') : kind;
  const [light, heavy] = row.kg[column];
  return { light, heavy, upTo: { widthMm: mm(row.upTo.widthMm), heightMm: mm(row.upTo.heightMm) } };
}
