import { type Degrees, degrees, type Millimetres, mm, toTenth } from '../quantity.ts';
import { sourced } from '../sources.ts';

/** A half turn, in degrees: pure geometry. */
const HALF_TURN = 180;

/** What the eye sees: "about 0.6 degrees from horizontal or vertical". */
export const VISIBLE_TILT = sourced(degrees(0.6), 'Vision-Res-30(10):1990', 'abstract', 'read');
/** What a careful hanger aims for: a third of what the eye sees. */
export const TARGET_TILT = sourced(
  degrees(0.2),
  'our-choice',
  'layout 8: a third of what the eye sees',
  'our-choice',
);

/** An angle in words, to a tenth: "1 degree", "0.4 degrees". */
export function degreesText(angle: Degrees): string {
  const tenth = toTenth(angle) + 0;
  return `${tenth} ${tenth === 1 ? 'degree' : 'degrees'}`;
}

/** How crooked: atan(dy / span), positive when the right side is high. Millimetres in, degrees out. */
export function tiltOf(dyMm: Millimetres, spanMm: Millimetres): Degrees {
  return degrees((Math.atan(dyMm / spanMm) * HALF_TURN) / Math.PI);
}

/** Difference in height that makes a tilt: dy = span tan(angle). Millimetres. */
export function heightOfTilt(tilt: Degrees, spanMm: Millimetres): Millimetres {
  return mm(spanMm * Math.tan((tilt * Math.PI) / HALF_TURN));
}

/** C-LV-1 and C-LV-2: level enough, may just be noticed, will look crooked. */
export type TiltSeen = 'level' | 'may-be-noticed' | 'crooked';

/** How a tilt looks, either way round: under 0.2 degrees level, from 0.6 crooked. */
export function tiltSeen(tilt: Degrees): TiltSeen {
  const size = Math.abs(tilt);
  if (size >= VISIBLE_TILT.value) return 'crooked';
  return size >= TARGET_TILT.value ? 'may-be-noticed' : 'level';
}

/** How much the gap beside a level frame changes over its width when the edge next to it slopes. Millimetres. */
export function wedgeOver(widthMm: Millimetres, fallMm: Millimetres, overMm: Millimetres): Millimetres {
  return mm((fallMm * widthMm) / overMm);
}
