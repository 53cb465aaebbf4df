import { type Millimetres, mm } from '../quantity.ts';

/** How much of a plug is in the base material when its rim is this far in from the finished face. Millimetres. */
export function plugInBase(plugMm: Millimetres, finishMm: Millimetres, rimMm: Millimetres): Millimetres {
  return mm(Math.max(0, plugMm - Math.max(0, finishMm - rimMm)));
}
