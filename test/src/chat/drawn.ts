import type { Frame, Mark } from '../../../core/plan-shape.ts';
import { mm } from '../../../core/quantity.ts';
import { drawingOf } from '../../../src/chat/browser/drawing.js';
import { tapeIn } from '../../../src/chat/browser/tape.js';

export type Wall = NonNullable<Parameters<typeof drawingOf>[0]['job']['wall']>;

export const mark = (
  id: string,
  left: number,
  right: number,
  heights: Partial<Record<'upMm' | 'downMm', number>>,
): Mark => ({
  id,
  fromLeftMm: mm(left),
  fromRightMm: mm(right),
  ...Object.fromEntries(Object.entries(heights).map(([name, value]) => [name, mm(value)])),
});
export const frame = (leftMm: number, rightMm: number, bottomMm: number, topMm: number): Frame => ({
  leftMm: mm(leftMm),
  rightMm: mm(rightMm),
  bottomMm: mm(bottomMm),
  topMm: mm(topMm),
});

export function drawn(marks: Mark[], of: Frame | null, wall: Partial<Wall> = {}) {
  const plan = { marks, frame: of, job: { wall } };
  return drawingOf(plan as Parameters<typeof drawingOf>[0], tapeIn('mm'));
}

/** The contract's own example: a 2700 wall, a mirror of 840 x 1120, 140 above the mantel. */
export const MARKS = [mark('A', 1025, 1675, { upMm: 1020 }), mark('B', 1675, 1025, { upMm: 1020 })];
export const FRAME = frame(930, 1770, 140, 1260);

export const said = (drawing: ReturnType<typeof drawn>, name: string) =>
  drawing?.shapes
    .filter((shape) => shape.class.split(' ')[0] === name && shape.text !== undefined)
    .map(({ text }) => text);
export const boxOf = (drawing: ReturnType<typeof drawn>, name: string) =>
  drawing?.shapes.find((shape) => shape.class === name)?.at;
export const rings = (drawing: ReturnType<typeof drawn>) =>
  drawing?.shapes.filter(({ tag }) => tag === 'circle').map(({ at }) => [at.cx ?? 0, at.cy ?? 0]) ?? [];
