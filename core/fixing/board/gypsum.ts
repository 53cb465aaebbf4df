import {
  type CubicMillimetres,
  type Megapascals,
  type Millimetres,
  mm3,
  mpa,
  type Newtons,
  newtons,
} from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { NEWTONS_PER_LBF } from '../timber/us-units.ts';

/** Least pull of a nail head through half-inch board: through, not out; no anchor rating. */
export const NAIL_PULL_HALF_INCH = sourced(
  newtons(77 * NEWTONS_PER_LBF),
  'ASTM-C1396',
  'nail pull, 1/2 in, 77 lbf',
  'read',
);
/** Least bending load of 12.5 mm board on the standard span, and the specimen it is measured on. */
export const BENDING_12_5 = sourced(
  { alongN: newtons(550), acrossN: newtons(210), spanMm: 350, widthMm: 300 },
  'EN520',
  'flexural breaking load, 12.5 mm',
  'from-memory',
);

/** Bending stress of a sheet loaded at mid-span: sigma = 3 F L / (2 b t^2) (statics), MPa. */
export function sheetStress(
  load: Newtons,
  spanMm: Millimetres,
  widthMm: Millimetres,
  thicknessMm: Millimetres,
): Megapascals {
  return mpa((3 * load * spanMm) / (2 * widthMm * thicknessMm ** 2));
}

/** Section modulus of a strip: W = b t^2 / 6, mm3. */
export function stripModulus(widthMm: Millimetres, thicknessMm: Millimetres): CubicMillimetres {
  return mm3((widthMm * thicknessMm ** 2) / 6);
}

/** Outward load a strip bears at mid-bay: P = 4 sigma W / (L FS) (statics; illustration, no rating), N. */
export function midBayPull(
  stress: Megapascals,
  modulus: CubicMillimetres,
  spanMm: Millimetres,
  safety: number,
): Newtons {
  return newtons((4 * stress * modulus) / (spanMm * safety));
}

/** Shear stress round a head pulled through: tau = F / (pi d t) (statics; order of magnitude only), MPa. */
export function punchingStress(load: Newtons, headMm: Millimetres, thicknessMm: Millimetres): Megapascals {
  return mpa(load / (Math.PI * headMm * thicknessMm));
}
