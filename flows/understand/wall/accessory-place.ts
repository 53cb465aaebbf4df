import { difference, type Millimetres } from '../../../core/quantity.ts';
import { lengthOf, type Outline } from '../words/outline.ts';

const FROM_LEFT =
  /<(\d+)>(?: (?:in|along|over|across))* (?:from|off|of)(?: (?:the|its|my|wall|walls))* (?:left|lhs|l)\b(?: (?:hand|end|corner|side|edge|of|the|wall))*/g;
const FROM_RIGHT =
  /<(\d+)>(?: (?:in|along|over|across))* (?:from|off|of)(?: (?:the|its|my|wall|walls))* (?:right|rhs|r)\b(?: (?:hand|end|corner|side|edge|of|the|wall))*/g;
const LEFT_FIRST = /\b(?:from (?:the )?left|x)(?: (?:hand|end|corner|side|=|:|is))* <(\d+)>/g;
const UP =
  /<(\d+)>(?: (?:mm))? ?(?:up|high|above|off the (?:floor|ground|deck)|from (?:the )?(?:floor|ground|bottom)|off floor|above floor|up from|ffl|height)\b(?: (?:off|from|above|the|finished|floor|ground|level|it))*/g;
const UP_FIRST = /\b(?:y|height|up)(?: (?:=|:|is|at))* <(\d+)>/g;
const FIGURE = /<(\d+)>/g;

const WIDE = /<(\d+)>(?: mm)? (?:wide|across it)\b/g;

export type Spots = { xs: Millimetres[]; ys: Millimetres[]; inferred: boolean; needsWidth: boolean };

/** Where fittings are, read from the stretch of words that is about them. */
export function spotsIn(outline: Outline, stretch: string, wallWidth: Millimetres | undefined): Spots {
  let left = stretch;
  let needsWidth = false;
  const take = (form: RegExp): Millimetres[] => {
    const taken: Millimetres[] = [];
    left = left.replace(form, (_, n: string) => {
      const length = lengthOf(outline, n, 'wall.accessories');
      if (length !== null && length.readings.length > 0 && !length.negative) taken.push(length.valueMm);
      return ' ';
    });
    return taken;
  };
  // How wide a fitting is says nothing of where it is.
  take(WIDE);
  // "600 and 1800 from the left": the first figure shares the words of the second.
  left = left.replace(
    /<(\d+)> (?:and|,|&|then) (?:(?:one|another|the other|a second)(?: is)?(?: at)? )?(?=<\d+>(?: (?:in|along))* (?:from|off) (?:the )?(left|right))/g,
    '<$1> from the $2 and ',
  );
  const xs = [...take(FROM_LEFT), ...take(LEFT_FIRST)];
  for (const fromRight of take(FROM_RIGHT)) {
    if (wallWidth === undefined) needsWidth = true;
    else xs.push(difference(wallWidth, fromRight));
  }
  const ys = [...take(UP), ...take(UP_FIRST)];
  const bare = take(FIGURE);
  if (xs.length === 0 && !needsWidth && bare.length > 0) {
    // Across before up, as tapes are read out; confirmed, since no word said so.
    xs.push(...bare.splice(0, 1));
    if (ys.length === 0) ys.push(...bare.splice(0, 1));
    return { xs, ys, inferred: true, needsWidth };
  }
  if (ys.length === 0 && bare.length === 1) {
    ys.push(...bare);
    return { xs, ys, inferred: true, needsWidth };
  }
  return { xs, ys, inferred: false, needsWidth };
}
