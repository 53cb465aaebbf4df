import type { Country } from '../../core/job.ts';
import { mm } from '../../core/quantity.ts';
import type { Accessory, BaseMaterial, Finish, Wall } from '../../core/wall/wall.ts';
import type { Dice } from './dice.ts';

export const WALLS: readonly BaseMaterial[] = [
  'clay-brick',
  'concrete-block',
  'concrete',
  'aerated-concrete',
  'natural-stone',
  'plasterboard-on-timber-studs',
  'plasterboard-on-steel-studs',
  'plasterboard-on-dabs',
  'lath-and-plaster',
  'fibre-cement-on-studs',
  'timber',
];

const MASONRY: readonly BaseMaterial[] = [
  'clay-brick',
  'concrete-block',
  'aerated-concrete',
  'natural-stone',
];

/** A wall as people have them, all invented: what is asked of it is known more often than not. */
export function plausibleWall(base: BaseMaterial, country: Country, dice: Dice): Wall {
  const widthMm = mm(dice.between(1200, 6000));
  const inch = country === 'US' || country === 'CA';
  const framed = !MASONRY.includes(base) && base !== 'concrete';
  return {
    baseMaterial: base,
    widthMm,
    heightMm: mm(dice.oneOf(2400, 2440, 2700, 3000)),
    ...(MASONRY.includes(base) && { cores: dice.oneOf('solid', 'perforated', 'hollow', 'unknown') }),
    finish: plausibleFinish(framed, dice),
    thicknessMm: mm(
      base === 'plasterboard-on-dabs'
        ? dice.oneOf(140, 150, 215)
        : base === 'natural-stone'
          ? dice.between(300, 600)
          : dice.oneOf(90, 100, 110, 140, 190, 230),
    ),
    datum: { kind: 'floor', aboveFloorMm: mm(0), fallMm: mm(dice.chance(0.2) ? dice.between(-20, 20) : 0) },
    ...(framed && dice.chance(0.8) && { boardMm: mm(boardOf(base, inch, dice)) }),
    ...(framed && dice.chance(0.1) && { boardLayers: 2 }),
    ...(framed &&
      dice.chance(0.6) && {
        voidMm: mm(base === 'plasterboard-on-dabs' ? dice.between(10, 40) : dice.oneOf(45, 70, 90, 140)),
      }),
    ...(framed &&
      dice.chance(0.6) && {
        studs: {
          spacingMm: mm(inch ? dice.oneOf(406.4, 609.6) : dice.oneOf(400, 450, 600)),
          firstMm: mm(dice.between(20, 500)),
          widthMm: mm(dice.oneOf(38, 45)),
        },
      }),
    accessories: Array.from({ length: dice.below(3) }, () => plausibleAccessory(widthMm, dice)),
    farSide: 'seen',
    wet: dice.chance(0.9) ? 'no' : dice.oneOf('bathroom', 'shower', 'unknown'),
    coating: dice.chance(0.9) ? 'none' : 'textured',
    tensioned: dice.chance(0.8) ? 'no' : dice.oneOf('possible', 'scanned', 'unknown'),
    condition: dice.chance(0.95) ? 'sound' : 'poor',
  };
}

const boardOf = (base: BaseMaterial, inch: boolean, dice: Dice): number => {
  if (base === 'fibre-cement-on-studs') return dice.oneOf(6, 7.5, 9);
  if (base === 'timber') return dice.oneOf(12, 19, 22, 45, 90);
  return inch ? dice.oneOf(12.7, 15.9) : dice.oneOf(9.5, 10, 12.5, 13, 15);
};

function plausibleFinish(framed: boolean, dice: Dice): Finish {
  const kind = framed
    ? dice.oneOf('bare', 'bare', 'plaster', 'tile')
    : dice.oneOf('bare', 'plaster', 'plaster', 'render', 'tile', 'board', 'unknown');
  const most = framed ? 4 : 22;
  if (kind === 'bare') return { kind, thicknessMm: mm(0) };
  return dice.chance(0.7)
    ? {
        kind,
        thicknessMm: mm(
          kind === 'tile'
            ? dice.between(8, 18)
            : kind === 'board'
              ? dice.between(25, 55)
              : dice.between(2, most),
        ),
      }
    : { kind };
}

const plausibleAccessory = (widthMm: number, dice: Dice): Accessory => ({
  kind: dice.oneOf('socket', 'switch', 'light', 'radiator', 'blank-plate', 'door', 'window'),
  face: dice.oneOf('this', 'this', 'far'),
  xMm: mm(dice.between(0, widthMm)),
  yMm: mm(dice.oneOf(300, 450, 1100, 1200)),
});
