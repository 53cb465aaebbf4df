import { type Newtons, newtons } from '../../quantity.ts';
import { linear, type PointLoad, type WorstCheck } from '../acting/worst-check.ts';
import { STUD_CAP_BASIS, type StudStrength } from './stud-strength.ts';

/** The worst of a stud screw's modes: lateral and withdrawal together, and the trade's cap where it is lower. */
export function studCheck(
  point: PointLoad,
  { lateralN, withdrawalN, basis }: StudStrength,
  cap: Newtons | null,
): WorstCheck {
  const shearN = newtons(cap === null ? lateralN : Math.min(cap, lateralN));
  const utilisation = point.shearN === 0 && point.tensionN === 0 ? 0 : linear(point, shearN, withdrawalN);
  const draws = point.tensionN / withdrawalN > point.shearN / shearN;
  const capped = !draws && cap !== null && cap < lateralN;
  return {
    mode: draws ? 'timber-withdrawal' : 'timber-lateral',
    resistanceN: draws ? withdrawalN : shearN,
    utilisation: Number.isNaN(utilisation) ? Number.POSITIVE_INFINITY : utilisation,
    basis: capped ? [...STUD_CAP_BASIS, ...basis] : basis,
    noSource: false,
    acting: point,
    allowed: { shearN, tensionN: withdrawalN },
  };
}
