import { type Degrees, type Newtons, newtons } from '../quantity.ts';

/** A half turn, in degrees: pure geometry. */
const HALF_TURN = 180;
const radians = (angle: Degrees): number => (angle * Math.PI) / HALF_TURN;

/** Tension in a cord over its share of the weight: 1 / sin theta, theta from the horizontal (sling-angle tables). */
export function tensionFactor(legAngle: Degrees): number {
  return 1 / Math.sin(radians(legAngle));
}

/** Tension in a cord: T = W / (2 sin theta), theta from the horizontal. Newtons; infinite for a flat cord. */
export function cordTension(weight: Newtons, legAngle: Degrees): Newtons {
  return newtons((weight / 2) * tensionFactor(legAngle));
}

/** How hard a cord pulls each ring inward: H = W / (2 tan theta). Newtons; infinite for a flat cord. */
export function inwardPull(weight: Newtons, legAngle: Degrees): Newtons {
  return newtons(weight / (2 * Math.tan(radians(legAngle))));
}

/** Sideways pull on each of two hooks, inward: T (1 - cos theta), since the cord between them is level. */
export function hookSidePull(tension: Newtons, legAngle: Degrees): Newtons {
  return newtons(tension * (1 - Math.cos(radians(legAngle))));
}
