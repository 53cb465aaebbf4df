import fc from 'fast-check';
import type { Job } from '../../../core/job.ts';

const maybe = <T>(arb: fc.Arbitrary<T>): fc.Arbitrary<T | 'unknown' | undefined> =>
  fc.oneof(arb, fc.constant('unknown' as const), fc.constant(undefined));
const length = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 0, max: 4000 }) },
  { weight: 1, arbitrary: fc.constantFrom(-1, 0, 1e9, Number.NaN, Number.POSITIVE_INFINITY) },
);
const maybeLength = fc.option(length, { nil: undefined });
const flag = maybe(fc.boolean());
const year = maybe(fc.integer({ min: 1700, max: 2030 }));
const pick = <T>(...values: readonly T[]): fc.Arbitrary<T | 'unknown' | undefined> =>
  maybe(fc.constantFrom(...values));

const accessory = fc.record({
  kind: fc.constantFrom(
    'socket',
    'switch',
    'blank-plate',
    'tap',
    'radiator',
    'gas',
    'window',
    'door',
    'cable',
  ),
  face: fc.constantFrom('this', 'far'),
  xMm: length,
  yMm: length,
  widthMm: maybeLength,
  heightMm: maybeLength,
});
const point = fc.record({ fromLeftMm: maybeLength, fromRightMm: maybeLength, fromTopMm: length });
const hanging = fc.oneof(
  fc.record({ by: fc.constantFrom('rings', 'keyholes', 'clips'), points: fc.array(point, { maxLength: 4 }) }),
  fc.record({
    by: fc.constant('cord'),
    points: fc.array(point, { maxLength: 3 }),
    riseMm: maybeLength,
    lengthMm: maybeLength,
  }),
  fc.record({ by: fc.constant('batten'), fromTopMm: length, lengthMm: length }),
);

/** Any job at all: mostly sensible figures, some absurd, anything optional absent or unknown. */
export const anyJob = fc
  .record({
    building: fc.option(
      fc.record({
        country: pick('AU', 'NZ', 'UK', 'US', 'IE', 'CA', 'EU', 'other'),
        yearBuilt: year,
        rewiredYear: year,
        kind: pick('house', 'flat', 'public'),
        tenure: pick('owner', 'tenant', 'client'),
        consent: flag,
        heritage: flag,
        seismic: flag,
      }),
      { nil: undefined },
    ),
    piece: fc.record({
      kind: fc.constantFrom('mirror', 'picture', 'canvas', 'panel'),
      widthMm: length,
      heightMm: length,
      depthMm: maybeLength,
      massKg: fc.option(fc.double({ min: 0, max: 900_000 }), { nil: undefined }),
      glass: pick('none', 'plain', 'safety', 'acrylic'),
      lit: flag,
      hanging,
    }),
    wall: fc.record({
      baseMaterial: fc.constantFrom(
        'clay-brick',
        'concrete-block',
        'concrete',
        'aerated-concrete',
        'natural-stone',
        'timber',
        'plasterboard-on-steel-studs',
        'plasterboard-on-timber-studs',
        'plasterboard-on-dabs',
        'lath-and-plaster',
        'fibre-cement-on-studs',
        'unknown',
      ),
      finish: fc.option(
        fc.record({ kind: fc.constantFrom('bare', 'plaster', 'tile', 'unknown'), thicknessMm: maybeLength }),
        { nil: undefined },
      ),
      thicknessMm: maybeLength,
      widthMm: length,
      heightMm: maybeLength,
      datum: fc.option(
        fc.record({
          kind: fc.constantFrom('floor', 'mantel', 'ceiling', 'nosing'),
          aboveFloorMm: maybeLength,
          fallMm: maybeLength,
        }),
        { nil: undefined },
      ),
      accessories: maybe(fc.array(accessory, { maxLength: 4 })),
      farSide: fc.constantFrom('unknown', 'seen', undefined),
      ends: fc.constantFrom({ left: 'open' }, { right: 'open' }, undefined),
      wet: pick('no', 'bathroom', 'shower'),
      coating: pick('none', 'textured'),
      asbestos: pick('tested-clear', 'not-tested'),
      tensioned: pick('no', 'possible', 'scanned'),
      separating: flag,
      external: flag,
      common: flag,
      hides: fc.subarray(['pocket-door', 'cistern', 'wall-heating'] as const, { maxLength: 1 }),
      condition: pick('sound', 'poor'),
    }),
    place: fc.record({
      across: fc.oneof(
        fc.constant({ by: 'centre' }),
        fc.record({ by: fc.constantFrom('left-edge', 'centre-at'), mm: length }),
      ),
      up: fc.record({
        by: fc.constantFrom('bottom-above', 'centre-at', 'top-at', 'below-ceiling'),
        mm: length,
      }),
      openingTopMm: maybeLength,
      below: pick('nothing', 'bed', 'sofa', 'cot', 'basin', 'fireplace', 'fireplace-unused', 'walkway'),
    }),
    crew: fc.option(
      fc.record({ people: maybe(fc.integer({ min: 0, max: 9 })), dustExtraction: flag, lifter: flag }),
      { nil: undefined },
    ),
  })
  .map((job) => JSON.parse(JSON.stringify(job), (_, value) => value ?? undefined) as Job);
