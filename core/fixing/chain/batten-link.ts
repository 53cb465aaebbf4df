import type { SetOut } from '../../layout/set-out.ts';
import type { ChainLink } from '../../plan-shape.ts';
import {
  type Megapascals,
  type Millimetres,
  mm,
  mm3,
  mpa,
  type NewtonMillimetres,
  type Newtons,
  newtonMm,
  newtons,
} from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { BATTEN } from '../stand-off.ts';
import { GAMMA_G } from '../steel/steel.ts';
import { K_MOD } from '../timber/duration.ts';

const SOFTWOOD_BENDING = sourced<Megapascals>(mpa(16), 'EN338:2016', 'Table 1, C16: f_m,k', 'from-memory');
const GAMMA_TIMBER = sourced(1.3, 'EN1995-1-1', 'Table 2.3, solid timber', 'read');

/** Worst bending of a batten between two screws: M = W s / 4, all of the weight midway between them (statics), Nmm. */
function battenMoment(weight: Newtons, spacingMm: Millimetres): NewtonMillimetres {
  return newtonMm((weight * spacingMm) / 4);
}

/** Bending a softwood batten on edge may bear for good: k_mod f_m,k t h^2 / 6 / (gamma_M 1.35) (EN 1995-1-1 6.1.6), Nmm. */
function battenStrength(thicknessMm: Millimetres, heightMm: Millimetres): NewtonMillimetres {
  const modulus = mm3((thicknessMm * heightMm ** 2) / 6);
  const stress = (SOFTWOOD_BENDING.value * K_MOD.value.permanent) / (GAMMA_TIMBER.value * GAMMA_G.value);
  return newtonMm(modulus * stress);
}

/** The wall half of a batten as a beam between its screws, as the force midway between the two furthest apart. Newtons. */
export function battenLink({ marks }: Pick<SetOut, 'marks'>, weightN: Newtons): ChainLink | null {
  const gaps = marks.slice(1).map((mark, at) => mark.fromLeftMm - (marks[at]?.fromLeftMm ?? mark.fromLeftMm));
  const widest = mm(Math.max(0, ...gaps));
  if (widest === 0 || !Number.isFinite(weightN)) return null;
  const { thicknessMm, screwToLowerEdgeMm } = BATTEN.value;
  const strength = battenStrength(thicknessMm, mm(2 * screwToLowerEdgeMm));
  const utilisation = battenMoment(weightN, widest) / strength;
  return {
    link: 'batten',
    name: 'batten between its screws',
    actionN: weightN,
    resistanceN: newtons((4 * strength) / widest),
    utilisation,
    ...(utilisation > 1 && { needs: 'a screw between, or a thicker or taller batten' }),
    basis: [SOFTWOOD_BENDING, K_MOD, GAMMA_TIMBER, BATTEN].map(basisOf),
  };
}
