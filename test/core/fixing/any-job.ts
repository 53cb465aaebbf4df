import fc from 'fast-check';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { fixingJob, rings } from './a-fixing-job.ts';

const wall: fc.Arbitrary<Partial<Wall>> = fc.record({
  baseMaterial: fc.constantFrom('clay-brick', 'concrete-block', 'concrete', 'plasterboard-on-timber-studs'),
  cores: fc.constantFrom('solid', 'perforated', 'hollow', 'unknown'),
  finish: fc.record({
    kind: fc.constantFrom('bare', 'plaster', 'render', 'tile'),
    thicknessMm: fc.constantFrom(0, 3, 12, 13, 25, 50).map(mm),
  }),
  thicknessMm: fc.constantFrom(75, 100, 102.5, 110, 230).map(mm),
  boardMm: fc.constantFrom(9.5, 10, 12.7, 13, 16).map(mm),
  studs: fc.constantFrom<NonNullable<Wall['studs']>>(
    'unknown',
    { spacingMm: mm(450), firstMm: mm(225), widthMm: mm(45) },
    { spacingMm: mm(300), firstMm: mm(0), widthMm: mm(35) },
  ),
});
const hanging = fc.constantFrom('rings', 'keyholes', 'clips', 'batten', 'cord');

/** Jobs on every wall that is worked out, on each kind of hanger, at the ends of the tables. */
export const anyJob = fc
  .record({
    wall,
    hanging,
    kg: fc.constantFrom(0.1, 2, 9.9, 12, 24, 35, 49.9),
    widthMm: fc.constantFrom(400, 900, 1200),
    standOffMm: fc.constantFrom(0, 6, 20, 40),
    country: fc.constantFrom('AU', 'UK', 'US'),
  })
  .map(({ hanging: by, standOffMm, widthMm, kg, country, ...given }) => {
    const { points } = rings(2, widthMm);
    const off = { standOffMm: mm(standOffMm) };
    const how =
      by === 'batten'
        ? { by, fromTopMm: mm(100), lengthMm: mm(widthMm - 100) }
        : by === 'cord'
          ? { by, points, riseMm: mm(60), hooksApartMm: mm(100), ...off }
          : { by, points, ...off };
    return fixingJob({ kg, widthMm, hanging: how, country: country as 'AU', wall: given.wall });
  });
