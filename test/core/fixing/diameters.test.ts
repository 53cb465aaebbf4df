import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  bendingCharacteristic,
  leverArm,
  shearOnArm,
  yieldMoment,
} from '../../../core/fixing/steel/lever-arm.ts';
import { core, nominal, root } from '../../../core/fixing/steel/screw-sizes.ts';
import { mm, mpa } from '../../../core/quantity.ts';

/** First moment of a round section about its middle in thin strips: the plastic modulus without any formula for it. */
function plasticModulus(diameter: number): number {
  const strips = 4000;
  const step = diameter / strips;
  let sum = 0;
  for (let at = 0; at < strips; at += 1) {
    const y = (at + 0.5) * step - diameter / 2;
    sum += 2 * Math.sqrt(diameter ** 2 / 4 - y ** 2) * Math.abs(y) * step;
  }
  return sum;
}

test('a screw on a lever arm bears at most what its plastic section gives by virtual work, and 0.707 of it (ETAG 001-C 1.2 W_el, from memory)', () => {
  const sizes = fc.tuple(
    fc.double({ min: 2, max: 12, noNaN: true }),
    fc.double({ min: 0.5, max: 80, noNaN: true }),
    fc.double({ min: 200, max: 1000, noNaN: true }),
  );
  fc.assert(
    fc.property(sizes, ([d, beyond, tensile]) => {
      const ours = shearOnArm(
        bendingCharacteristic(core(mm(d)), mpa(tensile)),
        leverArm(core(mm(d)), mm(beyond)),
      );
      // A hinge turning by t: the load does V l t, the section f Z t. 1.2 pi/32 over 1/6 is 0.7069.
      const collapse = (tensile * plasticModulus(d)) / (0.5 * d + beyond);
      expect(ours / collapse).toBeCloseTo((1.2 * 6 * Math.PI) / 32, 3);
    }),
  );
});

test('root, core and nominal diameters can’t be taken for each other: mixing them does not compile (our choice)', () => {
  // @ts-expect-error a nominal diameter is no core
  const bending = bendingCharacteristic(nominal(mm(6)), mpa(400));
  // @ts-expect-error a core is no root
  const yields = yieldMoment(core(mm(4)), mpa(500));
  // @ts-expect-error a root is no core
  const arm = leverArm(root(mm(4)), mm(10));
  expect([bending, yields, arm].every(Number.isNaN)).toBe(true);
});
