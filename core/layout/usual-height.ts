import type { Place } from '../job.ts';
import type { Piece } from '../piece/piece.ts';
import type { Frame } from '../plan-shape.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Wall } from '../wall/wall.ts';
import { lengthText } from './length-text.ts';

/** Middle of a picture above the floor: a convention of galleries, 57 to 60 in. */
const CENTRE_LINE = sourced(
  { from: mm(57 * MM_PER_INCH), to: mm(60 * MM_PER_INCH) },
  'common-practice',
  'layout 8: centre line 57 to 60 in, a convention',
  'read-secondary',
);
/** Above furniture 150 to 250, above a mantel 100 or more; two thirds to three quarters of its width. */
const OVER = sourced(
  { furniture: { least: mm(150), most: mm(250) }, mantel: mm(100), width: { from: 2 / 3, to: 3 / 4 } },
  'common-practice',
  'layout 8: over furniture and a mantel',
  'common-practice',
);
/** A departure is said only where it can't be meant as the same: so much off the centre line, over the gap, of the width. */
const WORTH_SAYING = sourced(
  { centre: mm(150), gap: mm(50), narrow: 1 / 2, tall: mm(1000), roundTo: mm(5) },
  'our-choice',
  'short advice, never nagging',
  'our-choice',
);

export const HEIGHT_BASIS = [CENTRE_LINE, OVER, WORTH_SAYING].map(basisOf);

/** To five millimetres: no convention is nearer than that. */
const about = (length: number): string => {
  const { roundTo } = WORTH_SAYING.value;
  return lengthText(mm(Math.round(length / roundTo) * roundTo));
};

/** To a millimetre, which an inch tape reads as the whole inches of the convention. */
const whole = (length: Millimetres): string => String(Math.round(length));

/** A piece, or a group seen as one. */
type Outline = Pick<Piece, 'kind' | 'widthMm' | 'heightMm'>;

/** One line where the place departs from what is usual; the gap over furniture goes before the centre line. */
export function usualHeightAdvice(
  { piece, wall, place }: { piece: Outline; wall: Wall; place: Place },
  frame: Frame,
  levelAboveFloorMm: Millimetres | null,
): string[] {
  const { kind = 'floor', widthMm } = wall.datum ?? {};
  if (kind === 'furniture' || kind === 'mantel') {
    const said = gapSaid(kind, frame.bottomMm) ?? widthSaid(kind, piece.widthMm, widthMm);
    return said === null ? [] : [said];
  }
  if (kind === 'nosing' || levelAboveFloorMm === null || !hangsFree(place)) return [];
  const centre = (frame.bottomMm + frame.topMm) / 2 + levelAboveFloorMm;
  const { from, to } = CENTRE_LINE.value;
  const off = centre > to ? centre - to : centre - from;
  if (centre >= from && centre <= to) return [];
  if (Math.abs(off) < WORTH_SAYING.value.centre || spansTheLine(piece, frame, levelAboveFloorMm)) return [];
  return [
    `Its middle comes at ${lengthText(mm(centre))}; most pictures hang with theirs at ${whole(from)} to ${whole(to)} mm. A convention, so fine if that is meant.`,
  ];
}

/** Over a basin, a bed or a fire the place decides, not the centre line. */
const hangsFree = ({ below }: Place): boolean =>
  below === undefined || below === 'nothing' || below === 'unknown' || below === 'walkway';

/** A mirror, or a piece as tall as a person's reach of sight, is right where eyes fall on it. */
function spansTheLine({ kind, heightMm }: Outline, { bottomMm, topMm }: Frame, level: Millimetres): boolean {
  const { from, to } = CENTRE_LINE.value;
  const spans = bottomMm + level <= from && topMm + level >= to;
  return spans && (kind === 'mirror' || heightMm >= WORTH_SAYING.value.tall);
}

function gapSaid(kind: 'furniture' | 'mantel', gap: Millimetres): string | null {
  const { furniture, mantel } = OVER.value;
  if (kind === 'mantel') {
    return gap < mantel
      ? `${lengthText(gap)} over the mantel is tight: ${lengthText(mantel)} or more is usual.`
      : null;
  }
  if (gap >= furniture.least && gap <= furniture.most + WORTH_SAYING.value.gap) return null;
  return `${lengthText(gap)} over the furniture is ${gap < furniture.least ? 'tight' : 'high'}: ${lengthText(furniture.least).replace(' mm', '')} to ${lengthText(furniture.most)} is usual.`;
}

function widthSaid(
  kind: 'furniture' | 'mantel',
  widthMm: Millimetres,
  overMm: Millimetres | undefined,
): string | null {
  if (overMm === undefined || !(overMm > 0)) return null;
  const { from, to } = OVER.value.width;
  if (widthMm >= overMm * WORTH_SAYING.value.narrow && widthMm <= overMm) return null;
  const looks = widthMm > overMm ? 'wider than' : 'narrow for';
  return `It is ${looks} the ${kind}: two thirds to three quarters of its ${lengthText(overMm)}, ${about(overMm * from).replace(' mm', '')} to ${about(overMm * to)}, is usual.`;
}
