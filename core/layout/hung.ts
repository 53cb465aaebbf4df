import type { Job } from '../job.ts';
import type { BattenLine, Frame } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { knownStuds } from '../wall/studs.ts';
import { BATTEN_MOST, battenLine, evenScrews, studScrews } from './batten.ts';
import type { Bearing, Bearings } from './bearing.ts';
import { bearingsOf } from './bearings.ts';
import { hangerOutside } from './hanger-outside.ts';
import type { DoesNotFit } from './set-out.ts';
import { NOISE } from './tolerance.ts';
import { doesNotFit } from './why-not.ts';

/** How a piece bears, whatever hangs it; with a batten, its wall half, and whether its screws are in studs. */
export type Hung = Bearings & { batten?: { line: BattenLine; onStuds: boolean } };

/** Bearings of a job's piece on a wall where its frame is known; or what can't be. Millimetres. */
export function hungOf({ piece, wall }: Job, frame: Frame): Hung | DoesNotFit {
  const { hanging } = piece;
  if (hanging.by !== 'batten') return bearingsOf(hanging, piece.widthMm, piece.heightMm);

  const { fromTopMm, lengthMm } = hanging;
  const longer = mm(lengthMm - piece.widthMm);
  if (longer > NOISE) {
    return doesNotFit(
      'hangerOutside',
      `The batten is longer than the piece is wide.`,
      'Measure the batten again, or cut it shorter than the piece.',
      longer,
    );
  }
  const outside = hangerOutside(
    'batten',
    [{ acrossMm: mm(0), dropMm: fromTopMm }],
    piece.widthMm,
    piece.heightMm,
  );
  if (outside) return outside;

  const line = battenLine(frame, fromTopMm, lengthMm);
  const studs = knownStuds(wall);
  const inStuds = studs && studScrews(line, studs);
  const screws = inStuds ?? evenScrews(line);
  if (screws.length > BATTEN_MOST.value) {
    return doesNotFit(
      'tooManyScrews',
      'A batten this long is more than I set out.',
      'Hang it on two or more shorter battens.',
    );
  }
  return {
    ok: true,
    bearings: screws.map((xMm, nth) => ({
      acrossMm: mm(xMm - frame.leftMm),
      dropMm: fromTopMm,
      ...(inStuds ? studFormula(xMm, frame) : evenFormula(nth, screws, line, frame)),
      dropFormula: 'batten seat below the top',
      dropInputs: { 'batten seat below the top': fromTopMm },
    })),
    ringToRingMm: null,
    batten: { line, onStuds: inStuds !== null },
    advice: [],
    assumptions: [],
  };
}

type Across = Pick<Bearing, 'acrossFormula' | 'acrossInputs'>;

function studFormula(xMm: Millimetres, frame: Frame): Across {
  return {
    acrossFormula: 'stud from the piece’s left edge',
    acrossInputs: { 'stud from the piece’s left edge': xMm - frame.leftMm },
  };
}

function evenFormula(nth: number, screws: readonly Millimetres[], line: BattenLine, frame: Frame): Across {
  const [first = mm(0), second = first] = screws;
  return {
    acrossFormula: 'batten’s end from the piece’s left edge + end to first screw + spaces x space',
    acrossInputs: {
      'batten’s end from the piece’s left edge': line.fromLeftMm - frame.leftMm,
      'end to first screw': first - line.fromLeftMm,
      spaces: nth,
      space: second - first,
    },
  };
}
