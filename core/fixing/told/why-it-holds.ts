import type { Why } from '../../plan-shape.ts';
import { type Millimetres, type Newtons, STANDARD_GRAVITY } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { PointLoad, WorstCheck } from '../acting/worst-check.ts';
import type { Shank } from '../masonry/walk-row.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { leverArm } from '../steel/lever-arm.ts';
import { bendingResistance, shankStrength, steelBasis } from '../steel/shank-strength.ts';
import { GAMMA_G, SCREW_STEEL } from '../steel/steel.ts';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const asMass = (force: Newtons): string => `${tenth(force)} N, ${tenth(force / STANDARD_GRAVITY)} kg`;

/** Utilisation and what governs it, for any fastening. */
export function utilisationWhy(worst: WorstCheck, point: PointLoad): Why[] {
  return [
    {
      of: 'utilisation',
      formula:
        'largest of action over resistance, over marks and modes; shear and tension shares added where both act',
      inputs: {
        shearN: tenth(point.shearN),
        tensionN: tenth(point.tensionN),
        resistanceN: tenth(worst.resistanceN),
        mode: worst.mode,
      },
      result: `${Math.round(worst.utilisation * 100) / 100}`,
      basis: worst.basis,
    },
    {
      of: 'governing resistance',
      formula: 'the smallest of the failure modes, for load that stays for good',
      inputs: { mode: worst.mode },
      result: `${asMass(worst.resistanceN)} (${worst.noSource ? 'common practice or our choice, no source' : worst.mode})`,
      basis: worst.basis,
    },
  ];
}

/** Why a screw in masonry holds: utilisation, what governs, what bending alone allows, and the cap. */
export function strengthWhys(
  worst: WorstCheck,
  point: PointLoad,
  shank: Shank,
  armMm: Millimetres,
  cap: HoldingCap,
): Why[] {
  const { core, moment } = shankStrength(shank);
  return [
    ...utilisationWhy(worst, point),
    {
      of: 'bending of the screw',
      formula:
        'alpha_M x 1.2 W_el f_uk (1 - N/N_R) / (0.5 d + what carries nothing + stand-off) / (gamma_Ms x 1.35)',
      inputs: {
        coreMm: core.coreMm,
        momentNmm: tenth(moment),
        leverArmMm: tenth(leverArm(core, armMm)),
        tensileMpa: SCREW_STEEL.value.tensileMpa,
        permanentFactor: GAMMA_G.value,
      },
      result: asMass(bendingResistance(shank, armMm, point.tensionN)),
      basis: [...steelBasis('screw-bending', shank), basisOf(GAMMA_G)],
    },
    {
      of: 'cap',
      formula: cap.noSource ? 'of two caps the lower; no public document rates this' : 'as it stands',
      inputs: { kind: cap.mode },
      result: asMass(cap.forceN),
      basis: cap.basis,
    },
  ];
}
