import { expect, test } from 'vitest';
import { nominal, root } from '../../../core/fixing/steel/screw-sizes.ts';
import { timberRouteOf } from '../../../core/fixing/timber/route.ts';
import { bareStudStrength, cleatStrength } from '../../../core/fixing/timber/stud-strength.ts';
import {
  effectiveDiameter,
  embedmentStrength,
  lateralUnderPlate,
  withdrawalEc5,
  yieldMomentEc5,
} from '../../../core/fixing/timber/timber-ec5.ts';
import { kgPerM3, mm, mpa, newtonMm, newtons } from '../../../core/quantity.ts';

test('an unpiloted 4 mm dowel in C24 beds at 0.082 x 350 x 4^-0.3 = 18.93 MPa, a piloted one at 27.55 [EN 1995-1-1 8.15, 8.16, from memory]', () => {
  // 4^-0.3 = 0.65975; 28.7 x 0.65975 = 18.935. 28.7 x (1 - 0.04) = 27.552.
  expect(embedmentStrength(kgPerM3(350), root(mm(4)), 'not-predrilled')).toBeCloseTo(18.935, 2);
  expect(embedmentStrength(kgPerM3(350), root(mm(4)), 'predrilled')).toBeCloseTo(27.552, 3);
});

test('a 5 mm screw of 600 MPa yields at 0.3 x 600 x 5^2.6 = 11 819 Nmm [EN 1995-1-1 8.14, from memory]', () => {
  // ln 5 = 1.609438; x 2.6 = 4.184539; e^4.184539 = 65.663; x 180 = 11 819.
  expect(yieldMomentEc5(root(mm(5)), mpa(600))).toBeCloseTo(11819.4, 0);
  expect(effectiveDiameter(root(mm(4))).rootMm).toBeCloseTo(4.4, 12);
});

const joint = {
  d: root(mm(4)),
  embedment: mpa(20),
  moment: newtonMm(6000),
  depthMm: mm(40),
  rope: newtons(400),
};

test.each([
  // Thin: the less of 0.4 x 20 x 40 x 4 = 1280 and 1.15 sqrt(2 x 6000 x 20 x 4) + 100 = 1226.77.
  { plate: 1, expected: 1226.77 },
  { plate: 2, expected: 1226.77 },
  // Thick: bearing 3200; 3200 (sqrt(2 + 24000 / (80 x 1600)) - 1) + 100 = 1632.86; 2.3 sqrt(480 000) + 100 = 1693.49.
  { plate: 4, expected: 1632.86 },
  { plate: 6, expected: 1632.86 },
  // Half way between d/2 and d: the mean of the two.
  { plate: 3, expected: 1429.82 },
])(
  'under a steel plate of $plate mm it bears $expected N [EN 1995-1-1 8.2.3, read]',
  ({ plate, expected }) => {
    expect(lateralUnderPlate(joint, mm(plate))).toBeCloseTo(expected, 1);
  },
);

test('an 8 mm screw with a root of 5.6, 80 deep in 350 kg/m3, draws at 7.8 kN; none outside 6 to 12 mm is reckoned [EN 1995-1-1 8.7.2, from memory]', () => {
  // 0.52 x 8^-0.5 x 80^-0.1 x 350^0.8 = 0.52 x 0.353553 x 0.645188 x 108.458 = 12.8648; x 8 x 80 = 8233.
  expect(withdrawalEc5(kgPerM3(350), nominal(mm(8)), root(mm(5.6)), mm(80))).toBeCloseTo(8233.5, -1);
  for (const [d, r] of [
    [5.9, 4],
    [12.1, 8],
    [8, 4.7],
    [8, 6.1],
  ] as const)
    expect(withdrawalEc5(kgPerM3(350), nominal(mm(d)), root(mm(r)), mm(90))).toHaveProperty('notCovered');
  expect(withdrawalEc5(kgPerM3(350), nominal(mm(8)), root(mm(5.6)), mm(47))).toHaveProperty('notCovered');
});

test.each([
  ['US', 'NDS'],
  ['CA', 'NDS'],
  ['UK', 'EC5'],
  ['IE', 'EC5'],
  ['EU', 'EC5'],
  ['AU', 'NDS'],
  ['NZ', 'NDS'],
  ['other', 'NDS'],
] as const)(
  'a screw in a stud in %s goes by %s, whole, and by nothing of the other (our choice)',
  (country, id) => {
    const by = timberRouteOf(country);
    expect(by.id).toBe(id);
    const strengths = [
      bareStudStrength(by, 10, mm(50), mm(19), mm(75)),
      cleatStrength(by, 10, mm(50), mm(13), mm(18), mm(75)),
    ];
    for (const { basis } of strengths) {
      const ids = basis.map((each) => each.id as string);
      expect(ids.includes('NDS-2018')).toBe(id === 'NDS');
      expect(ids.includes('EN1995-1-1')).toBe(id === 'EC5');
    }
  },
);

test('where no national value was read that is said, and not where one was', () => {
  const said = (country: 'AU' | 'US' | 'UK') => timberRouteOf(country).taken.map(({ field }) => field);
  expect(said('AU')).toContain('timber.route');
  expect(said('US')).not.toContain('timber.route');
  expect(said('UK')).not.toContain('timber.route');
});

test('the two routes come within a third of each other for a 10 gauge through 13 mm of board [derived]', () => {
  const [us, eu] = (['US', 'UK'] as const).map(
    (country) => bareStudStrength(timberRouteOf(country), 10, mm(50), mm(19), mm(75)).lateralN,
  );
  expect((eu ?? 0) / (us ?? 1)).toBeGreaterThan(2 / 3);
  expect((eu ?? 0) / (us ?? 1)).toBeLessThan(3 / 2);
});
