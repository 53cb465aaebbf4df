import { type Degrees, degrees, type Millimetres, mm } from '../quantity.ts';

/** A half turn, in degrees: pure geometry. */
const HALF_TURN = 180;

/** The triangle a loaded cord makes: how far it rises above the rings, and its legs' angle from the horizontal. */
type CordShape = { riseMm: Millimetres; legAngle: Degrees };

/** A cord that can't be: which figure is out, and by how much. */
type ImpossibleCord = { because: 'too-short' | 'hooks-too-far' | 'no-rise'; overByMm: Millimetres };

export type CordResult = ({ ok: true } & CordShape) | ({ ok: false } & ImpossibleCord);

/**
 * Rise of a cord above the rings: r = sqrt(((L - s) / 2)2 - ((S - s) / 2)2), with line length L, ring spread S
 * and hooks s apart (0 for one hook). Millimetres.
 */
export function riseOfCord(
  lengthMm: Millimetres,
  spreadMm: Millimetres,
  hooksApartMm: Millimetres,
): CordResult {
  if (!(lengthMm > spreadMm)) return { ok: false, because: 'too-short', overByMm: mm(spreadMm - lengthMm) };
  const leg = (lengthMm - hooksApartMm) / 2;
  const run = (spreadMm - hooksApartMm) / 2;
  return cordOfRise(mm(Math.sqrt(Math.max(leg ** 2 - run ** 2, 0))), spreadMm, hooksApartMm);
}

/** Shape of a cord whose rise was measured with it pulled tight: tan theta = r / ((S - s) / 2). */
export function cordOfRise(
  riseMm: Millimetres,
  spreadMm: Millimetres,
  hooksApartMm: Millimetres,
): CordResult {
  if (hooksApartMm > spreadMm) {
    return { ok: false, because: 'hooks-too-far', overByMm: mm(hooksApartMm - spreadMm) };
  }
  if (!(riseMm > 0)) return { ok: false, because: 'no-rise', overByMm: mm(0 - riseMm) };
  const run = (spreadMm - hooksApartMm) / 2;
  return { ok: true, riseMm, legAngle: degrees((Math.atan2(riseMm, run) * HALF_TURN) / Math.PI) };
}

/** Line needed between the rings for a wanted rise: L = s + 2 sqrt(r2 + ((S - s) / 2)2), knots not counted. */
export function cordForRise(
  riseMm: Millimetres,
  spreadMm: Millimetres,
  hooksApartMm: Millimetres,
): Millimetres {
  return mm(hooksApartMm + 2 * Math.hypot(riseMm, (spreadMm - hooksApartMm) / 2));
}
