import { expect, test } from 'vitest';
import { mm } from '../../../core/quantity.ts';
import { held } from './a-fixing-job.ts';

const BATTEN = { by: 'batten' as const, fromTopMm: mm(100), lengthMm: mm(1000) };
const G = 9.80665;
const kilograms = (force: number): number => Math.round((force / G) * 1000) / 1000;

/** 1200 wide on 3000 of wall: frame 900 to 2100, batten 1000 to 2000, screws at 1050, 1350, 1650 and 1950. */
const onBrick = (comFromLeftMm: number) =>
  held({ kg: 30, widthMm: 1200, hanging: BATTEN, piece: { comFromLeftMm: mm(comFromLeftMm) } });

test.each([
  // W/n + W e x / sum(x^2): sum = 2 (150^2 + 450^2) = 450000.
  ['in the middle', 600, [7.5, 7.5, 7.5, 7.5]],
  // e = 100: 30 x 100 x 450 / 450000 = 3, and a third of that at 150.
  ['100 right of it', 700, [4.5, 6.5, 8.5, 10.5]],
  ['100 left of it', 500, [10.5, 8.5, 6.5, 4.5]],
] as const)(
  'screws of a batten on brick share 30 kg, its mass %s, and add up to it [statics]',
  (_, com, shares) => {
    const { actions, fixing } = onBrick(com);
    expect(actions.perMark.map(({ shearN }) => kilograms(shearN))).toEqual(shares);
    expect(fixing.count).toBe(4);
  },
);

test('across two studs each place of a batten carries by the lever rule, both its screws together [statics, our-choice]', () => {
  const wall = {
    baseMaterial: 'plasterboard-on-timber-studs' as const,
    finish: { kind: 'bare' as const },
    boardMm: mm(13),
    studs: { spacingMm: mm(450), firstMm: mm(300), widthMm: mm(45) },
  };
  // Studs at 1200 and 1650; the mass at 900 + 450 = 1350 is 150 from one and 300 from the other.
  const { actions, fixing } = held({
    kg: 30,
    widthMm: 1200,
    hanging: BATTEN,
    piece: { comFromLeftMm: mm(450) },
    wall,
  });
  expect(actions.perMark.map(({ shearN }) => kilograms(shearN))).toEqual([20, 10]);
  // 18 off the wall over 40 to the lower edge, and 30 / 900 of the piece: 20 x (0.45 + 0.0333).
  expect(kilograms(actions.perMark[0]?.tensionN ?? 0)).toBeCloseTo(9.667, 3);
  expect(fixing.count).toBe(4);
});

test('toggles of a batten on board are reckoned with a mass off its middle too [statics]', () => {
  const wall = {
    baseMaterial: 'plasterboard-on-timber-studs' as const,
    finish: { kind: 'bare' as const },
    studs: 'unknown' as const,
  };
  const of = (com: number) =>
    held({ kg: 12, widthMm: 1200, hanging: BATTEN, piece: { comFromLeftMm: mm(com) }, wall });
  expect(of(700).fixing.utilisation).toBeGreaterThan(of(600).fixing.utilisation);
  expect(of(700).actions.perMark.reduce((sum, { shearN }) => sum + shearN, 0)).toBeCloseTo(12 * G, 6);
});
