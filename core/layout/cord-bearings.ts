import { type CordResult, cordOfRise, riseOfCord } from '../piece/cord.ts';
import type { PlacedHanger } from '../piece/hangers.ts';
import type { Hanging } from '../piece/piece.ts';
import type { Assumption } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import type { Bearing, Bearings } from './bearing.ts';
import { cordAdvice } from './cord-advice.ts';
import { lengthText } from './length-text.ts';
import type { DoesNotFit } from './set-out.ts';
import { doesNotFit } from './why-not.ts';

type Cord = Extract<Hanging, { by: 'cord' }>;

const MEASURE =
  'Pull the cord up tight where the hooks will be and measure how far it rises above the rings.';

/**
 * Where a cord bears on one hook midway between its outer rings, or on two hooks evenly about that middle.
 * Rings at different drops count at their mean, which the advice says.
 */
export function cordBearings(cord: Cord, rings: readonly PlacedHanger[]): Bearings | DoesNotFit {
  const left = outermost(rings, (ring) => ring.acrossMm);
  const right = outermost(rings, (ring) => 0 - ring.acrossMm);
  if (!left || !right || rings.length < 2) {
    return doesNotFit('impossibleCord', 'A cord needs two rings.', 'Measure both rings.');
  }
  const spreadMm = mm(right.acrossMm - left.acrossMm);
  const hooksApart = cord.hooksApartMm ?? mm(0);
  const shape = shapeOf(cord, spreadMm, hooksApart);
  if (shape === null) return doesNotFit('impossibleCord', 'How far the cord rises is not known.', MEASURE);
  if (!shape.ok) return impossible(shape);

  const { riseMm, legAngle } = shape;
  const middle = mm((left.acrossMm + right.acrossMm) / 2);
  const meanDrop = mm((left.dropMm + right.dropMm) / 2);
  const at = (side: -1 | 0 | 1): Bearing => ({
    acrossMm: mm(middle + (side * hooksApart) / 2),
    dropMm: mm(meanDrop - riseMm),
    acrossFormula:
      side === 0 ? 'middle of the rings' : `middle of the rings ${side < 0 ? '-' : '+'} hooks apart / 2`,
    dropFormula: 'ring drop - rise',
    acrossInputs: { 'middle of the rings': middle, 'hooks apart': hooksApart },
    dropInputs: { 'ring drop': meanDrop, rise: riseMm },
  });
  return {
    ok: true,
    bearings: hooksApart > 0 ? [at(-1), at(1)] : [at(0)],
    ringToRingMm: mm(Math.hypot(spreadMm, right.dropMm - left.dropMm)),
    cord: { riseMm, legAngle, spreadMm },
    advice: cordAdvice(cord, rings, { riseMm, meanDropMm: meanDrop, spreadMm, hooksApartMm: hooksApart }),
    assumptions: cord.hooksApartMm === undefined ? [oneHook] : [],
  };
}

/** The ring farthest out; of two straight above each other the upper, where the cord is tied. */
function outermost(
  rings: readonly PlacedHanger[],
  inward: (ring: PlacedHanger) => number,
): PlacedHanger | undefined {
  return [...rings].sort((one, other) => inward(one) - inward(other) || one.dropMm - other.dropMm)[0];
}

const oneHook: Assumption = {
  field: 'piece.hanging.hooksApartMm',
  value: 0,
  because: 'how many hooks was not said; one hook in the middle is taken',
};

/** A rise measured under load goes before one worked out, since knots and stretch are in it. */
function shapeOf(cord: Cord, spreadMm: Millimetres, hooksApart: Millimetres): CordResult | null {
  if (hooksApart < 0) return { ok: false, because: 'hooks-too-far', overByMm: mm(0 - hooksApart) };
  if (cord.riseMm !== undefined) return cordOfRise(cord.riseMm, spreadMm, hooksApart);
  return cord.lengthMm === undefined ? null : riseOfCord(cord.lengthMm, spreadMm, hooksApart);
}

function impossible(cord: Extract<CordResult, { ok: false }>): DoesNotFit {
  const over = lengthText(cord.overByMm);
  switch (cord.because) {
    case 'too-short':
      return doesNotFit(
        'impossibleCord',
        `The cord is ${over} too short to reach and rise between the rings.`,
        MEASURE,
        cord.overByMm,
      );
    case 'hooks-too-far':
      return doesNotFit(
        'impossibleCord',
        `The hooks can’t be ${over} further apart than the rings.`,
        'Put the hooks closer together, or hang from the rings.',
        cord.overByMm,
      );
    case 'no-rise':
      return doesNotFit(
        'impossibleCord',
        'A cord with no rise would pull without limit.',
        MEASURE,
        cord.overByMm,
      );
  }
}
