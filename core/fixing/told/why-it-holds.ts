import { type Millimetres, type Newtons, STANDARD_GRAVITY } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import type { PointLoad, WorstCheck } from '../acting/worst-check.ts';
import type { Shank } from '../masonry/walk-row.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import { bendingResistance, steelBasis } from '../steel/shank-strength.ts';
import { GAMMA_G } from '../steel/steel.ts';
import { bendingSum, type Sum, shankSum } from './sum-of-steel.ts';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const hundredth = (value: number): number => Math.round(value * 100) / 100;
const asMass = (force: Newtons): string => `${tenth(force)} N, ${tenth(force / STANDARD_GRAVITY)} kg`;

/** Utilisation and what governs it, for any fastening; `sum` is the arithmetic of what governs, where it is one. */
export function utilisationWhy(worst: WorstCheck, point: PointLoad, sum?: Sum): Why[] {
  const { acting = point, allowed, mode } = worst;
  return [
    {
      of: 'utilisation',
      formula:
        'largest of action over resistance, over marks and modes; shear and tension shares added where both act',
      inputs: {
        shearN: hundredth(acting.shearN),
        tensionN: hundredth(acting.tensionN),
        resistanceN: tenth(worst.resistanceN),
        ...(allowed && {
          mayBearShearN: hundredth(allowed.shearN),
          mayBearTensionN: hundredth(allowed.tensionN),
        }),
        mode,
      },
      result: `${Math.round(worst.utilisation * 100) / 100}`,
      basis: worst.basis,
      ...(allowed && { symbols: SHARES[mode] ?? BOTH }),
    },
    {
      of: 'governing resistance',
      formula: 'the smallest of the failure modes, for load that stays for good',
      inputs: { mode, ...sum?.inputs },
      result: `${asMass(worst.resistanceN)} (${worst.noSource ? 'common practice or our choice, no source' : mode})`,
      basis: worst.basis,
      ...(sum && { symbols: sum.symbols }),
    },
  ];
}

/** Tension is in the bending resistance already; every other mode adds the two shares. */
const BOTH = 'shearN / mayBearShearN + tensionN / mayBearTensionN';
const SHARES: Partial<Record<WorstCheck['mode'], string>> = {
  'screw-bending': 'shearN / mayBearShearN',
  'screw-tension': 'tensionN / mayBearTensionN',
};

/** Why a screw in masonry or board holds: utilisation, what governs, what bending alone allows, and the cap. */
export function strengthWhys(
  worst: WorstCheck,
  point: PointLoad,
  shank: Shank,
  armMm: Millimetres,
  cap: HoldingCap,
): Why[] {
  const bending = bendingSum(shank, armMm, point.tensionN);
  const held = capSum(cap);
  return [
    ...utilisationWhy(worst, point, governingSum(worst, point, shank, armMm, held)),
    {
      of: 'bending of the screw',
      formula:
        'alpha_M x 1.2 W_el f_uk (1 - N/N_R) / (0.5 d + what carries nothing + stand-off) / (gamma_Ms x 1.35)',
      inputs: bending.inputs,
      result: asMass(bendingResistance(shank, armMm, point.tensionN)),
      basis: [...steelBasis('screw-bending', shank), basisOf(GAMMA_G)],
      symbols: bending.symbols,
    },
    {
      of: 'cap',
      formula: cap.noSource ? 'of two caps the lower; no public document rates this' : 'as it stands',
      inputs: { kind: cap.mode, ...held.inputs },
      result: asMass(cap.forceN),
      basis: cap.basis,
      symbols: held.symbols,
    },
  ];
}

/** A cap is kilograms under standard gravity; a rating or a pull test is a force as it stands. */
export function capSum({ noSource, forceN }: HoldingCap): Sum {
  return noSource
    ? {
        inputs: { capKg: hundredth(forceN / STANDARD_GRAVITY), gravity: STANDARD_GRAVITY },
        symbols: 'capKg x gravity',
      }
    : { inputs: { ratedN: hundredth(forceN) }, symbols: 'ratedN' };
}

function governingSum(
  { mode, acting }: WorstCheck,
  point: PointLoad,
  shank: Shank,
  armMm: Millimetres,
  held: Sum,
): Sum | undefined {
  if (mode === 'screw-bending') return bendingSum(shank, armMm, (acting ?? point).tensionN);
  if (mode === 'screw-shear' || mode === 'screw-tension') return shankSum(shank, mode);
  return mode === 'concrete-cone' ? undefined : held;
}
