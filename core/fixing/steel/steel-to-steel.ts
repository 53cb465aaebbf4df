import { type Megapascals, type Millimetres, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { NotCovered } from '../timber/timber-withdrawal.ts';
import type { NominalDiameter } from './screw-sizes.ts';

/** Screws in cold-formed steel, sheet on sheet: coefficients, safety factor and the screws they are for. */
const SCREW_IN_SHEET = sourced(
  { pullOut: 0.85, tilting: 4.2, bearing: 2.7, safety: 3 },
  'AISI-S100',
  'screw connections: pull-out, tilting, bearing',
  'read-secondary',
);
const SCREW_RANGE = sourced(
  { leastMm: 0.08 * 25.4, mostMm: 0.25 * 25.4 },
  'AISI-S100',
  'screw connections: 0.08 to 0.25 in',
  'from-memory',
);

export type SteelSheet = { readonly thicknessMm: Millimetres; readonly tensileMpa: Megapascals };

/** Allowable pull-out from one sheet: P = 0.85 t d F_u / 3 (AISI S100), steel on steel only, N. */
export function sheetPullOut(
  { nominalMm: d }: NominalDiameter,
  { thicknessMm: t, tensileMpa }: SteelSheet,
): Newtons | NotCovered {
  const { pullOut, safety } = SCREW_IN_SHEET.value;
  return inRange(d) ?? newtons((pullOut * t * d * tensileMpa) / safety);
}

/**
 * Allowable shear of two sheets of one thickness: the lesser of tilting, 4.2 (t^3 d)^0.5 F_u / 3, and bearing,
 * 2.7 t d F_u / 3 (AISI S100), N. Sheet on sheet: through board the screw tips, and neither holds.
 */
export function sheetShear(
  { nominalMm: d }: NominalDiameter,
  { thicknessMm: t, tensileMpa }: SteelSheet,
): Newtons | NotCovered {
  const { tilting, bearing, safety } = SCREW_IN_SHEET.value;
  const tips = tilting * Math.sqrt(t ** 3 * d) * tensileMpa;
  return inRange(d) ?? newtons(Math.min(tips, bearing * t * d * tensileMpa) / safety);
}

function inRange(d: Millimetres): NotCovered | null {
  const { leastMm, mostMm } = SCREW_RANGE.value;
  const covered = d >= leastMm && d <= mostMm;
  return covered ? null : { notCovered: `AISI S100 covers screws of 2.0 to 6.35 mm, not ${d} mm` };
}
