import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bendingResistance } from '../../../core/fixing/steel/shank-strength.ts';
import { timberRouteOf } from '../../../core/fixing/timber/route.ts';
import { bareStudStrength, cleatStrength } from '../../../core/fixing/timber/stud-strength.ts';
import { mm, newtons } from '../../../core/quantity.ts';

const gauge = fc.constantFrom(8, 10, 12, 14);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** The US route, the Eurocode route, and the one for where no national value was read. */
const route = fc.constantFrom('US' as const, 'UK' as const, 'AU' as const).map(timberRouteOf);
const arm = between(0, 60);
const pull = between(0, 2000);
const board = between(9, 45);
const inWood = between(20, 90);
/** Two figures, the lower first. */
const pair = (each: fc.Arbitrary<number>) =>
  fc.tuple(each, each).map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);
/** Sums of decimals in a computer. */
const NEARLY = 1 - 1e-9;

test('more pull outward never leaves a screw more to bend with', () => {
  fc.assert(
    fc.property(gauge, arm, pair(pull), (each, out, [light, heavy]) => {
      expect(bendingResistance(each, mm(out), newtons(heavy))).toBeLessThanOrEqual(
        bendingResistance(each, mm(out), newtons(light)),
      );
    }),
  );
});

test('a thicker screw never bends sooner on the same arm', () => {
  fc.assert(
    fc.property(arm, (out) => {
      const each = ([8, 10, 12, 14] as const).map((size) => bendingResistance(size, mm(out), newtons(0)));
      expect(each).toEqual([...each].sort((one, other) => one - other));
    }),
  );
});

test('a screw deeper in the stud never bears less, and more board before it never bears more', () => {
  fc.assert(
    fc.property(route, gauge, pair(board), pair(inWood), (by, each, [thin, thick], [shallow, deep]) => {
      const screw = mm(deep + thick);
      const bears = (wood: number, out: number) => bareStudStrength(by, each, mm(wood), mm(out), screw);
      expect(bears(deep, thin).lateralN).toBeGreaterThanOrEqual(bears(shallow, thin).lateralN * NEARLY);
      expect(bears(deep, thin).withdrawalN).toBeGreaterThanOrEqual(bears(shallow, thin).withdrawalN * NEARLY);
      expect(bears(deep, thick).lateralN).toBeLessThanOrEqual(bears(deep, thin).lateralN / NEARLY);
    }),
  );
});

test('a board across studs bears no more the wider the gap that the sheet makes', () => {
  fc.assert(
    fc.property(route, gauge, pair(board), inWood, (by, each, [thin, thick], wood) => {
      const across = (gap: number): number =>
        cleatStrength(by, each, mm(wood), mm(gap), mm(18), mm(wood + thick + 18)).lateralN;
      expect(across(thick)).toBeLessThanOrEqual(across(thin) / NEARLY);
    }),
  );
});
