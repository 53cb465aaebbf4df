import type { Millimetres, Newtons } from '../../quantity.ts';
import type { Shank } from '../masonry/walk-row.ts';
import { leverArm } from '../steel/lever-arm.ts';
import { SHEAR_FACTOR, shankStrength, TENSION_FACTOR } from '../steel/shank-strength.ts';
import { GAMMA_G, SCREW_STEEL } from '../steel/steel.ts';

/** Arithmetic that can be done again by hand: names and figures, and what is done with them. */
export type Sum = { readonly inputs: Record<string, number>; readonly symbols: string };

const tenth = (value: number): number => Math.round(value * 10) / 10;
const fine = (value: number): number => Math.round(value * 1e4) / 1e4;

/** Bending of a screw on its lever arm, with what tension leaves of it: M (1 - N/N_R) / l / (gamma_Ms 1.35). */
export function bendingSum(shank: Shank, armMm: Millimetres, tension: Newtons): Sum {
  const { core, moment, tensionN } = shankStrength(shank);
  return {
    inputs: {
      coreMm: core.coreMm,
      momentNmm: tenth(moment),
      leverArmMm: fine(leverArm(core, armMm)),
      tensileMpa: SCREW_STEEL.value.tensileMpa,
      tensionN: fine(tension),
      steelTensionN: tenth(tensionN),
      steelFactor: fine(SHEAR_FACTOR / GAMMA_G.value),
      permanentFactor: GAMMA_G.value,
    },
    symbols:
      'momentNmm x max(0, 1 - tensionN / steelTensionN) / leverArmMm / (steelFactor x permanentFactor)',
  };
}

/** Steel in shear or in tension: characteristic / (gamma_Ms 1.35). */
export function shankSum(shank: Shank, mode: 'screw-shear' | 'screw-tension'): Sum {
  const { core, shearN, tensionN } = shankStrength(shank);
  const [good, factor] = mode === 'screw-shear' ? [shearN, SHEAR_FACTOR] : [tensionN, TENSION_FACTOR];
  return {
    inputs: {
      coreMm: core.coreMm,
      characteristicN: tenth(good * factor),
      steelFactor: fine(factor / GAMMA_G.value),
      permanentFactor: GAMMA_G.value,
    },
    symbols: 'characteristicN / (steelFactor x permanentFactor)',
  };
}
