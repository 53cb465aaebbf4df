import { expect, test } from 'vitest';
import { mm } from '../../../core/quantity.ts';
import { held, notHeld, rings } from './a-fixing-job.ts';

test('perforated brick of 110 takes the shortest sleeve of the line, 12 + 80 + 5 deep [common-practice, trade 1.2 line 3: 80 to 130]', () => {
  const { fixing } = held({ kg: 24, wall: { cores: 'perforated', thicknessMm: mm(110) } });
  expect(fixing).toMatchObject({ fastener: 'resin-stud', bit: { action: 'rotary', depthMm: 97 } });
});

test.each([
  [150, { diameterMm: 10, lengthMm: 80 }],
  [102.5, { diameterMm: 10, lengthMm: 60 }],
] as const)(
  'perforated brick of %d mm takes the long plug that leaves 10 mm of it [common-practice, trade 1.2 line 2: 60 to 80]',
  (thicknessMm, plug) => {
    // 9 kg a hanger is over the 7.5 of an 8 mm plug and under the 10 of a 10 mm one. 10 of render:
    // 10 + 80 is 90, the 100 screw, a hole of 105; 10 + 60 is 70, the 76.2 screw, a hole of 82.
    const { fixing } = held({
      kg: 18,
      country: 'UK',
      wall: {
        cores: 'perforated',
        thicknessMm: mm(thicknessMm),
        finish: { kind: 'render', thicknessMm: mm(10) },
      },
      hanging: rings(2, 800, 0),
    });
    expect(fixing.plug).toEqual(plug);
  },
);

test('no long screw with a countersunk head is offered for a keyhole: the reason says so [common-practice]', () => {
  const { points } = rings(2, 800);
  // 6 + 30 + 50 = 86; pan heads end at 75 in Australia.
  const { rejected } = notHeld({
    kg: 10,
    hanging: { by: 'keyholes', points },
    wall: { finish: { kind: 'plaster', thicknessMm: mm(30) } },
    widthMm: 800,
  });
  expect(rejected.map((each) => each.because).join(' ')).toContain('no pan or round head of that gauge');
});
