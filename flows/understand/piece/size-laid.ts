import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Found } from '../lengths/length.ts';
import { isWord, type Token } from '../words/token.ts';
import type { LengthUnit } from '../words/unit.ts';

/** A width and a height in one reading. */
export type Laid = { width: Millimetres; height: Millimetres; unit: LengthUnit };

/** Readings that both sides share; where each side has only one, that one. */
export function common(width: Found, height: Found): Laid[] {
  const [onlyWidth, onlyHeight] = [width.readings[0], height.readings[0]];
  if (onlyWidth && onlyHeight && width.readings.length === 1 && height.readings.length === 1) {
    return [{ width: onlyWidth.valueMm, height: onlyHeight.valueMm, unit: onlyWidth.unit }];
  }
  const shared = width.readings.flatMap((wide) =>
    height.readings
      .filter((high) => high.unit === wide.unit)
      .map((high) => ({ width: wide.valueMm, height: high.valueMm, unit: wide.unit })),
  );
  if (shared.length > 0) return lessTiny(shared);
  return width.readings.flatMap((wide) =>
    height.readings.map((high) => ({ width: wide.valueMm, height: high.valueMm, unit: wide.unit })),
  );
}

/** Nothing this small in both ways is hung here, so it is not offered beside a sensible reading; our choice. */
const TINY = mm(200);

function lessTiny(options: readonly Laid[]): Laid[] {
  const sensible = options.filter(({ width, height }) => width >= TINY || height >= TINY);
  return sensible.length > 1 ? sensible : [...options];
}

/** "landscape" and "portrait" decide which side lies across. */
export function turned(all: readonly Token[], laid: Laid): Laid & { turned: boolean } {
  const across = all.some((each) => isWord(each, 'landscape')) && laid.width < laid.height;
  const upright = all.some((each) => isWord(each, 'portrait')) && laid.width > laid.height;
  if (!across && !upright) return { ...laid, turned: false };
  return { ...laid, width: laid.height, height: laid.width, turned: true };
}
