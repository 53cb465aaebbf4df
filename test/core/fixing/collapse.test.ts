import fc from 'fast-check';
import { expect, test } from 'vitest';
import { root } from '../../../core/fixing/steel/screw-sizes.ts';
import { lateralBareScrew, lateralWithGap } from '../../../core/fixing/timber/timber-gap.ts';
import { mm, mpa } from '../../../core/quantity.ts';
import { bareCollapseLoad, collapseLoad } from './collapse.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** What screws and timber may be: root 2.5 to 6 mm, bearing 10 to 430 MPa (a thin plate), yield 300 to 700 MPa. */
const screw = fc.record({
  d: between(2.5, 6),
  main: between(12, 80),
  bearing: between(10, 60),
  bendingYield: between(300, 700),
});
const NEARLY = 0.001;

test('through a gap it collapses at what the general dowel equations give, by a search over all mechanisms (second implementation; limit analysis)', () => {
  fc.assert(
    fc.property(
      screw,
      between(1, 40),
      between(10, 430),
      between(0, 45),
      ({ d, main, bearing, bendingYield }, side, sideBearing, gap) => {
        const { allowable } = lateralWithGap({
          d: root(mm(d)),
          main: { lengthMm: mm(main), bearing: mpa(bearing) },
          side: { lengthMm: mm(side), bearing: mpa(sideBearing) },
          bendingYield: mpa(bendingYield),
          reduction: 1,
          gapMm: mm(gap),
        });
        const searched = collapseLoad({
          sideMm: side,
          gapMm: gap,
          mainMm: main,
          sideQ: sideBearing * d,
          mainQ: bearing * d,
          moment: (bendingYield * d ** 3) / 6,
        });
        expect(Math.abs(searched / allowable - 1)).toBeLessThan(NEARLY);
      },
    ),
    { numRuns: 60 },
  );
});

test('a bare screw collapses at what the code gives, by a search over where it turns and kinks (second implementation; limit analysis)', () => {
  fc.assert(
    fc.property(screw, between(0, 60), ({ d, main, bearing, bendingYield }, arm) => {
      const load = lateralBareScrew({
        d: root(mm(d)),
        lengthInWoodMm: mm(main),
        bearing: mpa(bearing),
        bendingYield: mpa(bendingYield),
        reduction: 1,
        armMm: mm(arm),
      });
      const searched = bareCollapseLoad(bearing * d, (bendingYield * d ** 3) / 6, main, arm);
      expect(Math.abs(searched / load - 1)).toBeLessThan(NEARLY);
    }),
    { numRuns: 300 },
  );
});
