import { placedHangers } from '../piece/hangers.ts';
import type { HangerPoint, Piece } from '../piece/piece.ts';
import { type Millimetres, mm } from '../quantity.ts';
import type { Bearings } from './bearing.ts';
import { cordBearings } from './cord-bearings.ts';
import { hangerOutside } from './hanger-outside.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

type Pointed = Extract<Piece['hanging'], { points: HangerPoint[] }>;

/** Where a piece on rings, keyholes, clips or a cord bears, from the left; or which hanger can't be. */
export function bearingsOf(
  hanging: Pointed,
  widthMm: Millimetres,
  heightMm: Millimetres,
): Bearings | DoesNotFit {
  const placed = placedHangers(hanging.points, widthMm);
  if (placed === null || placed.length === 0) {
    return doesNotFit(
      'hangerOutside',
      'Where the hangers are on the piece is not known.',
      'Measure each hanger: in from the side of the frame, and down from its top to where it bears.',
    );
  }
  const outside = hangerOutside(hanging.by, placed, widthMm, heightMm);
  if (outside) return outside;
  if (hanging.by === 'cord') return cordBearings(hanging, placed);

  const first = placed[0] ?? { acrossMm: mm(0), dropMm: mm(0) };
  const last = placed.at(-1) ?? first;
  return {
    ok: true,
    bearings: placed.map(({ acrossMm, dropMm }) => ({
      acrossMm,
      dropMm,
      acrossFormula: 'hanger from the piece’s left edge',
      dropFormula: 'drop',
      acrossInputs: { 'hanger from the piece’s left edge': acrossMm },
      dropInputs: { drop: dropMm },
    })),
    ringToRingMm:
      placed.length > 1 ? mm(Math.hypot(last.acrossMm - first.acrossMm, last.dropMm - first.dropMm)) : null,
    advice: [...unevenDrops(placed), ...manyInARow(placed.length)],
    assumptions: [],
  };
}

function unevenDrops(placed: readonly { dropMm: Millimetres }[]): string[] {
  const drops = placed.map((each) => each.dropMm);
  const uneven = mm(Math.max(...drops) - Math.min(...drops));
  return uneven > NOISE
    ? [
        `The hangers are ${lengthText(uneven)} uneven, so the marks are too: that is what hangs the frame level.`,
      ]
    : [];
}

const manyInARow = (count: number): string[] =>
  count > 2 ? ['Reckon that two of the hangers carry it all; the others only steady it.'] : [];
