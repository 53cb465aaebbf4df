import type { Across } from '../job.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { doesNotFit } from './why-not.ts';

/** Where a piece's left edge comes on the wall, and the arithmetic that put it there. */
export type LeftEdge = {
  ok: true;
  leftMm: Millimetres;
  formula: string;
  inputs: Record<string, number>;
};

/**
 * Left edge of a piece from the wall's left end for every way of saying where across (contract 4), in millimetres.
 * A right edge is measured from the wall's right end, as people say it; all else from the left end.
 * `between` centres it between two lines, and is a reason why not when it is wider than they are apart.
 */
export function leftEdgeOf(
  across: Across,
  wallWidthMm: Millimetres,
  widthMm: Millimetres,
  what: 'piece' | 'group' = 'piece',
): LeftEdge | DoesNotFit {
  const width = `${what} width`;
  const inputs = { 'wall width': wallWidthMm, [width]: widthMm };
  switch (across.by) {
    case 'centre':
      return {
        ok: true,
        leftMm: mm((wallWidthMm - widthMm) / 2),
        formula: `(wall width - ${width}) / 2`,
        inputs,
      };
    case 'left-edge':
      return { ok: true, leftMm: across.mm, formula: 'as said', inputs: { 'left edge': across.mm } };
    case 'right-edge':
      return {
        ok: true,
        leftMm: mm(wallWidthMm - across.mm - widthMm),
        formula: `wall width - right edge from the right end - ${width}`,
        inputs: { 'wall width': wallWidthMm, 'right edge from the right end': across.mm, [width]: widthMm },
      };
    case 'centre-at':
      return {
        ok: true,
        leftMm: mm(across.mm - widthMm / 2),
        formula: `centre - ${width} / 2`,
        inputs: { centre: across.mm, [width]: widthMm },
      };
    case 'between':
      return between(across.fromMm, across.toMm, widthMm, what);
  }
}

function between(
  fromMm: Millimetres,
  toMm: Millimetres,
  widthMm: Millimetres,
  what: string,
): LeftEdge | DoesNotFit {
  const over = mm(widthMm - Math.abs(toMm - fromMm));
  if (over > 0) {
    return doesNotFit(
      'tooWideBetween',
      `The ${what} is ${lengthText(over)} wider than the space between.`,
      `Choose a wider space, or a narrower ${what}.`,
      over,
    );
  }
  return {
    ok: true,
    leftMm: mm((fromMm + toMm - widthMm) / 2),
    formula: `(from + to - ${what} width) / 2`,
    inputs: { from: fromMm, to: toMm, [`${what} width`]: widthMm },
  };
}
