import fc from 'fast-check';
import type { Across, Job, Up } from '../../../core/job.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { kg, type Millimetres, mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';

const sound = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => mm(tenths / 10));
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });

/** Drops what is undefined, since an optional field is left out and never undefined. */
const without = <T extends object>(record: T): T =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as T;

type Lengths = (min: number, max: number) => fc.Arbitrary<Millimetres>;

const acrosses = (length: Lengths): fc.Arbitrary<Across> =>
  fc.oneof(
    fc.constant<Across>({ by: 'centre' }),
    fc.record({
      by: fc.constantFrom('left-edge', 'right-edge', 'centre-at'),
      mm: length(0, 4000),
    }) as fc.Arbitrary<Across>,
    fc.record({ by: fc.constant('between' as const), fromMm: length(0, 800), toMm: length(2000, 4000) }),
  );

const ups = (length: Lengths): fc.Arbitrary<Up> =>
  fc.record({
    by: fc.constantFrom('bottom-above', 'centre-at', 'top-at', 'below-ceiling'),
    mm: length(300, 2000),
  });

function hangings(length: Lengths): fc.Arbitrary<Hanging> {
  const across = fc.oneof(
    { weight: 6, arbitrary: length(0, 310).map((fromLeftMm) => ({ fromLeftMm })) },
    { weight: 6, arbitrary: length(0, 310).map((fromRightMm) => ({ fromRightMm })) },
    { weight: 3, arbitrary: length(-155, 155).map((fromCentreMm) => ({ fromCentreMm })) },
    { weight: 1, arbitrary: fc.constant({}) },
  );
  const points = fc.array(
    fc.tuple(across, length(0, 310)).map(([at, fromTopMm]) => ({ ...at, fromTopMm })),
    { maxLength: 4 },
  );
  const seat = { seatToScrewMm: maybe(length(-20, 40)) };
  return fc
    .oneof(
      fc.record({ by: fc.constantFrom('rings', 'keyholes', 'clips'), points, ...seat }),
      fc.record({
        by: fc.constant('cord'),
        points,
        lengthMm: maybe(length(200, 1500)),
        riseMm: maybe(length(0, 400)),
        hooksApartMm: maybe(length(0, 150)),
        ...seat,
      }),
      fc.record({ by: fc.constant('batten'), fromTopMm: length(0, 310), lengthMm: length(0, 900), ...seat }),
    )
    .map((each) => without(each) as Hanging);
}

const walls = (length: Lengths): fc.Arbitrary<Wall> =>
  fc
    .record({
      baseMaterial: fc.constantFrom('clay-brick', 'plasterboard-on-timber-studs', 'concrete'),
      widthMm: length(1500, 6000),
      heightMm: maybe(length(2000, 3000)),
      datum: maybe(
        fc
          .record({
            kind: fc.constantFrom('floor', 'mantel', 'furniture', 'ceiling', 'nosing'),
            aboveFloorMm: maybe(length(0, 1200)),
            fallMm: maybe(length(-40, 40)),
          })
          .map(without),
      ),
      studs: maybe(
        fc
          .record({
            spacingMm: maybe(length(300, 610)),
            firstMm: maybe(length(0, 610)),
            widthMm: maybe(length(25, 60)),
          })
          .map(without),
      ),
      courses: maybe(
        fc
          .record({
            gaugeMm: maybe(length(60, 210)),
            firstBedMm: maybe(length(0, 200)),
            jointMm: maybe(length(0, 15)),
          })
          .map(without),
      ),
      accessories: fc.array(
        fc.record({
          kind: fc.constantFrom('window', 'socket', 'light'),
          face: fc.constantFrom('this', 'far'),
          xMm: length(0, 6000),
          yMm: length(0, 2600),
        }),
        { maxLength: 2 },
      ),
    })
    .map((each) => without(each) as Wall);

const jobs = (length: Lengths): fc.Arbitrary<Job> =>
  fc.record({
    piece: fc.record({
      kind: fc.constant('mirror' as const),
      widthMm: length(300, 1400),
      heightMm: length(300, 1400),
      massKg: fc.constant(kg(10)),
      hanging: hangings(length),
    }),
    wall: walls(length),
    place: fc.record({ across: acrosses(length), up: ups(length) }),
  });

/** Jobs with lengths that a tape could read; many do not fit. */
export const readableJob = jobs(sound);

/** Jobs of the right shape whose figures are anything a number can be. */
export const wildJob = jobs((min, max) =>
  fc.oneof(
    sound(min, max),
    fc.double().map(mm),
    fc
      .constantFrom(0, -1, 1e-300, 1e300, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY)
      .map(mm),
  ),
);
