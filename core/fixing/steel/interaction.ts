import { type Degrees, type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

const STEEL_POWER = sourced(2, 'EN1992-4:2018', '7.2.3.1 Table 7.3 Eq. 7.54', 'from-memory');
const HALF_TURN = 180;

/** Share of steel's resistance that both directions use: n^2 + v^2 (EN 1992-4 Table 7.3). */
export function steelInteraction(n: number, v: number): number {
  return n ** STEEL_POWER.value + v ** STEEL_POWER.value;
}

/**
 * Allowable load of a wood screw pulled at an angle to the wood's surface:
 * Z_a = W'p Z' / (W'p cos^2 a + Z' sin^2 a) (NDS 12.4.1 Eq. 12.4-1), N.
 */
export function woodScrewAtAngle(withdrawal: Newtons, lateral: Newtons, angle: Degrees): Newtons {
  const a = (angle * Math.PI) / HALF_TURN;
  return newtons((withdrawal * lateral) / (withdrawal * Math.cos(a) ** 2 + lateral * Math.sin(a) ** 2));
}
