import { expect, test } from 'vitest';
import { mm, newtons } from '../../../core/quantity.ts';
import { fixingLines } from '../../../src/chat/browser/figures.js';
import type { PlanJson } from '../../../src/schema/plan-json.ts';

test('what goes in is told as one would ask for it over a counter', () => {
  const fixing: NonNullable<PlanJson['fixing']> = {
    fastener: 'plug-and-screw',
    count: 2,
    bit: { kind: 'masonry', action: 'rotary-until-known', diameterMm: mm(8), depthMm: mm(72) },
    plug: { diameterMm: mm(8), lengthMm: mm(50) },
    screw: { gauge: 14, diameterMm: mm(6.1), lengthMm: mm(75), head: 'pan' },
    governing: { mode: 'screw-bending', resistanceN: newtons(127), basis: [] },
    utilisation: 0.93,
  };
  expect(Object.fromEntries(fixingLines(fixing))).toEqual({
    Fixing: '2 × plug and screw',
    Bit: '8 mm masonry',
    Hole: '72 mm deep, rotary until you know it is solid',
    Plug: '8 × 50 mm',
    Screw: '14 gauge, 6.1 × 75 mm, pan head',
    Load: '93 % of what the screw bears before it bends',
  });
});
